// Parts that the list names and a drawing does not seem to show.

#ifndef BENCHLEAF_SRC_EXTRACT_MISSING_PARTS_H_
#define BENCHLEAF_SRC_EXTRACT_MISSING_PARTS_H_

#include "extract/rule_tables.h"

#include "benchleaf/extract/lexicon.h"
#include "benchleaf/extract/sighting.h"

#include <vector>

namespace benchleaf::extract {

// Adds to each drawing's sightings those of listed designators that it does not show yet, where a word that is nothing
// else yet spells one but for strokes at its edges (outlines and leaders touch the letters: ")v4" is V4) and small
// letters, and spells no other listed one nearly as well. What is not on a drawing that shows half of the list is
// looked for there; otherwise only what no drawing shows. At most one place of a designator is added to a drawing.
// REQUIRES: `sightings` are those of `pages`, in their order.
void AddMissingParts(const std::vector<LexiconPage>& pages, const Rules::Tables& tables,
                     std::vector<std::vector<Sighting>>& sightings);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_MISSING_PARTS_H_
