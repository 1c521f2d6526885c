#include "benchleaf/tubes/tube_table.h"

#include "tubes/shipped_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

constexpr const char* kHeader =
    "type\theater_volts\theater_amps\tclass\tbase\tbasing\tequivalents\theater_variants\tserved_by\tindustrial\tservice"
    "\tnote\tsource\n";

class TubeFiles : public ::testing::Test {
 protected:
  void SetUp() override {
    folder_ =
        std::filesystem::path(::testing::TempDir()) / ::testing::UnitTest::GetInstance()->current_test_info()->name();
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  // A table of these lines, whose cells are parted by '|'.
  std::filesystem::path File(const std::string& name, const std::vector<std::string>& rows) {
    std::ofstream out(folder_ / name);
    out << kHeader;
    for (std::string row : rows) {
      for (char& c : row) c = c == '|' ? '\t' : c;
      out << row << "\n";
    }
    return folder_ / name;
  }

  std::filesystem::path folder_;
};

TEST_F(TubeFiles, GiveARowWithEverythingInIt) {
  const auto table = TubeTable::Load({File(
      "a.tsv", {"12AX7|12.6/6.3|0.15/0.3|high-mu dual triode|noval|9A|ECC83 7025||12AX7A|5751|VT999|hum|by hand"})});
  ASSERT_TRUE(table) << table.error().ToString();
  const TubeEntry* entry = table->Find("12AX7");
  ASSERT_NE(entry, nullptr);
  EXPECT_THAT(entry->heater, ElementsAre(HeaterSupply{12.6, 0.15}, HeaterSupply{6.3, 0.3}));
  EXPECT_EQ(entry->tube_class, "high-mu dual triode");
  EXPECT_EQ(entry->base, "noval");
  EXPECT_EQ(entry->basing, "9A");
  EXPECT_THAT(entry->equivalents, ElementsAre("ECC83", "7025"));
  EXPECT_THAT(entry->served_by, ElementsAre("12AX7A"));
  EXPECT_THAT(entry->industrial, ElementsAre("5751"));
  EXPECT_EQ(entry->note, "hum");
  EXPECT_EQ(entry->source, "by hand");
  EXPECT_EQ(table->Find("VT999"), entry) << "by its service number";
  EXPECT_EQ(table->Find("12AX"), nullptr);
}

TEST_F(TubeFiles, LeaveOutWhatIsNotKnown) {
  const auto table = TubeTable::Load(
      {File("a.tsv", {"6AA1||||||||||||by hand", "6AB1||0.3|||||||||| by hand", "0AA1|0|0||||||||||by hand"})});
  ASSERT_TRUE(table) << table.error().ToString();
  EXPECT_THAT(table->Find("6AA1")->heater, IsEmpty());
  EXPECT_FALSE(table->Find("6AA1")->has_no_heater()) << "not known is not none";
  EXPECT_THAT(table->Find("6AB1")->heater, ElementsAre(HeaterSupply{std::nullopt, 0.3}));
  EXPECT_TRUE(table->Find("0AA1")->has_no_heater());
}

TEST_F(TubeFiles, KnowARelationFromBothSides) {
  const auto table = TubeTable::Load({File("a.tsv", {"6AA1||||||6AB1|3AA1|6AA1A|5001|||by hand", "6AB1||||||||||||x",
                                                     "3AA1||||||||||||x", "6AA1A||||||||||||x", "5001||||||||||||x"})});
  ASSERT_TRUE(table) << table.error().ToString();
  EXPECT_THAT(table->Find("6AB1")->equivalents, ElementsAre("6AA1"));
  EXPECT_THAT(table->Find("3AA1")->variants, ElementsAre("6AA1"));
  EXPECT_THAT(table->Find("6AA1A")->serves_for, ElementsAre("6AA1"));
  EXPECT_THAT(table->Find("6AA1A")->served_by, IsEmpty()) << "the earlier one does not serve for the better one";
  EXPECT_THAT(table->Find("5001")->version_of, ElementsAre("6AA1"));
}

TEST_F(TubeFiles, OverrideByTypeInTheirOrder) {
  const auto shipped = File("shipped.tsv", {"6AA1|6.3|0.3|||||||||old|x", "6AB1|6.3|0.3||||||||||x"});
  const auto own = File("own.tsv", {"6AA1|6.3|0.45|||||||||measured|my bench", "6QZ9|6.3|||||6AA1|||||new|my bench"});
  const auto table = TubeTable::Load({shipped, own});
  ASSERT_TRUE(table) << table.error().ToString();
  EXPECT_EQ(table->Find("6AA1")->note, "measured");
  EXPECT_EQ(table->Find("6AA1")->heater.front().amps, 0.45);
  EXPECT_EQ(table->Find("6AA1")->source, "my bench");
  EXPECT_THAT(table->Find("6AA1")->equivalents, ElementsAre("6QZ9")) << "the restorer wrote it at one of the two only";
  EXPECT_NE(table->Find("6AB1"), nullptr) << "other rows stay";
}

TEST_F(TubeFiles, NameThePlaceOfWhatIsWrong) {
  const struct {
    const char* why;
    std::vector<std::string> rows;
    const char* says;
  } kCases[] = {
      {"no figure", {"6AA1|six||||||||||| x"}, "line 2, column 'heater_volts': 'six'"},
      {"more than any heater takes", {"6AA1|6.3|30||||||||||x"}, "line 2, column 'heater_amps': '30'"},
      {"two voltages, three currents", {"6AA1|12.6/6.3|1/2/3||||||||||x"}, "as many figures as heater_volts"},
      {"no such base", {"6AA1||||ocatl||||||||x"}, "line 2, column 'base': 'ocatl'"},
      {"small letters", {"6aa1||||||||||||x"}, "line 2, column 'type': '6aa1'"},
      {"small letters in a list", {"6AA1||||||6ab1||||||x"}, "column 'equivalents': '6ab1'"},
      {"its own equivalent", {"6AA1||||||6AA1||||||x"}, "leave out the row's own type"},
      {"no source", {"6AA1|6.3|0.3||||||||||"}, "line 2, column 'source'"},
      {"twice", {"6AA1||||||||||||x", "6AA1||||||||||||x"}, "line 3, column 'type': '6AA1'"},
      {"a cell too few", {"6AA1|||||||||||x"}, "line 2, column 13"},
  };
  for (const auto& c : kCases) {
    const auto path = File("bad.tsv", c.rows);
    const auto table = TubeTable::Load({path});
    ASSERT_FALSE(table) << c.why;
    EXPECT_EQ(table.error().code, ErrorCode::kUsage) << c.why;
    EXPECT_EQ(table.error().source, path.string()) << c.why;
    EXPECT_THAT(table.error().message, HasSubstr(c.says)) << c.why;
  }
}

TEST_F(TubeFiles, ThatAreNotThereAreMissing) {
  const auto table = TubeTable::Load({folder_ / "none.tsv"});
  ASSERT_FALSE(table);
  EXPECT_EQ(table.error().code, ErrorCode::kMissing);
}

TEST(ShippedTubeTable, TellsWhichWayAReplacementIsFine) {
  const TubeEntry* early = ShippedTubes().Find("6SN7GT");
  const TubeEntry* late = ShippedTubes().Find("6SN7GTB");
  ASSERT_NE(early, nullptr);
  ASSERT_NE(late, nullptr);
  EXPECT_THAT(early->served_by, Contains("6SN7GTB"));
  EXPECT_THAT(late->serves_for, Contains("6SN7GT"));
  EXPECT_THAT(late->served_by, Not(Contains("6SN7GT")));
}

TEST(ShippedTubeTable, KeepsHeatersApartFromEquivalents) {
  const TubeEntry* entry = ShippedTubes().Find("6CB6");
  ASSERT_NE(entry, nullptr);
  EXPECT_THAT(entry->variants, Contains("3CB6"));
  EXPECT_THAT(entry->equivalents, Not(Contains("3CB6")));
}

TEST(ShippedTubeTable, FindsServiceNumbers) {
  ASSERT_NE(ShippedTubes().Find("VT231"), nullptr);
  EXPECT_EQ(ShippedTubes().Find("VT231")->type, "6SN7GT");
  ASSERT_NE(ShippedTubes().Find("CV4024"), nullptr);
  EXPECT_THAT(ShippedTubes().Find("CV4024")->version_of, Contains("12AT7"));
}

TEST(TubeTable, AnswersForANumberWithoutItsSuffix) {
  // The bulb's letters are mostly left out in speech: common practice, no source.
  const struct {
    const char* type;
    const char* row;
  } kCases[] = {{"6SN7", "6SN7GT"}, {"6V6", "6V6"}, {"5U4", "5U4G"}, {"6CB6B", "6CB6"}};
  for (const auto& one : kCases) {
    const TubeEntry* entry = ShippedTubes().FindNearest(one.type);
    ASSERT_NE(entry, nullptr) << one.type;
    EXPECT_EQ(entry->type, one.row) << one.type;
  }
  EXPECT_EQ(ShippedTubes().FindNearest("6SN"), nullptr) << "no whole number";
  EXPECT_EQ(ShippedTubes().FindNearest(""), nullptr);
}

}  // namespace
}  // namespace benchleaf
