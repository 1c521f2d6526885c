// Lettering for pictures: a line of text as a grey picture.

#ifndef BENCHLEAF_LABELS_LABEL_H_
#define BENCHLEAF_LABELS_LABEL_H_

#include "benchleaf/core/image.h"

#include <string>

namespace benchleaf {

enum class LabelWeight { kRegular, kBold };

struct LabelStyle {
  int height_px = 24;    // of the line, from the highest accent to the lowest descender
  int max_width_px = 0;  // a longer text ends in an ellipsis; 0: as wide as it gets
  LabelWeight weight = LabelWeight::kRegular;
};

// The text on one line, black on white, in the system's sans-serif face and, for characters that it lacks, in whatever
// face has them. Line breaks become spaces. Empty for an empty text.
// REQUIRES: `text` is UTF-8 and style.height_px >= 4.
GreyImage Label(const std::string& text, const LabelStyle& style);

}  // namespace benchleaf

#endif  // BENCHLEAF_LABELS_LABEL_H_
