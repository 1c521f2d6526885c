// Cuts the leaders of callouts where they leave the row of the letters that they touch. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_LEADER_CUTS_H_
#define BENCHLEAF_SRC_CLEAN_LEADER_CUTS_H_

#include "benchleaf/clean/components.h"
#include "benchleaf/core/image.h"

namespace benchleaf {

// Rubs out of `ink` thin strokes that leave a letter across its row, which the letter beside it tells, lying and
// standing. `components` are the ink's. True when anything was rubbed out.
bool CutLeaders(const Components& components, double cap_px, InkImage& ink);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_LEADER_CUTS_H_
