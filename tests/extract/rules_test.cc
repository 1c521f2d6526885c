#include "extract/page_text.h"
#include "extract/rule_tables.h"
#include "extract/tube_type.h"
#include "places/places.h"

#include "benchleaf/extract/own_rules.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

// A copy of the shipped tables in the test's own folder, for tests to spoil.
class RulesTest : public ::testing::Test {
 protected:
  void SetUp() override {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    folder_ = fs::temp_directory_path() / ("benchleaf_rules_" + std::string(info->name()) + std::to_string(::getpid()));
    fs::create_directories(folder_);
    for (const auto& entry : fs::directory_iterator(SourceFolder() / "config")) {
      if (entry.path().extension() == ".tsv") {
        fs::copy_file(entry.path(), folder_ / entry.path().filename());
      }
    }
  }
  void TearDown() override { fs::remove_all(folder_); }

  void Write(const std::string& name, const std::string& text) const { std::ofstream(folder_ / name) << text; }

  Error Failure() const {
    const auto rules = Rules::Load(folder_);
    EXPECT_FALSE(rules.has_value());
    return rules ? Error{} : rules.error();
  }

  fs::path folder_;
};

TEST_F(RulesTest, ReadsTheShippedTables) {
  const auto rules = Rules::Load(folder_);
  ASSERT_TRUE(rules.has_value()) << rules.error().ToString();
  EXPECT_GT((*rules)->tables().designator_classes.size(), 60U);
  EXPECT_GT((*rules)->tables().tube_types.size(), 2000U);
}

TEST_F(RulesTest, NamesAMissingTable) {
  fs::remove(folder_ / "look-alikes.tsv");
  const Error error = Failure();
  EXPECT_EQ(error.code, ErrorCode::kMissing);
  EXPECT_NE(error.source.find("look-alikes.tsv"), std::string::npos);
}

TEST_F(RulesTest, NamesLineAndColumnOfABadNumber) {
  Write("designator-classes.tsv", "# a comment\nletters\tmeaning\tsure\tsource\nR\tresistor\tvery\tIEEE 315\n");
  const Error error = Failure();
  EXPECT_EQ(error.code, ErrorCode::kUsage);
  EXPECT_NE(error.source.find("designator-classes.tsv"), std::string::npos);
  EXPECT_NE(error.message.find("line 3"), std::string::npos) << error.message;
  EXPECT_NE(error.message.find("'sure'"), std::string::npos) << error.message;
}

TEST_F(RulesTest, RefusesARowWithTooFewCells) {
  Write("designator-classes.tsv", "letters\tmeaning\tsure\tsource\nR\tresistor\n");
  const Error error = Failure();
  EXPECT_NE(error.message.find("line 2, column 3"), std::string::npos) << error.message;
}

TEST_F(RulesTest, RefusesATableWithoutItsColumns) {
  Write("part-numbers.tsv", "name\tpattern\nx\t[0-9]+\n");
  EXPECT_NE(Failure().message.find("'where'"), std::string::npos);
}

TEST_F(RulesTest, RefusesAPatternThatIsNone) {
  Write("part-numbers.tsv", "name\tpattern\twhere\tsure\texample\tsource\nx\t[0-9\tany\t1\t5\tmine\n");
  EXPECT_NE(Failure().message.find("'pattern'"), std::string::npos);
}

TEST_F(RulesTest, RefusesAPatternThatDoesNotFitItsOwnExample) {
  Write("part-numbers.tsv", "name\tpattern\twhere\tsure\texample\tsource\nx\t[0-9]+\tany\t1\tA5\tmine\n");
  EXPECT_NE(Failure().message.find("'example'"), std::string::npos);
}

TEST_F(RulesTest, RefusesAnUnknownRole) {
  Write("list-words.tsv", "role\twords\tsource\nwhatever\tX\tmine\n");
  EXPECT_NE(Failure().message.find("'role'"), std::string::npos);
}

TEST_F(RulesTest, RefusesAWordThatTellsNoClass) {
  Write("part-words.tsv", "words\tclasses\tsource\nCOIL\t\tmine\n");
  EXPECT_NE(Failure().message.find("'classes'"), std::string::npos);
}

TEST_F(RulesTest, RefusesAnUnknownKindOfPage) {
  Write("page-kinds.tsv", "kind\twords\tweight\tsource\nposter\tX\t1\tmine\n");
  EXPECT_NE(Failure().message.find("'kind'"), std::string::npos);
}

TEST_F(RulesTest, RefusesALookAlikeOfTwoCharacters) {
  Write("look-alikes.tsv", "text\tfold\tdigit\tletter\tsure\tsource\nrn\tm\t-\t-\tno\tmine\n");
  EXPECT_NE(Failure().message.find("'text'"), std::string::npos);
}

TEST_F(RulesTest, TakesCrLfAndMoreColumns) {
  Write("designator-classes.tsv", "letters\tmeaning\tnotes\tsure\tsource\r\nR\tresistor\tmine\t1\tIEEE 315\r\n");
  const auto rules = Rules::Load(folder_);
  ASSERT_TRUE(rules.has_value()) << rules.error().ToString();
  EXPECT_EQ((*rules)->tables().designator_classes.size(), 1U);
}

TEST_F(RulesTest, RefusesAnEmptyTable) {
  Write("look-alikes.tsv", "# nothing\n");
  EXPECT_NE(Failure().message.find("header"), std::string::npos);
}

// A restorer's own rows, in a folder beside the shipped tables.
class OwnRulesTest : public RulesTest {
 protected:
  void SetUp() override {
    RulesTest::SetUp();
    own_ = folder_ / "library";
    fs::create_directories(own_);
  }

