#include "benchleaf/extract/item_callouts.h"

#include "extract/page_text.h"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<Entry> Items(int from, int to, const std::string& assembly = {}) {
  std::vector<Entry> entries;
  for (int item = from; item <= to; ++item) {
    Entry entry;
    entry.item = std::to_string(item);
    entry.assembly = assembly;
    entries.push_back(entry);
  }
  return entries;
}

std::vector<std::string> CalledOut(const PageReading& page, const std::vector<Entry>& list,
                                   const std::vector<Sighting>& seen = {}, const std::string& printed_number = {}) {
  std::vector<std::string> items;
  for (const Sighting& callout : ItemCallouts(page, printed_number, seen, ItemListsOf({&list}), ShippedRules())) {
    items.push_back(callout.text);
  }
  return items;
}

TEST(ItemCallouts, AreLoneNumbersOfTheList) {
  EXPECT_THAT(CalledOut(PageOf({"   1        2         12", "", "        4", "  5    REAR VIEW     3"}), Items(1, 6)),
              ElementsAre("1", "2", "4", "5", "3"));
}

TEST(ItemCallouts, AreNoNumbersWithinText) {
  EXPECT_THAT(CalledOut(PageOf({"   1        2         3", "", "  SEE NOTE 4     ADJUST 5 TURNS"}), Items(1, 6)),
              ElementsAre("1", "2", "3"));
}

TEST(ItemCallouts, AreNoneWhereADrawingShowsLittleOfTheList) {
  EXPECT_THAT(CalledOut(PageOf({"   1        2         3"}), Items(1, 20)), IsEmpty()) << "pins of a socket";
  EXPECT_THAT(CalledOut(PageOf({"   1        2         30", "  40    50"}), Items(1, 3)), IsEmpty())
      << "most numbers are none of the list";
  EXPECT_THAT(CalledOut(PageOf({"1    2    3    1    2    3    1    2    3"}), Items(1, 3)), IsEmpty())
      << "each stands there again and again";
}

TEST(ItemCallouts, AreNoneAmongDesignators) {
  std::vector<Sighting> seen;
  for (const char* designator : {"R1", "R2", "R3", "C1"}) {
    seen.push_back({TermKind::kDesignator, designator, designator, {}, 0, 0.9, ""});
  }
  EXPECT_THAT(CalledOut(PageOf({"   1        2         3"}), Items(1, 3), seen), IsEmpty());
}

TEST(ItemCallouts, LeaveThePagesOwnNumberAlone) {
  std::vector<std::string> lines(24);
  lines.front() = "   1        2         3";
  lines.back() = "                6";
  const PageReading page = PageOf(lines);
  EXPECT_THAT(CalledOut(page, Items(1, 6), {}, "6"), ElementsAre("1", "2", "3"));
  EXPECT_THAT(CalledOut(page, Items(1, 6), {}, "7"), ElementsAre("1", "2", "3", "6"));
}

TEST(ItemCallouts, TakeAMisreadNumberForTheOneItemThatItLooksLike) {
  EXPECT_THAT(CalledOut(PageOf({"   11        lZ         13", "  14    l0"}), Items(11, 14)),
              ElementsAre("11", "13", "14", "12"))
      << "10 is no item of the list";
}

TEST(ItemCallouts, TakeABadlyReadNumberThatIsSeenNowhereElse) {
  PageReading page = PageOf({"   11        12         13", "  14    15"});
  const auto doubted = [&](const char* text, double confidence) {
    PageReading doubtful = page;
    for (Word& word : doubtful.words) word.confidence = word.text == text ? confidence : word.confidence;
    return CalledOut(doubtful, Items(11, 15));
  };
  EXPECT_THAT(doubted("15", 0.15), ElementsAre("11", "12", "13", "14", "15"));
  EXPECT_THAT(doubted("15", 0.05), ElementsAre("11", "12", "13", "14")) << "a scrap";
}

TEST(ItemListsOf, BeginsAListWhereTheAssemblyChangesOrCountingBeginsAnew) {
  std::vector<Entry> entries = Items(1, 3);
  const auto add = [&](std::vector<Entry> more) { entries.insert(entries.end(), more.begin(), more.end()); };
  add(Items(1, 4));
  add(Items(5, 6, "A2"));
  const std::vector<Entry> next_page = Items(7, 9, "A2");
  const std::vector<ItemList> lists = ItemListsOf({&entries, &next_page});
  ASSERT_EQ(lists.size(), 3U);
  EXPECT_EQ(lists[0].items.size(), 3U);
  EXPECT_EQ(lists[1].items.size(), 4U);
  EXPECT_EQ(lists[2].items.size(), 5U) << "it goes on over the page";
}

}  // namespace
}  // namespace benchleaf
