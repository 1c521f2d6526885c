#include "benchleaf/stock/serve_sets.h"

#include "stock/socket_matching.h"
#include "tubes/shipped_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::ElementsAre;
using ::testing::Pair;

StockRow Row(int line, const std::string& type, int count, StockState state = StockState::kGood) {
  StockRow row;
  row.line = line;
  row.type = type;
  row.count = count;
  row.state = state;
  return row;
}

SetNeed Need(const std::string& set, const std::vector<std::string>& types) {
  SetNeed need;
  need.set = set;
  for (std::size_t i = 0; i < types.size(); ++i) {
    TubeSocket& socket = need.tubes.sockets.emplace_back();
    socket.designator = "V" + std::to_string(i + 1);
    socket.type = types[i];
  }
  return need;
}

StockList List(std::vector<StockRow> rows) {
  StockList list;
  list.rows = std::move(rows);
  list.condition_stated = true;
  return list;
}

// "served: V1 line 2, V2 -": verdict and the row of each socket; "?3" behind "-" for lines that may do.
std::string Text(const SetAnswer& answer, const StockList& list) {
  std::string text = std::string(Name(answer.verdict)) + ":";
  for (const SocketAnswer& socket : answer.sockets) {
    text += " " + (socket.served ? std::to_string(list.rows[socket.served->row].line) : std::string("-"));
    for (const OnHand& one : socket.perhaps) text += "?" + std::to_string(list.rows[one.row].line);
  }
  return text;
}

TEST(ServeSets, GivesEverySocketATubeOfItsOwn) {
  const StockState bad = StockState::kBad;
  const StockState unproven = StockState::kUnproven;
  const struct {
    const char* why;
    std::vector<StockRow> rows;
    std::vector<std::string> needs;
    const char* answer;
  } kCases[] = {
      {"all there", {Row(2, "6AU6", 2), Row(3, "5U4GB", 1)}, {"6AU6", "6AU6", "5U4GB"}, "served: 2 2 3"},
      {"two of three", {Row(2, "6AU6", 2)}, {"6AU6", "6AU6", "6AU6"}, "lacks tubes: 2 2 -"},
      {"another name of the tube", {Row(2, "ECC83", 1)}, {"12AX7"}, "served: 2"},
      {"a later type stands in", {Row(2, "6AU6A", 1)}, {"6AU6"}, "served with stand-ins: 2"},
      {"but not the other way round", {Row(2, "6AU6", 1)}, {"6AU6A"}, "lacks tubes: -?2"},
      {"another heater string never does", {Row(2, "3CB6", 1)}, {"6CB6"}, "lacks tubes: -?2"},
      {"an industrial type of another heater needs a look", {Row(2, "5751", 1)}, {"12AX7"}, "lacks tubes: -?2"},
      {"bad ones do not count, nor are they worth a look", {Row(2, "6AU6", 1, bad)}, {"6AU6"}, "lacks tubes: -"},
      {"unproven ones do not count, but may be tested", {Row(2, "6AU6", 1, unproven)}, {"6AU6"}, "lacks tubes: -?2"},
      {"the same tube before a later one", {Row(2, "6AU6A", 1), Row(3, "6AU6", 1)}, {"6AU6"}, "served: 3"},
      {"the later type goes where only it will do",
       {Row(2, "6AU6A", 1), Row(3, "6AU6", 1)},
       {"6AU6", "6AU6A"},
       "served: 3 2"},
      {"a tube moves on so that both are served",
       {Row(2, "6CB6A", 1), Row(3, "6676", 1)},
       {"6CB6", "6CB6A"},
       "served with stand-ins: 3 2"},
      {"nothing known of the set", {Row(2, "6AU6", 1)}, {}, "no tubes known:"},
      {"an empty box", {}, {"6AU6"}, "lacks tubes: -"},
  };
  for (const auto& c : kCases) {
    const StockList list = List(c.rows);
    const StockAnswer answer = ServeSets(list, {Need("QUILLHAVEN 12", c.needs)}, ShippedTubes());
    EXPECT_EQ(Text(answer.sets.at(0), list), c.answer) << c.why;
  }
}

