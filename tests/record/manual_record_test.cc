#include "benchleaf/record/manual_record.h"

#include "record/sample_manual.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(ManualRecordTest, ContentKeyNamesContentPageAndReader) {
  EXPECT_EQ(ContentKey("ab12", 7, "reader 1"), "ab12:7:reader 1");
}

TEST(ManualRecordTest, LinksFitWhenTheyPointIntoTheManual) {
  EXPECT_TRUE(LinksFit(MakeManual()));
  EXPECT_TRUE(LinksFit(ManualRecord()));
  const Link wrong[] = {
      {3, 0, 0, 0, 1, ""},  // no such page
      {1, 2, 0, 0, 1, ""},  // no such entry
      {1, 0, 3, 0, 1, ""},  // no such page
      {1, 0, 0, 2, 1, ""},  // no such sighting
      {0, 0, 0, 0, 1, ""},  // a page without entries
  };
  for (const Link& link : wrong) {
    ManualRecord manual = MakeManual();
    manual.links.push_back(link);
    EXPECT_FALSE(LinksFit(manual));
  }
}

}  // namespace
}  // namespace benchleaf
