// Further differences between crops of one text: width, height, slant, pen, light, noise, what a wire leaves.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_TRAINER_SPOIL_H_
#define BENCHLEAF_TESTS_READER_TRAINING_TRAINER_SPOIL_H_

#include "reader-training/trainer/crop_file.h"

#include <random>
#include <vector>

namespace benchleaf::training {

// A strip as the net takes it: kStripRows rows of `width` numbers, 0 light and 1 ink.
struct Strip {
  int width = 0;
  std::vector<float> ink;
};

Strip AsIs(const Crop& crop);

// Another each time.
Strip Spoilt(const Crop& crop, std::mt19937_64& random);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_TRAINER_SPOIL_H_
