// Crops as the program cuts them for its readers, with what stands on them.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_
#define BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_

#include "scan-maker/made_page.h"

#include "benchleaf/core/image.h"

#include <string>
#include <vector>

namespace benchleaf::training {

struct LineCrop {
  GreyImage image;
  std::string text;  // kNoText for ink that is no lettering
};

// What a reader is to say of scraps of symbols and wires.
inline constexpr const char* kNoText = "~";

// The strings that the program finds on the page, each cut out upright. Strings that hold only part of a text, or more
// than one, are left out: nobody can say what should be read there.
std::vector<LineCrop> CropsOf(const scanmaker::ScannedPage& page);

// Crops side by side as one line of words. A net learns from long lines in a tenth of the steps.
LineCrop Joined(const std::vector<LineCrop>& crops);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_
