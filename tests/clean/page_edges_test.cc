#include "clean/page_edges.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace benchleaf {
namespace {

constexpr int kWidth = 1600;
constexpr int kHeight = 2000;
constexpr std::uint8_t kPaper = 220;

void Fill(GreyImage& image, const Box& box, std::uint8_t level) {
  for (int y = box.y; y < box.bottom(); ++y) std::fill_n(image.row(y) + box.x, box.width, level);
}

GreyImage Paper() { return {kWidth, kHeight, kPaper}; }

TEST(WithoutSurroundingsTest, LeavesAPageWithoutThemAsItIs) {
  const struct {
    const char* name;
    Box ink;
  } kCases[] = {
      {"nothing", {}},
      {"a letter near the edge", {10, 400, 16, 24}},
      {"a rule from edge to edge", {0, 700, kWidth, 8}},
      {"a frame's side along the edge", {0, 0, 6, kHeight}},
      {"the rule of a table's first column", {200, 100, 10, kHeight - 200}},
      {"a picture in the middle", {500, 600, 600, 500}},
      {"a punched hole", {80, 900, 60, 60}},
  };
  for (const auto& one : kCases) {
    GreyImage page = Paper();
    Fill(page, one.ink, 20);
    EXPECT_EQ(WithoutSurroundings(page), page) << one.name;
  }
}

TEST(WithoutSurroundingsTest, PaintsTheLidOver) {
  GreyImage page = Paper();
  Fill(page, {0, 0, kWidth, 60}, 15);
  Fill(page, {0, 0, 90, kHeight}, 15);
  Fill(page, {kWidth - 43, 0, 43, kHeight}, 15);
  Fill(page, {300, 300, 16, 24}, 20);  // a letter
  const GreyImage clean = WithoutSurroundings(page);
  GreyImage wanted = Paper();
  Fill(wanted, {300, 300, 16, 24}, 20);
  EXPECT_EQ(clean, wanted);
}

// The shadow of a binding about `middle`, `reach` px to either side.
void Shade(GreyImage& image, int middle, int reach) {
  for (int y = 0; y < image.height; ++y) {
    for (int x = middle - reach; x < middle + reach; ++x) {
      const double depth = 1 - std::abs(x - middle) / static_cast<double>(reach);
      image.row(y)[x] = static_cast<std::uint8_t>(image.row(y)[x] * (1 - 0.7 * depth * depth));
    }
  }
}

TEST(WithoutSurroundingsTest, TakesAwayTheStripBeyondABinding) {
  GreyImage page = Paper();
  for (int y = 100; y < kHeight - 100; y += 60) {
    Fill(page, {200, y, 1000, 20}, 30);               // rows of the page
    Fill(page, {kWidth - 100, y + 25, 100, 20}, 30);  // and of the page beside it
  }
  Shade(page, kWidth - 140, 60);
  const GreyImage clean = WithoutSurroundings(page);
  EXPECT_EQ(clean.row(110)[700], 30);
  EXPECT_EQ(clean.row(135)[kWidth - 50], kPaper);
  EXPECT_GT(clean.row(95)[kWidth - 140], 0.8 * kPaper);
}

TEST(WithoutSurroundingsTest, KeepsBothPagesOfASpread) {
  GreyImage page(3200, 2000, kPaper);
  for (int y = 100; y < 1900; y += 60) {
    Fill(page, {200, y, 1200, 20}, 30);
    Fill(page, {1800, y, 1200, 20}, 30);
  }
  Shade(page, 1600, 80);
  const GreyImage clean = WithoutSurroundings(page);
  EXPECT_EQ(clean.row(110)[700], 30);
  EXPECT_EQ(clean.row(110)[2500], 30);
  EXPECT_GT(clean.row(95)[1600], 0.8 * kPaper);
}

TEST(WithoutSurroundingsTest, KeepsWhatReachesFarIntoThePage) {
  GreyImage page = Paper();
  Fill(page, {0, 500, 900, 700}, 30);  // a photograph to the page's edge
  const GreyImage clean = WithoutSurroundings(page);
  EXPECT_EQ(clean.row(800)[600], 30);
}

TEST(WithoutSurroundingsTest, BearsPagesOfAnySize) {
  for (const int side : {1, 2, 3, 50}) {
    const GreyImage page(side, side, 0);
    EXPECT_EQ(WithoutSurroundings(page).width, side);
  }
  EXPECT_TRUE(WithoutSurroundings({}).empty());
}

}  // namespace
}  // namespace benchleaf
