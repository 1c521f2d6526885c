#include "raster/tiff_directories.h"

#include "raster/sample_files.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

int Count(std::string_view bytes) { return static_cast<int>(ReadTiffDirectories(bytes).size()); }

TEST(TiffDirectoriesTest, TellsWhetherAResolutionIsStated) {
  EXPECT_TRUE(ReadTiffDirectories(SampleTiff({NoisePicture(2, 2)}, 100)).at(0).states_resolution);
  EXPECT_FALSE(ReadTiffDirectories(SampleTiff({NoisePicture(2, 2)}, 0)).at(0).states_resolution);
}

TEST(TiffDirectoriesTest, CountsTheChain) {
  EXPECT_EQ(Count(SampleTiff({NoisePicture(2, 2)}, 100)), 1);
  EXPECT_EQ(Count(SampleTiff({NoisePicture(2, 2), NoisePicture(3, 3), NoisePicture(1, 1)}, 0)), 3);
}

TEST(TiffDirectoriesTest, CountsADirectoryThatIsCutOff) {
  const std::string two = SampleTiff({NoisePicture(2, 2), NoisePicture(3, 3)}, 100);
  EXPECT_EQ(Count(std::string_view(two).substr(0, two.size() - 1)), 2);
  EXPECT_EQ(Count(std::string_view(two).substr(0, two.size() - 150)), 2);
}

TEST(TiffDirectoriesTest, BearsAnyBytes) {
  const std::string tiff = SampleTiff({NoisePicture(5, 5), NoisePicture(3, 3)}, 100);
  for (std::size_t at = 0; at < tiff.size(); ++at) {
    for (const char byte : {'\0', '\1', '\x7F', '\xFF'}) {
      std::string spoilt = tiff;
      spoilt[at] = byte;
      EXPECT_LE(ReadTiffDirectories(spoilt).size(), spoilt.size()) << at;
    }
    EXPECT_LE(Count(std::string_view(tiff).substr(0, at)), 2) << at;
  }
}

TEST(TiffDirectoriesTest, ReadsEitherByteOrderAndBigTiff) {
  const struct {
    std::string bytes;
    int count;
    const char* reason;
  } kCases[] = {
      {std::string("MM\0*\0\0\0\x08\0\0\0\0\0\0", 14), 1, "high byte first, a directory without fields"},
      {std::string("II+\0\x08\0\0\0\x10\0\0\0\0\0\0\0", 16) + std::string(16, '\0'), 1, "BigTIFF"},
      {std::string("II*\0\0\0\0\0", 8), 0, "no directory"},
      {std::string("II*\0\x08\0\0\0\0\0\x08\0\0\0", 14), 1, "a chain that comes back to itself"},
      {std::string("II*\0\xFF\xFF\xFF\xFF", 8), 1, "a directory beyond the file"},
      {std::string("II*\0\x08\0", 6), 0, "a header cut short"},
      {"II", 0, "two letters"},
      {"", 0, "nothing"},
      {"%PDF-1.4", 0, "another kind of file"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    EXPECT_EQ(Count(c.bytes), c.count);
  }
}

}  // namespace
}  // namespace benchleaf
