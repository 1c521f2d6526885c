#include "work/assemble_manual.h"

#include "places/places.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::IsEmpty;

const std::atomic<bool> kNeverCancel{false};

const Rules& TheRules() {
  static const std::shared_ptr<const Rules> rules = Rules::Load(SourceFolder() / "config").value();
  return *rules;
}

// A page with the words one below the other; a row's words stand side by side, separated by '|'.
PageRecord PageOf(const std::vector<std::string>& rows) {
  PageRecord page;
  page.reading.frame = {2000, 3000, 200, 0, 1, 0, 2000, 3000};
  page.reading.measures.cap_height_px = 20;
  page.reading.measures.text_row_share = 0.9;
  int y = 200;
  for (const std::string& row : rows) {
    for (std::size_t at = 0, x = 200; at < row.size(); x += 400) {
      const std::size_t end = std::min(row.find('|', at), row.size());
      const std::string text = row.substr(at, end - at);
      page.reading.words.push_back(
          {text, {static_cast<int>(x), y, 16 * static_cast<int>(text.size()), 20}, 0, 0.95, WordOrigin::kPage, {}});
      at = end + 1;
    }
    y += 60;
  }
  return page;
}

ManualRecord Head() {
  ManualRecord head;
  head.set = "Norvane 12";
  head.manual = "service";
  return head;
}

TEST(AssembleManual, SearchesEachPageAndLeavesReadingsAsTheyAre) {
  std::vector<PageRecord> pages = {PageOf({"C112", "6CB6"}), PageOf({})};
  const std::vector<PageRecord> before = pages;
  const auto manual = AssembleManual(Head(), pages, TheRules(), kNeverCancel);
  ASSERT_TRUE(manual);
  EXPECT_EQ(manual->set, "Norvane 12");
  ASSERT_EQ(manual->pages.size(), 2U);
  EXPECT_EQ(manual->pages[0].reading, before[0].reading);
  std::vector<std::string> seen;
  for (const Sighting& sighting : manual->pages[0].sightings) {
    seen.push_back(sighting.text);
  }
  EXPECT_THAT(seen, testing::IsSupersetOf({"C112", "6CB6"}));
  EXPECT_THAT(manual->pages[1].sightings, IsEmpty());
}

TEST(AssembleManual, MakesEverythingAnewWhateverThePagesHeldBefore) {
  PageRecord page = PageOf({"C112"});
  const auto first = AssembleManual(Head(), {page}, TheRules(), kNeverCancel);
  page.sightings.push_back({TermKind::kTube, "12AX7", "12AX7", {}, 0, 1, ""});
  page.entries.push_back({"R1", "A9", "", "", "", "", {}, 1, ""});
  page.facts.printed_number = "77";
  const auto second = AssembleManual(Head(), {page}, TheRules(), kNeverCancel);
  ASSERT_TRUE(first && second);
  EXPECT_EQ(*first, *second);
}

TEST(AssembleManual, AFailedPageHoldsItsFailureAlone) {
  PageRecord page = PageOf({"C112"});
  page.file = "a.pdf";
  page.failure = Error{ErrorCode::kTimeout, "took longer than 120 s", "a.pdf", 1};
  const auto manual = AssembleManual(Head(), {page, PageOf({"C113"})}, TheRules(), kNeverCancel);
  ASSERT_TRUE(manual);
  EXPECT_EQ(manual->pages[0].failure, page.failure);
  EXPECT_EQ(manual->pages[0].reading, PageReading{});
  EXPECT_THAT(manual->pages[0].sightings, IsEmpty());
  EXPECT_FALSE(manual->pages[1].sightings.empty());
}

TEST(AssembleManual, StopsWhenCancelled) {
  const std::atomic<bool> cancel{true};
  EXPECT_FALSE(AssembleManual(Head(), {PageOf({"C112"})}, TheRules(), cancel));
}

}  // namespace
}  // namespace benchleaf
