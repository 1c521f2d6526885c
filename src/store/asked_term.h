// A term that is asked for, and how sightings fit it.

#ifndef BENCHLEAF_STORE_ASKED_TERM_H_
#define BENCHLEAF_STORE_ASKED_TERM_H_

#include "store/stored.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::store {

class AskedTerm {
 public:
  // `rules` must outlive it.
  AskedTerm(std::string_view term, const Rules& rules);

  const std::string& canonical() const { return canonical_; }
  // "item 12" asks for the item alone; 12 for whatever reads so.
  bool item_alone() const { return item_alone_; }

  // The pages on which sightings that fit so may stand, weighted by the best confidence. Some of their sightings may
  // fit better, or not at all: Fits tells.
  // REQUIRES: match is not kText.
  Xapian::Query Pages(Match match) const;

  // The pages on which tubes that fit exactly or as a form may stand.
  Xapian::Query PagesOfTubes() const;

  // Whether the sighting fits so, and in no better way.
  // REQUIRES: match is not kText.
  bool Fits(const StoredSighting& sighting, Match match) const;

 private:
  void AddTubeForms(std::vector<std::string>& terms) const;
  bool FitsAsForm(const StoredSighting& sighting) const;
  bool FitsAsDesignatorForm(const StoredSighting& sighting) const;
  bool LooksAlike(std::string_view text) const;

  const Rules& rules_;
  bool item_alone_ = false;
  std::string canonical_;
  std::string folded_;
  std::size_t characters_ = 0;
  std::vector<std::string> designator_forms_;  // besides the term itself
  std::string assembly_;                       // A4 of A4C12, empty when the term names none
  std::vector<std::string> tube_forms_;        // besides the term itself
  bool names_several_tubes_ = false;
};

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_ASKED_TERM_H_
