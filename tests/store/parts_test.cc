#include "store/test_index.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using PartsTest = IndexTest;

TEST_F(PartsTest, GivesEntriesWithThePlacesWhereTheyAreDrawn) {
  const ManualRecord manual = MakeManual();
  Store(manual, MakeManual("B"));
  const auto parts = Reader()->Parts(manual.set).value();
  ASSERT_EQ(parts.size(), 2U);
  EXPECT_EQ(parts[0].entry, manual.pages[1].entries[0]);
  EXPECT_EQ(parts[0].place.set, manual.set);
  EXPECT_EQ(parts[0].place.page, 2);
  EXPECT_EQ(parts[0].place.kind, PageKind::kPartsList);
  ASSERT_EQ(parts[0].seen.size(), 1U);
  EXPECT_EQ(parts[0].seen[0].place.page, 1);
  EXPECT_EQ(parts[0].seen[0].place.kind, PageKind::kSchematic);
  EXPECT_EQ(parts[0].seen[0].sighting, manual.pages[0].sightings[0]);
  EXPECT_EQ(parts[0].seen[0].confidence, 0.875);
  EXPECT_EQ(parts[0].seen[0].reason, "same assembly");
  EXPECT_EQ(parts[1].entry, manual.pages[1].entries[1]);
  EXPECT_TRUE(parts[1].seen.empty());
}

TEST_F(PartsTest, BestPlaceComesFirst) {
  ManualRecord manual = MakeManual();
  manual.links = {{1, 0, 0, 0, 0.4, "first"}, {1, 0, 0, 1, 0.9, "second"}, {1, 0, 0, 0, 0.9, "third"}};
  Store(manual);
  const auto parts = Reader()->Parts(manual.set).value();
  ASSERT_EQ(parts[0].seen.size(), 3U);
  EXPECT_EQ(parts[0].seen[0].reason, "second");
  EXPECT_EQ(parts[0].seen[1].reason, "third");
  EXPECT_EQ(parts[0].seen[2].reason, "first");
}

TEST_F(PartsTest, ManualsOfOneSetFollowEachOtherByName) {
  Store(MakeManual("A", "z"), MakeManual("A", "b"));
  const auto parts = Reader()->Parts("A").value();
  ASSERT_EQ(parts.size(), 4U);
  EXPECT_EQ(parts[0].place.manual, "b");
  EXPECT_EQ(parts[2].place.manual, "z");
  EXPECT_EQ(parts[2].seen[0].place.manual, "z") << "links never leave their manual";
}

TEST_F(PartsTest, AnUnknownSetIsMissing) {
  Store(MakeManual("A"));
  const auto parts = Reader()->Parts("a");
  ASSERT_FALSE(parts);
  EXPECT_EQ(parts.error().code, ErrorCode::kMissing);
  EXPECT_EQ(parts.error().source, "a");
}

}  // namespace
}  // namespace benchleaf