TEST(ServeSets, FillsNoSocketWithoutADesignator) {
  SetNeed need = Need("A", {"6AU6"});
  TubeSocket& nameless = need.tubes.sockets.emplace_back();
  nameless.type = "5U4GB";
  nameless.seen.emplace_back().sighting.text = "5U4GB";
  const StockList list = List({Row(2, "6AU6", 1), Row(3, "5U4GB", 1)});
  SetNeed only_nameless = need;
  only_nameless.set = "B";
  only_nameless.tubes.sockets.erase(only_nameless.tubes.sockets.begin());
  const StockAnswer answer = ServeSets(list, {need, only_nameless, Need("C", {})}, ShippedTubes());
  EXPECT_EQ(Text(answer.sets[0], list), "served: 2");
  ASSERT_EQ(answer.sets[0].unplaced.size(), 1U);
  EXPECT_EQ(answer.sets[0].unplaced[0].sighting.text, "5U4GB");
  EXPECT_EQ(Text(answer.sets[1], list), "no designators known:");
  EXPECT_EQ(Text(answer.sets[2], list), "no tubes known:");
  EXPECT_THAT(answer.rows[1].wanted_by, ElementsAre("A", "B")) << "a set may need it all the same";
}

TEST(ServeSets, AnswersForEachSetOnItsOwnAndSaysWhatIsClaimedTwice) {
  const StockList list = List({Row(2, "6AU6", 1), Row(3, "6AU6", 1), Row(4, "5U4GB", 2)});
  const StockAnswer answer =
      ServeSets(list, {Need("BRACKENFORD T7", {"6AU6", "5U4GB"}), Need("QUILLHAVEN 12", {"6AU6", "6AU6", "5U4GB"})},
                ShippedTubes());
  EXPECT_EQ(answer.sets[0].verdict, SetVerdict::kServed);
  EXPECT_EQ(answer.sets[1].verdict, SetVerdict::kServed);
  ASSERT_EQ(answer.contested.size(), 1U) << "two 5U4GB are enough for both";
  EXPECT_EQ(answer.contested[0].type, "6AU6");
  EXPECT_EQ(answer.contested[0].on_hand, 2);
  EXPECT_THAT(answer.contested[0].claims, ElementsAre(Pair("BRACKENFORD T7", 1), Pair("QUILLHAVEN 12", 2)));
}

TEST(ServeSets, TellsWhatNoSetNeedsAndWhatNoTableKnows) {
  const StockList list =
      List({Row(2, "6AU6", 1, StockState::kBad), Row(3, "6AL5", 1), Row(4, "6QZ9", 1), Row(5, "6AU6B", 1)});
  const StockAnswer answer = ServeSets(list, {Need("QUILLHAVEN 12", {"6AU6"})}, ShippedTubes());
  EXPECT_THAT(answer.rows[0].wanted_by, ElementsAre("QUILLHAVEN 12")) << "needed, though this one is bad";
  EXPECT_TRUE(answer.rows[1].wanted_by.empty());
  EXPECT_TRUE(answer.rows[1].known);
  EXPECT_FALSE(answer.rows[2].known);
  EXPECT_TRUE(answer.rows[3].known) << "by its type without the suffix";
}

TEST(MatchSockets, FillsAsManyAsCanBe) {
  using stock::Choice;
  const struct {
    const char* why;
    std::vector<std::vector<Choice>> choices;
    std::vector<int> counts;
    std::size_t filled;
  } kCases[] = {
      {"one moves to its second choice", {{{0, 0}, {1, 1}}, {{0, 0}}}, {1, 1}, 2},
      {"a chain of moves", {{{0, 0}, {1, 0}}, {{1, 0}, {2, 0}}, {{0, 0}}}, {1, 1, 1}, 3},
      {"a row of two", {{{0, 0}}, {{0, 0}}, {{0, 0}}}, {2}, 2},
      {"moves out of a full row of two", {{{0, 0}, {1, 1}}, {{0, 0}}, {{0, 0}}}, {2, 1}, 3},
      {"no choices", {{}, {}}, {3}, 0},
      {"rows of no tubes", {{{0, 0}}}, {0}, 0},
  };
  for (const auto& c : kCases) {
    const auto rows = stock::MatchSockets(c.choices, c.counts);
    std::vector<int> used(c.counts.size(), 0);
    std::size_t filled = 0;
    for (const auto& row : rows) {
      if (!row) continue;
      ++filled;
      ++used[*row];
    }
    EXPECT_EQ(filled, c.filled) << c.why;
    for (std::size_t i = 0; i < used.size(); ++i) EXPECT_LE(used[i], c.counts[i]) << c.why;
  }
}

}  // namespace
}  // namespace benchleaf
