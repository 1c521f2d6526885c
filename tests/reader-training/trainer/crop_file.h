// The crops that make-crops writes.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_
#define BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::training {

inline constexpr int kRows = 32;  // px; kStripRows of benchleaf/lettering/line_strip.h

struct Crop {
  int width = 0;                     // px
  std::string text;                  // UTF-8
  std::vector<std::uint8_t> pixels;  // rows from the top, 0 black
};

// Throws std::runtime_error when the file cannot be read or ends within a crop.
std::vector<Crop> LoadCrops(const std::string& path);

// The characters of UTF-8 text, each as its own bytes.
std::vector<std::string> CharactersOf(const std::string& text);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_TRAINER_CROP_FILE_H_
