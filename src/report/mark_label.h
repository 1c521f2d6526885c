// The label beside a ring.

#ifndef BENCHLEAF_SRC_REPORT_MARK_LABEL_H_
#define BENCHLEAF_SRC_REPORT_MARK_LABEL_H_

#include "benchleaf/core/image.h"

#include <string>
#include <vector>

namespace benchleaf {

// Draws the text on a light plate above, below, right or left of the ring: the first of these places that lies in the
// picture and clear of what is `taken`; above where none does. Gives the plate.
Box DrawMarkLabel(ColorImage& image, const Box& ring, const std::string& text, const std::vector<Box>& taken);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_MARK_LABEL_H_
