// The designator that a tube type on a page belongs to.

#ifndef BENCHLEAF_LINKING_DESIGNATOR_BESIDE_H_
#define BENCHLEAF_LINKING_DESIGNATOR_BESIDE_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/extract/sighting.h"

#include <string>
#include <vector>

namespace benchleaf {

// One page's designators of tubes, picked out once for all types that stand on it.
class TubeDesignators {
 public:
  // Points into the page's entries and sightings, which must outlive it.
  TubeDesignators(const std::vector<Entry>& entries, const std::vector<Sighting>& sightings, const PageFrame& frame);

  // The designator that belongs to a tube type seen on the page: that of the parts-list row which holds it, else the
  // nearest designator of class V (electron tube: IEEE Std 315, ASME Y14.44) within a few letter heights; empty when
  // there is none.
  std::string Beside(const Sighting& tube) const;

 private:
  std::vector<const Entry*> rows_;      // that have a designator
  std::vector<const Sighting*> tubes_;  // designators of class V
  double width_;                        // of the scan, px
  double height_;
};

// Whether the designator is that of a tube: V3, A4V3, V3A.
bool NamesTube(const std::string& designator);

// A designator with its assembly before it: A4 and C12 are A4C12, A4C12 stays as it is.
std::string WithAssembly(const std::string& assembly, const std::string& designator);

// What a row's part is called: its designator with its assembly; "item 12", or "A4 item 12", where a list numbers its
// rows instead; empty when the row has neither.
std::string NameOf(const Entry& entry);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINKING_DESIGNATOR_BESIDE_H_
