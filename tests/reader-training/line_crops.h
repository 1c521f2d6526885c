// Crops as the program cuts them for its readers, with what stands on them.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_
#define BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_

#include "reading/token.h"
#include "reading/trust.h"
#include "scan-maker/made_page.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/core/image.h"

#include <optional>
#include <string>
#include <vector>

namespace benchleaf::training {

struct LineCrop {
  GreyImage image;
  // kNoText for ink that is no lettering; nothing for strings that hold only part of a text, or more than one: nobody
  // can say what should be read there.
  std::optional<std::string> text;
  StringLook look = {};
};

// The strings that the program finds on the page, each cut out upright with capitals `cap_px` high.
std::vector<LineCrop> CropsOf(const scanmaker::ScannedPage& page, double cap_px = kReaderCapPx);

// The phrases of eight letters and more that the program finds on the page, with the page's terms in them as their
// words. Phrases that hold part of a term are left out.
std::vector<LineCrop> PhraseCropsOf(const scanmaker::ScannedPage& page);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_LINE_CROPS_H_
