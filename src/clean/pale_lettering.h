// Finds letters much paler than a page's other ink. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_
#define BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// Adds to `rest` what stands on the level page paler than ink and has a letter's size, where that is most of what is
// pale there: elsewhere it is stains, and the remains of thin or coarse print. Layered scans keep some lettering in
// their ground only.
void AddPaleLetters(const GreyImage& level, double cap_px, InkImage& rest);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PALE_LETTERING_H_
