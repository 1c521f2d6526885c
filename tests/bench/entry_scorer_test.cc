#include "bench/entry_scorer.h"

#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

scanmaker::TruthEntry Listed(const char* designator, const char* number, const char* assembly = "") {
  scanmaker::TruthEntry entry;
  entry.designator = designator;
  entry.part_number = number;
  entry.assembly = assembly;
  return entry;
}

Entry Read(const char* designator, const char* number, const char* assembly = "") {
  Entry entry;
  entry.designator = designator;
  entry.part_number = number;
  entry.assembly = assembly;
  return entry;
}

TEST(EntryScorerTest, WantsAssemblyDesignatorAndNumber) {
  const struct {
    Entry read;
    int right;
    int right_designator;
    const char* why;
  } kCases[] = {
      {Read("C1", "12-34", "A4"), 1, 1, "all right"},
      {Read("C1", "12 - 34", "A4"), 1, 1, "blanks in the number"},
      {Read("C1", "12-35", "A4"), 0, 1, "another number"},
      {Read("C7", "12-34", "A4"), 0, 0, "another designator"},
      {Read("C1", "12-34", "A5"), 0, 0, "another assembly"},
  };
  for (const auto& one : kCases) {
    EntryTally tally;
    tally.Add({Listed("C1", "12-34", "A4")}, {one.read});
    EXPECT_EQ(tally.right, one.right) << one.why;
    EXPECT_EQ(tally.right_designator, one.right_designator) << one.why;
  }
}

TEST(EntryScorerTest, CountsEachRowOnce) {
  EntryTally tally;
  tally.Add({Listed("C1", "1"), Listed("C2", "2")}, {Read("C1", "1"), Read("C1", "1")});
  EXPECT_EQ(tally.listed, 2);
  EXPECT_EQ(tally.read, 2);
  EXPECT_EQ(tally.right, 1);
  EXPECT_DOUBLE_EQ(tally.Recall(), 0.5);
  EXPECT_DOUBLE_EQ(tally.Precision(), 0.5);
}

TEST(EntryScorerTest, KnowsRowsWithoutDesignatorByTheirPartNumber) {
  EntryTally tally;
  tally.Add({Listed("C1", "1"), Listed("", "3"), Listed("", "4")}, {Read("C1", "1"), Read("", "3"), Read("", "5")});
  EXPECT_EQ(tally.listed, 3);
  EXPECT_EQ(tally.right, 2);
  EXPECT_DOUBLE_EQ(tally.DesignatorRecall(), 1) << "of the one row that has a designator";
}

TEST(EntryScorerTest, IsZeroWithoutRows) {
  EXPECT_EQ(EntryTally{}.Recall(), 0);
  EXPECT_EQ(EntryTally{}.Precision(), 0);
  EXPECT_EQ(EntryTally{}.DesignatorRecall(), 0);
}

}  // namespace
}  // namespace benchleaf::bench
