#include "benchleaf/lineup/compare.h"

#include "lineup/shipped_tables.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

LineupTube Tube(const std::string& designator, const std::string& type, const std::string& function = "") {
  LineupTube tube;
  tube.socket.designator = designator;
  tube.socket.type = type;
  tube.row = ShippedTubes().FindNearest(type);
  if (!function.empty()) tube.duties.push_back({"", function, function, {}, {}, 0.9});
  return tube;
}

ManualLineup Set(std::vector<LineupTube> tubes) {
  ManualLineup lineup;
  lineup.tubes = std::move(tubes);
  return lineup;
}

std::string Types(const LineupComparison& comparison) {
  std::string text;
  for (const ComparedTypes& row : comparison.types) {
    text += (text.empty() ? "" : ", ") + row.first_type + " x" + std::to_string(row.first.size()) + " " +
            std::string(Name(row.relation)) + " " + row.second_type + " x" + std::to_string(row.second.size());
  }
  return text;
}

// Relations are those of config/tubes.tsv, whose rows name their sources.
TEST(Compare, NamesTheNearestRelationOfTypes) {
  const struct {
    const char* first;
    const char* second;
    const char* relation;
  } kCases[] = {
      {"6AU6", "6AU6", "6AU6 x1 same type 6AU6 x1"},
      {"12AU7/ECC82", "12AU7", "12AU7/ECC82 x1 same type 12AU7 x1"},
      {"12AX7", "ECC83", "12AX7 x1 equivalent ECC83 x1"},
      {"6CB6", "6CB6A", "6CB6 x1 second serves for first 6CB6A x1"},
      {"6CB6A", "6CB6", "6CB6A x1 first serves for second 6CB6 x1"},
      {"6CB6", "3CB6", "6CB6 x1 only the heater differs 3CB6 x1"},
      {"6CB6", "5Y3GT", "6CB6 x1 only in the first  x0,  x0 only in the second 5Y3GT x1"},
      {"6QZ9", "6QZ9", "6QZ9 x1 same type 6QZ9 x1"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Types(Compare(Set({Tube("V1", one.first)}), Set({Tube("V2", one.second)}))), one.relation);
  }
}

TEST(Compare, CountsTheTubesOfAType) {
  EXPECT_EQ(Types(Compare(Set({Tube("V1", "6AU6"), Tube("V2", "6AU6"), Tube("V3", "6CB6")}),
                          Set({Tube("V1", "6CB6"), Tube("V2", "6CB6A"), Tube("V9", "6AU6")}))),
            "6AU6 x2 same type 6AU6 x1, 6CB6 x1 same type 6CB6 x1, 6CB6 x1 second serves for first 6CB6A x1");
}

TEST(Compare, SetsCircuitsOfOneFunctionSideBySide) {
  const LineupComparison comparison =
      Compare(Set({Tube("V1", "6AU6", "limiter"), Tube("V2", "6AQ5", "audio output"), Tube("V3", "6AL5")}),
              Set({Tube("V4", "6V6GT", "audio output"), Tube("V5", "6V6GT", "audio output"), Tube("V6", "5Y3GT")}));
  ASSERT_EQ(comparison.functions.size(), 1U) << "only what both sets are known to have";
  EXPECT_EQ(comparison.functions[0].function, "audio output");
  EXPECT_EQ(comparison.functions[0].first, (std::vector<std::size_t>{1}));
  EXPECT_EQ(comparison.functions[0].second, (std::vector<std::size_t>{0, 1}));
}

TEST(Compare, TakesNothing) {
  EXPECT_TRUE(Compare({}, {}).types.empty());
  EXPECT_TRUE(Compare({}, {}).functions.empty());
}

}  // namespace
}  // namespace benchleaf
