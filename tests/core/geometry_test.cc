#include "benchleaf/core/geometry.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

TEST(Geometry, UnionIgnoresEmptyBoxes) {
  const Box box{3, 4, 5, 6};
  EXPECT_EQ(Union(box, {}), box);
  EXPECT_EQ(Union({}, box), box);
  EXPECT_EQ(Union(box, {0, 0, 1, 1}), (Box{0, 0, 8, 10}));
}

TEST(Geometry, BoxesThatOnlyTouchShareNothing) {
  EXPECT_TRUE(Intersection({0, 0, 5, 5}, {5, 0, 5, 5}).empty());
  EXPECT_EQ(OverlapOfSmaller(Box{0, 0, 5, 5}, Box{5, 0, 5, 5}), 0);
}

TEST(Geometry, OverlapIsMeasuredOnTheSmallerBox) {
  EXPECT_DOUBLE_EQ(OverlapOfSmaller(Box{0, 0, 100, 100}, Box{10, 10, 10, 10}), 1);
  EXPECT_DOUBLE_EQ(OverlapOfSmaller(Box{0, 0, 10, 10}, Box{5, 0, 10, 10}), 0.5);
  EXPECT_DOUBLE_EQ(OverlapOfSmaller(FractionBox{0, 0, 0.2, 0.2}, FractionBox{0.1, 0, 0.2, 0.2}), 0.5);
}

TEST(Geometry, GrownBoxesStayOnThePage) { EXPECT_EQ(Grown({2, 2, 10, 10}, 5, 14, 100), (Box{0, 0, 14, 17})); }

// A mark in the scan's top left corner is followed through each orientation.
TEST(Geometry, TurnsOfThePageAreUndone) {
  struct Case {
    int orientation;
    Box level;  // where a mark of 10 x 4 px at the scan's (0, 0) stands in the level page
  };
  const Case cases[] = {
      {0, {0, 0, 10, 4}},
      {90, {76, 0, 4, 10}},     // turned clockwise, the top left corner goes to the top right
      {180, {190, 76, 10, 4}},  // then to the bottom right
      {270, {0, 190, 4, 10}},   // and to the bottom left
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.orientation);
    PageFrame frame;
    frame.scan_width = 200;
    frame.scan_height = 80;
    frame.orientation = c.orientation;
    const bool sideways = c.orientation % 180 != 0;
    frame.level_width = sideways ? 80 : 200;
    frame.level_height = sideways ? 200 : 80;
    const FractionBox mark{0, 0, 10 / 200.0, 4 / 80.0};
    EXPECT_EQ(ToLevel(frame, mark), c.level);
    const FractionBox back = ToScan(frame, c.level);
    EXPECT_NEAR(back.x, mark.x, 1e-9);
    EXPECT_NEAR(back.y, mark.y, 1e-9);
    EXPECT_NEAR(back.width, mark.width, 1e-9);
    EXPECT_NEAR(back.height, mark.height, 1e-9);
  }
}

TEST(Geometry, ScaleAndSkewAreUndone) {
  PageFrame frame;
  frame.scan_width = 1000;
  frame.scan_height = 1500;
  frame.orientation = 270;
  frame.scale = 2;
  frame.level_width = 3000;
  frame.level_height = 2000;
  frame.skew_degrees = 1.5;
  const FractionBox there{0.4, 0.6, 0.05, 0.01};
  const FractionBox back = ToScan(frame, ToLevel(frame, there));
  // A turned box is held by a larger upright one, each way; its middle stays.
  EXPECT_NEAR(back.x + back.width / 2, there.x + there.width / 2, 0.001);
  EXPECT_NEAR(back.y + back.height / 2, there.y + there.height / 2, 0.001);
}

TEST(Geometry, BoxesAreCutToThePage) {
  PageFrame frame;
  frame.scan_width = frame.level_width = 100;
  frame.scan_height = frame.level_height = 100;
  const FractionBox cut = ToScan(frame, {-20, 90, 40, 40});
  EXPECT_DOUBLE_EQ(cut.x, 0);
  EXPECT_DOUBLE_EQ(cut.width, 0.2);
  EXPECT_DOUBLE_EQ(cut.y + cut.height, 1);
}

}  // namespace
}  // namespace benchleaf
