// Makes lettering white on black like any other. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_WHITE_LETTERING_H_
#define BENCHLEAF_SRC_CLEAN_WHITE_LETTERING_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// Turns black into white and white into black on labels: black patches, a few capitals high, that letters are left out
// of. `level` is the level page and `ink` its ink.
void TurnWhiteLettering(double cap_px, GreyImage& level, InkImage& ink);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_WHITE_LETTERING_H_
