#include "clean/text_rows.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

// A level page with capitals 24 px high.
class TextRowsTest : public testing::Test {
 protected:
  void PutLetters(int x, int y, int letters) {
    for (int i = 0; i < letters; ++i, x += 24) {
      for (const Box& box : {Box{x, y, 3, 24}, Box{x, y, 16, 3}, Box{x, y + 11, 14, 3}}) {
        for (int row = box.y; row < box.bottom(); ++row) ink_.row(row).Ink(box.x, box.right());
      }
    }
  }
  PageMeasures Measured() {
    CleanPage page;
    page.ink = ink_;
    page.frame.level_width = ink_.width;
    page.frame.level_height = ink_.height;
    page.measures.cap_height_px = kLevelCapPx;
    page.components = FindComponents(ink_);
    MeasureText(page);
    return page.measures;
  }

 private:
  InkImage ink_{1700, 2200};
};

// No cell has eight letters, as where a list gives a class of parts a table.
TEST_F(TextRowsTest, KnowsATableOfShortCells) {
  for (int y = 100; y < 2000; y += 50) {
    PutLetters(100, y, 4);
    PutLetters(350, y, 5);
    PutLetters(620, y, 7);
  }
  const PageMeasures measures = Measured();
  EXPECT_LT(measures.text_row_share, 0.65);
  EXPECT_GT(measures.long_row_share, 0.9);
  EXPECT_TRUE(StandsInRows(measures));
}

// Words that lie a third of a letter higher or lower than their neighbours, as designators among symbols do.
TEST_F(TextRowsTest, WordsOfADrawingMakeNoRows) {
  for (int row = 0; row < 30; ++row) {
    for (int column = 0; column < 6; ++column) {
      PutLetters(60 + 270 * column, 100 + 66 * row + 17 * (column % 3), 3);
    }
  }
  const PageMeasures measures = Measured();
  EXPECT_GE(measures.glyphs, 500);
  EXPECT_LT(measures.long_row_share, 0.35);
  EXPECT_FALSE(StandsInRows(measures));
}

TEST_F(TextRowsTest, FewLettersTellNothing) {
  for (int y = 100; y < 400; y += 50) {
    PutLetters(100, y, 4);
    PutLetters(350, y, 5);
    PutLetters(620, y, 7);
  }
  EXPECT_FALSE(StandsInRows(Measured()));
}

}  // namespace
}  // namespace benchleaf
