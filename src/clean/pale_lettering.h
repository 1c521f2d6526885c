// Finds letters much paler than a page's other ink. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_
#define BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// Adds to `rest` what stands on the level page paler than its `ink`, mostly free of it, and has a letter's size;
// nothing where that is so little that it may be stains. Layered scans keep some lettering in their ground only.
void AddPaleLetters(const GreyImage& level, const InkImage& ink, double cap_px, InkImage& rest);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_
