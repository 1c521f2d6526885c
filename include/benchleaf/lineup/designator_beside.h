// The designator that a tube type on a page belongs to.

#ifndef BENCHLEAF_LINEUP_DESIGNATOR_BESIDE_H_
#define BENCHLEAF_LINEUP_DESIGNATOR_BESIDE_H_

#include "benchleaf/record/manual_record.h"

#include <string>

namespace benchleaf {

// The designator that belongs to a tube type seen on a page: that of the parts-list row which holds it, else the
// nearest designator of class V (electron tube: IEEE Std 315, ASME Y14.44) within a few letter heights; empty when
// there is none.
std::string DesignatorBeside(const PageRecord& page, const Sighting& tube);

// Whether the designator is that of a tube: V3, A4V3, V3A.
bool NamesTube(const std::string& designator);

// A designator with its assembly before it: A4 and C12 are A4C12, A4C12 stays as it is.
std::string WithAssembly(const std::string& assembly, const std::string& designator);

// What a row's part is called: its designator with its assembly; "item 12", or "A4 item 12", where a list numbers its
// rows instead; empty when the row has neither.
std::string NameOf(const Entry& entry);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_DESIGNATOR_BESIDE_H_
