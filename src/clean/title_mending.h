// Puts back letters of titles that were taken for lines or leaders. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_TITLE_MENDING_H_
#define BENCHLEAF_SRC_CLEAN_TITLE_MENDING_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// Paints into `rest`, where lines and leaders of the page's `ink` are taken out, all ink of a letter, or of a few that
// touch, that stands in a row of letters higher than the page's capitals of `cap_px`: their bars and feet, one beside
// the other, are as long as a short line, and their stems as a leader. False when nothing was missing.
bool MendTitles(const InkImage& ink, double cap_px, InkImage& rest);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_TITLE_MENDING_H_
