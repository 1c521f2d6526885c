#include "benchleaf/extract/rules.h"

#include "extract/page_text.h"
#include "extract/rule_tables.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

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
    for (const auto& entry : fs::directory_iterator(BENCHLEAF_SOURCE_DIR "/config")) {
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

}  // namespace
}  // namespace benchleaf