  void WriteOwn(const std::string& name, const std::string& text) const { std::ofstream(own_ / name) << text; }

  Rules::Tables Tables() const {
    const auto rules = LoadRules(folder_, own_);
    EXPECT_TRUE(rules.has_value()) << rules.error().ToString();
    return rules ? (*rules)->tables() : Rules::Tables{};
  }

  fs::path own_;
};

TEST_F(OwnRulesTest, GoOverTheShippedOnes) {
  WriteOwn("designator-classes.tsv",
           "letters\tmeaning\tsure\tsource\nGG\tgadget\t0.9\tmy bench\nR\tresistor\t0.5\tmine\n");
  WriteOwn("part-words.tsv", "words\tclasses\tsource\nGADGET\tGG\tmine\nCAPACITOR\tC\tmine\n");
  WriteOwn("page-kinds.tsv", "kind\twords\tweight\tsource\nschematic\tSTROMLAUFPLAN\t2\tmine\n");
  WriteOwn("tube-types.tsv", "type\tfamily\tsource\n6ZZ6\treceiving\tmine\n");
  WriteOwn("part-numbers.tsv",
           "name\tpattern\twhere\tsure\texample\tsource\nmy maker\tQX[0-9]{4}\tany\t0.9\tQX1234\tmine\n");
  WriteOwn("look-alikes.tsv", "text\tfold\tdigit\tletter\tsure\tsource\n@\t0\t0\tO\tno\tmine\n");
  WriteOwn("list-words.tsv", "role\twords\tsource\nunit\tBAUGRUPPE\tmine\n");
  const Rules::Tables tables = Tables();
  EXPECT_EQ(tables.designator_classes.at("GG"), 0.9);
  EXPECT_EQ(tables.designator_classes.at("R"), 0.5);
  EXPECT_GT(tables.designator_classes.size(), 60U);
  EXPECT_EQ(tables.part_words.at("GADGET"), std::vector<std::string>{"GG"});
  EXPECT_EQ(tables.part_words.at("CAPACITOR"), std::vector<std::string>{"C"}) << "replaced, not added to";
  EXPECT_EQ(tables.kind_phrases.back().words, std::vector<std::string>{"STROMLAUFPLAN"});
  EXPECT_EQ(tables.tube_types.count("6ZZ6"), 1U);
  EXPECT_EQ(tables.look_alikes.Of("@").fold, '0');
  EXPECT_EQ(tables.list_words.at(extract::ListRole::kUnit).back(), "BAUGRUPPE");
  EXPECT_TRUE(std::any_of(tables.part_patterns.begin(), tables.part_patterns.end(),
                          [](const auto& part) { return part.name == "my maker"; }));
}

TEST_F(OwnRulesTest, MayNameTubesWithoutFigures) {
  WriteOwn("tube-types.tsv", "type\tfamily\tsource\nSTABIL\treceiving\tmine\n");
  const Rules::Tables tables = Tables();
  const auto tube = extract::ParseTubeType("STABIL", tables, extract::TubeContext::kNone);
  ASSERT_TRUE(tube.has_value());
  EXPECT_TRUE(tube->known);
  EXPECT_FALSE(extract::ParseTubeType("STABIL", ShippedRules().tables(), extract::TubeContext::kNone));
}

TEST_F(OwnRulesTest, TakeShippedOnesOut) {
  WriteOwn("designator-classes.tsv", "letters\tmeaning\tsure\tsource\nAT\tnone here\t0\tmine\n");
  WriteOwn("part-words.tsv", "words\tclasses\tsource\nCAPACITOR\t-\tmine\n");
  WriteOwn("page-kinds.tsv", "kind\twords\tweight\tsource\nschematic\tSCHEMATIC DIAGRAM\t0\tmine\n");
  WriteOwn("tube-types.tsv", "type\tfamily\tsource\n6AU6\tnone\tmine\n");
  WriteOwn("part-numbers.tsv", "name\tpattern\twhere\tsure\texample\tsource\nstock number\tX\tany\t0\tX\tmine\n");
  WriteOwn("list-words.tsv", "role\twords\tsource\nnone\tBOARD\tmine\n");
  const Rules::Tables tables = Tables();
  EXPECT_EQ(tables.designator_classes.count("AT"), 0U);
  EXPECT_EQ(tables.part_words.count("CAPACITOR"), 0U);
  EXPECT_FALSE(std::any_of(tables.kind_phrases.begin(), tables.kind_phrases.end(), [](const auto& phrase) {
    return phrase.words == std::vector<std::string>{"SCHEMATIC", "DIAGRAM"};
  }));
  EXPECT_EQ(tables.tube_types.count("6AU6"), 0U);
  EXPECT_FALSE(std::any_of(tables.part_patterns.begin(), tables.part_patterns.end(),
                           [](const auto& part) { return part.name == "stock number"; }));
  const auto& units = tables.list_words.at(extract::ListRole::kUnit);
  EXPECT_EQ(std::count(units.begin(), units.end(), "BOARD"), 0);
}

TEST_F(OwnRulesTest, NameFileLineAndColumnOfWhatIsWrong) {
  WriteOwn("page-kinds.tsv", "kind\twords\tweight\tsource\nschematic\tX\theavy\tmine\n");
  const auto rules = LoadRules(folder_, own_);
  ASSERT_FALSE(rules.has_value());
  EXPECT_EQ(rules.error().source, (own_ / "page-kinds.tsv").string());
  EXPECT_NE(rules.error().message.find("line 2, column 'weight'"), std::string::npos) << rules.error().message;
}

}  // namespace
}  // namespace benchleaf
