#include "scan-maker/made_page.h"

#include "scan-maker/ink_test_support.h"
#include "scan-maker/parts_list_page.h"

#include <gtest/gtest.h>

namespace benchleaf::scanmaker {
namespace {

MadePage SmallPage() {
  MadePage page;
  page.image = GreyImage(300, 200);
  page.kind = "text";
  const Box box{40, 30, 60, 20};
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) {
      page.image.row(y)[x] = 0;
    }
  }
  page.terms.push_back({"designator", "R1", box, 90});
  page.entries.push_back({"R1", "", "", "", "", box});
  return page;
}

TEST(LaidTest, MovesBoxesAndTurnsWithTheInk) {
  for (const int degrees : {0, 90, 180, 270}) {
    SCOPED_TRACE(degrees);
    const MadePage laid = Laid(SmallPage(), degrees);
    const Box box = laid.terms.front().box;
    EXPECT_TRUE(HoldsInk(laid.image, {box.x, box.y, 1, 1}));
    EXPECT_TRUE(HoldsInk(laid.image, {box.right() - 1, box.bottom() - 1, 1, 1}));
    EXPECT_FALSE(HoldsInk(laid.image, {box.x - 1, box.y - 1, 1, 1}));
    EXPECT_EQ(laid.entries.front().box, box);
    EXPECT_EQ(laid.terms.front().turn, (90 + degrees) % 360);
  }
}

TEST(DegradeMadeTest, TruthFollowsTheInk) {
  const MadePage made = MakeRandomPartsListPage(ListLayout{}, Lettering::kTypewriter, 1);
  const ScannedPage scanned = DegradeMade(made, Grade::kMedium, 7);
  ASSERT_EQ(scanned.truth.entries.size(), made.entries.size());
  EXPECT_EQ(scanned.truth.kind, "parts list");
  EXPECT_EQ(scanned.truth.printed_number, made.printed_number);
  for (const TruthEntry& entry : scanned.truth.entries) {
    const Box box{static_cast<int>(entry.box.x * scanned.image.width),
                  static_cast<int>(entry.box.y * scanned.image.height),
                  static_cast<int>(entry.box.width * scanned.image.width) + 1,
                  static_cast<int>(entry.box.height * scanned.image.height) + 1};
    EXPECT_TRUE(HoldsInk(scanned.image, box)) << entry.designator;
  }
  EXPECT_EQ(scanned.image, DegradeMade(made, Grade::kMedium, 7).image);
}

}  // namespace
}  // namespace benchleaf::scanmaker
