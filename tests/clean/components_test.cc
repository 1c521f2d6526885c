#include "benchleaf/clean/components.h"

#include <gmock/gmock.h>

#include <random>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

InkImage Drawn(const std::vector<std::string>& rows) {
  InkImage ink(static_cast<int>(rows[0].size()), static_cast<int>(rows.size()));
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) {
      ink.row(y)[x] = rows[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)] == '#' ? 1 : 0;
    }
  }
  return ink;
}

TEST(Components, CornersTouch) {
  const Components found = FindComponents(Drawn({
      "#..#.",
      ".#...",
      "....#",
      "#...#",
  }));
  ASSERT_EQ(found.items.size(), 4U);
  EXPECT_EQ(found.items[0].box, (Box{0, 0, 2, 2}));
  EXPECT_EQ(found.items[0].ink, 2);
  EXPECT_EQ(found.items[1].box, (Box{3, 0, 1, 1}));
  EXPECT_EQ(found.items[2].box, (Box{4, 2, 1, 2}));
  EXPECT_EQ(found.items[3].box, (Box{0, 3, 1, 1}));
}

TEST(Components, ArmsThatMeetLateAreOne) {
  const Components found = FindComponents(Drawn({
      "#.#.#",
      "#.#.#",
      "#####",
  }));
  ASSERT_EQ(found.items.size(), 1U);
  EXPECT_EQ(found.items[0].ink, 11);
  EXPECT_EQ(found.items[0].run_count, 7U);
}

// Every pixel of random ink is in exactly one run of one component, and inside its box.
TEST(Components, RunsCoverTheInkOnce) {
  std::mt19937 random(7);
  InkImage ink(97, 61);
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) {
      ink.row(y)[x] = random() % 3 == 0 ? 1 : 0;
    }
  }
  InkImage painted(ink.width, ink.height);
  int sum = 0;
  const Components found = FindComponents(ink);
  for (const Component& component : found.items) {
    sum += component.ink;
    for (std::size_t i = 0; i < component.run_count; ++i) {
      const benchleaf::Run& run = found.runs[component.first_run + i];
      for (int x = run.begin; x < run.end; ++x) {
        EXPECT_EQ(painted.row(run.y)[x], 0);
        painted.row(run.y)[x] = 1;
        EXPECT_FALSE(Intersection(component.box, Box{x, run.y, 1, 1}).empty());
      }
    }
  }
  EXPECT_EQ(sum, CountInk(ink));
  EXPECT_EQ(painted, ink);
}

TEST(Components, KnowTheirLargestHole) {
  const Components found = FindComponents(Drawn({
      "##########.",
      "#..#.....#.",
      "#..#.....##",
      "####.....#.",
      "...#######.",
      "...........",
      "##.........",
  }));
  ASSERT_EQ(found.items.size(), 2U);
  EXPECT_EQ(LargestHole(found, 0), (Box{4, 1, 5, 3}));
  EXPECT_TRUE(LargestHole(found, 1).empty());
}

TEST(Components, NoInkNoComponents) { EXPECT_TRUE(FindComponents(InkImage(5, 5)).items.empty()); }

}  // namespace
}  // namespace benchleaf
