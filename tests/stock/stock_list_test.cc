#include "benchleaf/stock/stock_list.h"

#include "places/places.h"
#include "tubes/shipped_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

const std::filesystem::path kShippedWords = SourceFolder() / "config" / "stock-words.tsv";

const StockWords& ShippedWords() {
  static const StockWords words = *StockWords::Load({kShippedWords});
  return words;
}

StockList List(const std::string& text) {
  const auto list = ParseStock(text, "tubes.csv", ShippedWords(), ShippedTubes());
  EXPECT_TRUE(list) << list.error().ToString();
  return list ? *list : StockList{};
}

// "3 6AU6 good; 2 5U4GB bad".
std::string Text(const StockList& list) {
  std::string text;
  for (const StockRow& row : list.rows) {
    text +=
        (text.empty() ? "" : "; ") + std::to_string(row.count) + " " + row.type + " " + std::string(Name(row.state));
  }
  return text;
}

TEST(ParseStock, TakesColumnsAsPeopleWriteThem) {
  const struct {
    const char* why;
    const char* text;
    const char* rows;
  } kCases[] = {
      {"the plain form", "type,count,condition\n6AU6,3,new\n", "3 6AU6 good"},
      {"any order and case", "Condition,COUNT,Type\nnew,3,6AU6\n", "3 6AU6 good"},
      {"semicolons", "type;count;condition\n6AU6;3;\"new; boxed\"\n", "3 6AU6 good"},
      {"a byte order mark and CR LF", "\xEF\xBB\xBFtype,count,condition\r\n6AU6,3,new\r\n", "3 6AU6 good"},
      {"words for the columns", "Tube Type,Qty.,State\n6AU6,3,new\n", "3 6AU6 good"},
      {"quotes of RFC 4180", "type,count,condition\n6AU6,3,\"new, in \"\"its\"\" box\"\n", "3 6AU6 good"},
      {"a row a tube without a count", "type,condition\n6AU6,new\n6AU6,new\n", "1 6AU6 good; 1 6AU6 good"},
      {"no tubes at all", "type,count,condition\n6AU6,0,new\n", ""},
      {"nothing said of condition", "type,count\n6AU6,3\n", "3 6AU6 not stated"},
      {"other columns and empty rows", "type,price,condition\n,,\n6AU6,9,new\n", "1 6AU6 good"},
      {"by the glass alone", "glass,condition\n6AU6,new\n", "1 6AU6 good"},
  };
  for (const auto& c : kCases) {
    const StockList list = List(c.text);
    EXPECT_EQ(Text(list), c.rows) << c.why;
    EXPECT_THAT(list.faults, IsEmpty()) << c.why;
  }
}

TEST(ParseStock, TakesTheTypeByTheGlass) {
  const struct {
    const char* why;
    const char* row;  // type, glass, box
    const char* type;
    const char* remark;
  } kCases[] = {
      {"all agree", "6AU6,6AU6,6AU6", "6AU6", ""},
      {"the glass against list and box", "6AU6,6AV6,6AU6", "6AV6",
       "listed as 6AU6; the glass counts|the box says 6AU6"},
      {"the box alone lies", "6AU6,,6AV6", "6AU6", "the box says 6AV6"},
      {"a worn glass", "6AU6,worn off,", "6AU6", "the glass cannot be read"},
      {"a maker's mark alone (an invented one)", "6AU6,FERNWELL,", "6AU6",
       "the glass says 'FERNWELL', in which no type is known; taken by the list"},
      {"a type among other words", "6AU6,FERNWELL 6AV6 made 1953,", "6AV6", "listed as 6AU6; the glass counts"},
      {"by its box", ",,6AV6", "6AV6", "taken by its box alone"},
      {"spaces and dashes", "6 sn7-gt b,,", "6SN7GTB", ""},
      {"a bulb apart", "6V6 GT,,", "6V6GT", ""},
      {"a service mark", "JAN 5751,,", "5751", ""},
      {"O for nought", "OA2,,", "0A2", ""},
      {"two names", "12AX7A / ECC83,,", "12AX7A/ECC83", ""},
      {"an early bare number", "80,,", "80", ""},
      {"a bare number in a text", "type 80,,", "80", ""},
      {"a date is no type", "FERNWELL 1953,,", "FERNWELL1953", ""},
      {"a type that nobody knows", "xq-17,,", "XQ17", ""},
  };
  for (const auto& c : kCases) {
    const StockList list = List(std::string("type,glass,box\n") + c.row + "\n");
    ASSERT_EQ(list.rows.size(), 1U) << c.why;
    EXPECT_EQ(list.rows[0].type, c.type) << c.why;
    std::string remarks;
    for (const std::string& remark : list.rows[0].remarks) remarks += (remarks.empty() ? "" : "|") + remark;
    EXPECT_EQ(remarks, c.remark) << c.why;
  }
}

