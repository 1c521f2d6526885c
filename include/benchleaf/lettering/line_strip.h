// A cut line as the lettering net takes it.

#ifndef BENCHLEAF_LETTERING_LINE_STRIP_H_
#define BENCHLEAF_LETTERING_LINE_STRIP_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

inline constexpr int kStripRows = 32;      // px
inline constexpr double kStripCapPx = 20;  // height of a capital on a strip

// One line of upright text, its capitals `cap_px` high, as a strip of kStripRows rows with the line's middle in its
// own: what stands higher or lower is cut off, what is missing is light.
GreyImage StripOf(const GreyImage& line, double cap_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_LETTERING_LINE_STRIP_H_
