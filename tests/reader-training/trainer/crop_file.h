// The crops that make-crops writes.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_
#define BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::training {

struct Crop {
  int width = 0;                     // px
  std::string text;                  // UTF-8
  std::vector<std::uint8_t> pixels;  // kStripRows rows from the top, 0 black
};

// Throws std::runtime_error when the file cannot be read or ends within a crop.
std::vector<Crop> LoadCrops(const std::string& path);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_
