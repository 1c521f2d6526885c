// Sheets full of the strings that drawings bear, for a reader to learn from.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_SHEET_H_
#define BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_SHEET_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <cstdint>

namespace benchleaf::training {

// Strings in the lettering or font of `lettering`, whose width, slant, pen and spacing differ from sheet to sheet,
// among wires and symbols, some turned, some touched by a wire. Each string is a term of the page, its text as
// lettered. Same lettering and seed: same sheet.
scanmaker::MadePage MakePracticeSheet(const scanmaker::TextStyle& lettering, std::uint64_t seed);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_SHEET_H_