TEST(ParseStock, CountsOnlyWhatIsGood) {
  const struct {
    const char* condition;
    const char* tester;
    const char* state;
    const char* why;  // of the answer
  } kCases[] = {
      {"new", "", "good", ""},
      {"NOS", "", "good", ""},
      {"used", "", "unproven", "used, and not said to be tested good"},
      {"used", "good", "good", ""},
      {"used, tests good", "", "good", ""},
      {"used good", "", "unproven", "used, and not said to be tested good"},
      {"used", "85", "unproven", "used, and not said to be tested good; the tester's '85' does not say good"},
      {"used", "untested", "unproven", "untested"},
      {"NOS, untested", "", "unproven", "untested"},
      {"new", "weak", "bad", "the tester says 'weak'"},
      {"used", "no shorts, good", "good", ""},
      {"used", "shorted", "bad", "the tester says 'shorted'"},
      {"gassy", "good", "bad", "its condition is 'gassy'"},
      {"not tested", "", "unproven", "untested"},
      {"no good", "", "bad", "its condition is 'no good'"},
      {"pretty", "", "unproven", "'pretty' does not say whether it is good"},
      {"", "", "unproven", "nothing is said of its condition"},
      {"", "good", "good", ""},
      {"never used", "", "good", ""},
  };
  for (const auto& c : kCases) {
    const StockList list =
        List(std::string("type,condition,tester\n6AU6,\"") + c.condition + "\",\"" + c.tester + "\"\n");
    ASSERT_EQ(list.rows.size(), 1U);
    EXPECT_EQ(Name(list.rows[0].state), c.state) << c.condition << " / " << c.tester;
    EXPECT_EQ(list.rows[0].why, c.why) << c.condition << " / " << c.tester;
  }
}

TEST(ParseStock, NamesLineAndColumnOfABadRowAndTakesTheRest) {
  const struct {
    const char* row;
    const char* place;
    const char* what;
  } kCases[] = {
      {"6AU6,three,new", "line 3, column 2 (count)", "'three' is no count"},
      {"6AU6,-1,new", "line 3, column 2 (count)", "'-1' is no count"},
      {"6AU6,2.5,new", "line 3, column 2 (count)", "no count"},
      {"6AU6,99999,new", "line 3, column 2 (count)", "no count"},
      {"6AU6,,new", "line 3, column 2 (count)", "'' is no count"},
      {",3,new", "line 3, column 1 (type)", "no type is given"},
      {"6AU6,3,new,too,many", "line 3, column 4", "the row has 5 columns"},
      {"6AU6,3,\xFF", "line 3, column 3 (condition)", "not UTF-8"},
      {"6AU6,3,\"new", "line 3, column 3 (condition)", "never closed"},
  };
  for (const auto& c : kCases) {
    const StockList list = List(std::string("type,count,condition\n6AL5,1,new\n") + c.row + "\n12AX7,2,new\n");
    EXPECT_EQ(Text(list), "1 6AL5 good; 2 12AX7 good") << c.row;
    ASSERT_EQ(list.faults.size(), 1U) << c.row;
    EXPECT_THAT(list.faults[0].ToString(), AllOf(HasSubstr("tubes.csv: "), HasSubstr(c.place), HasSubstr(c.what)));
  }
}

TEST(ParseStock, RefusesWhatIsNoTableOfTubes) {
  const struct {
    const char* text;
    const char* message;
  } kCases[] = {
      {"", "the table is empty"},
      {"name,count\n6AU6,1\n", "line 1: no column is named type or glass"},
      {"type,tube\n6AU6,6AU6\n", "line 1, column 2: 'tube' is a second column of the type"},
      {"\xFF\xFEt", "UTF-16"},
  };
  for (const auto& c : kCases) {
    const auto list = ParseStock(c.text, "tubes.csv", ShippedWords(), ShippedTubes());
    ASSERT_FALSE(list) << c.text;
    EXPECT_EQ(list.error().code, ErrorCode::kUsage);
    EXPECT_THAT(list.error().message, HasSubstr(c.message));
  }
}

TEST(ParseStock, TellsWhichColumnsItLeavesOut) {
  EXPECT_THAT(List("type,price,conditon\n6AU6,9,new\n").unused, ElementsAre("price", "conditon"));
}

TEST(StockWords, TakeARestorersOwnRows) {
  const std::filesystem::path own = std::filesystem::path(::testing::TempDir()) / "own-stock-words.tsv";
  std::ofstream(own)
      << "role\twords\tsource\nbad\tMUFFLED\tmy bench\nnone\tNOISY\tmy bench\ncolumn-place\tATTIC\tmine\n";
  const auto words = StockWords::Load({kShippedWords, own});
  ASSERT_TRUE(words) << words.error().ToString();
  EXPECT_THAT(words->Conditions("muffled"), ElementsAre(ConditionWord::kBad));
  EXPECT_THAT(words->Conditions("noisy"), IsEmpty());
  EXPECT_EQ(words->Column("Attic"), StockColumn::kPlace);
  std::filesystem::remove(own);
}

TEST(StockWords, NameThePlaceOfAWrongRow) {
  const std::filesystem::path own = std::filesystem::path(::testing::TempDir()) / "wrong-stock-words.tsv";
  for (const char* row : {"odd\tMUFFLED\tmine", "bad\tmuffled\tmine"}) {
    std::ofstream(own) << "role\twords\tsource\n" << row << "\n";
    const auto words = StockWords::Load({own});
    ASSERT_FALSE(words) << row;
    EXPECT_THAT(words.error().ToString(), AllOf(HasSubstr("wrong-stock-words.tsv"), HasSubstr("line 2, column '")));
  }
  std::filesystem::remove(own);
}

}  // namespace
}  // namespace benchleaf
