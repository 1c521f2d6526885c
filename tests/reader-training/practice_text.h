// Strings as drawings bear them: designators, tube types, values, part numbers, words, pins.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_
#define BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_

#include "scan-maker/seeded_random.h"

#include <string>

namespace benchleaf::training {

// Without spaces.
std::string PracticeText(scanmaker::SeededRandom& random);

// Figures and letters in groups, as makers' numbers are built. Groups may stand apart where it is `spaced`.
std::string PracticePartNumber(scanmaker::SeededRandom& random, bool spaced);

// Designators as lists group them, or a tube type as they dress it; spaces in some.
std::string PracticeGroup(scanmaker::SeededRandom& random);

// A word of running text or of a list's description, punctuation and all; now and then a value or a number.
std::string PracticeWord(scanmaker::SeededRandom& random);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_
