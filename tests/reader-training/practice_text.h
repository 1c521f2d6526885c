// Strings as drawings bear them: designators, tube types, values, words, pins.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_
#define BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_

#include "scan-maker/seeded_random.h"

#include <string>

namespace benchleaf::training {

// Without spaces.
std::string PracticeText(scanmaker::SeededRandom& random);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_PRACTICE_TEXT_H_
