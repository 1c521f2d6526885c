#include "clean/page_edges.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace benchleaf {
namespace {

constexpr int kWidth = 1600;
constexpr int kHeight = 2000;
constexpr std::uint8_t kPaper = 220;

void Fill(GreyImage& image, const Box& box, std::uint8_t level) {
  for (int y = box.y; y < box.bottom(); ++y) std::fill_n(image.row(y) + box.x, box.width, level);
}

GreyImage Paper() { return {kWidth, kHeight, kPaper}; }

TEST(WithoutBlackEdgesTest, LeavesAPageWithoutThemAsItIs) {
  const struct {
    const char* name;
    Box ink;
  } kCases[] = {
      {"nothing", {}},
      {"a letter near the edge", {10, 400, 16, 24}},
      {"a rule from edge to edge", {0, 700, kWidth, 8}},
      {"a frame's side along the edge", {0, 0, 6, kHeight}},
      {"a picture in the middle", {500, 600, 600, 500}},
      {"a punched hole", {80, 900, 60, 60}},
  };
  for (const auto& one : kCases) {
    GreyImage page = Paper();
    Fill(page, one.ink, 20);
    EXPECT_EQ(WithoutBlackEdges(page), page) << one.name;
  }
}

TEST(WithoutBlackEdgesTest, PaintsTheLidOver) {
  GreyImage page = Paper();
  Fill(page, {0, 0, kWidth, 60}, 15);
  Fill(page, {0, 0, 90, kHeight}, 15);
  Fill(page, {kWidth - 43, 0, 43, kHeight}, 15);
  Fill(page, {300, 300, 16, 24}, 20);  // a letter
  const GreyImage clean = WithoutBlackEdges(page);
  GreyImage wanted = Paper();
  Fill(wanted, {300, 300, 16, 24}, 20);
  EXPECT_EQ(clean, wanted);
}

TEST(WithoutBlackEdgesTest, KeepsWhatReachesFarIntoThePage) {
  GreyImage page = Paper();
  Fill(page, {0, 500, 900, 700}, 30);  // a photograph to the page's edge
  const GreyImage clean = WithoutBlackEdges(page);
  EXPECT_EQ(clean.row(800)[600], 30);
}

TEST(WithoutBlackEdgesTest, BearsPagesOfAnySize) {
  for (const int side : {1, 2, 3, 50}) {
    const GreyImage page(side, side, 0);
    EXPECT_EQ(WithoutBlackEdges(page).width, side);
  }
  EXPECT_TRUE(WithoutBlackEdges({}).empty());
}

}  // namespace
}  // namespace benchleaf
