#include "benchleaf/report/contact_sheet.h"

#include "report/color_image.h"

#include <gtest/gtest.h>

#include <cstddef>

namespace benchleaf {
namespace {

constexpr int kSheetHeight = 1400;

SheetCell Cell(std::uint8_t grey) {
  const auto [width, height] = ThumbOn(kSheetHeight);
  return {{"Quillhaven 12", "V3  6AU6", "p. 1, schematic"}, BlankColorImage(width, height, grey), ""};
}

// Pixels of that grey, which the sheet itself has none of.
long Of(const ColorImage& sheet, std::uint8_t grey) {
  long count = 0;
  for (int y = 0; y < sheet.height; ++y) {
    for (int x = 0; x < sheet.width; ++x) {
      const std::uint8_t* p = Pixel(sheet, x, y);
      if (p[0] == grey && p[1] == grey && p[2] == grey) ++count;
    }
  }
  return count;
}

TEST(ContactSheet, ShowsEveryPictureWhole) {
  std::vector<SheetCell> cells;
  for (std::size_t i = 0; i < kCellsPerSheet; ++i) cells.push_back(Cell(static_cast<std::uint8_t>(100 + i)));
  const ColorImage sheet = ContactSheet("6AU6: 15 places in 3 sets", "sheet 1 of 2", cells, kSheetHeight);
  const auto [width, height] = ThumbOn(kSheetHeight);
  for (std::size_t i = 0; i < kCellsPerSheet; ++i) {
    EXPECT_GE(Of(sheet, static_cast<std::uint8_t>(100 + i)), 1L * width * height) << i;
  }
  EXPECT_LE(sheet.height, kSheetHeight);
  EXPECT_NEAR(sheet.width * 1.41421, kSheetHeight, 2);
}

TEST(ContactSheet, IsAsHighAsItsRowsNeed) {
  const int one = ContactSheet("t", "", {Cell(100)}, kSheetHeight).height;
  const int three = ContactSheet("t", "", {Cell(100), Cell(101), Cell(102)}, kSheetHeight).height;
  const int four = ContactSheet("t", "", {Cell(100), Cell(101), Cell(102), Cell(103)}, kSheetHeight).height;
  EXPECT_EQ(one, three);
  EXPECT_GT(four, three + 100);
}

TEST(ContactSheet, SaysWhyAPictureIsMissing) {
  SheetCell missing = Cell(100);
  missing.picture = {};
  const ColorImage silent = ContactSheet("t", "", {missing}, kSheetHeight);
  missing.failure = "quillhaven/list.png, page 1: the scan is not in the library folder";
  EXPECT_NE(ContactSheet("t", "", {missing}, kSheetHeight).pixels, silent.pixels);
}

}  // namespace
}  // namespace benchleaf
