// Pages full of the phrases that parts lists and notes bear, for a reader to learn from.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_LIST_H_
#define BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_LIST_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <cstdint>

namespace benchleaf::training {

// Rows of words in columns, in the lettering or font of `lettering`, whose width, pen and spacing differ from page to
// page; some rows stand between rules. Each word is a term of the page. Same lettering and seed: same page.
scanmaker::MadePage MakePracticeList(const scanmaker::TextStyle& lettering, std::uint64_t seed);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_LIST_H_
