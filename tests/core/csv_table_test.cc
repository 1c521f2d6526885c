#include "benchleaf/core/csv_table.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(CsvTest, ReadsRecords) {
  const struct {
    std::string text;
    std::vector<CsvRow> rows;
    const char* reason;
  } kCases[] = {
      {"a,b\nc,d\n", {{1, {"a", "b"}}, {2, {"c", "d"}}}, "RFC 4180, 2.1"},
      {"a,b\nc,d", {{1, {"a", "b"}}, {2, {"c", "d"}}}, "RFC 4180, 2.2: no line end at the end"},
      {"a\r\nb\r\n", {{1, {"a"}}, {2, {"b"}}}, "CR LF"},
      {"a\rb\r", {{1, {"a"}}, {2, {"b"}}}, "CR alone"},
      {"\xEF\xBB\xBF"
       "a,b",
       {{1, {"a", "b"}}},
       "byte order mark"},
      {"\"a,b\",c", {{1, {"a,b", "c"}}}, "RFC 4180, 2.6: a comma in quotes"},
      {"\"a\"\"b\"", {{1, {"a\"b"}}}, "RFC 4180, 2.7: a doubled quote"},
      {"\"a\r\nb\",c\nd", {{1, {"a\nb", "c"}}, {3, {"d"}}}, "a line end in quotes counts as a line"},
      {"a 5\" tube,b", {{1, {"a 5\" tube", "b"}}}, "a quote within an unquoted cell"},
      {"a,,\n", {{1, {"a", "", ""}}}, "empty cells"},
      {"\n\na\n\n", {{3, {"a"}}}, "empty lines"},
      {"", {}, "nothing"},
      {"\xEF\xBB\xBF", {}, "nothing but a byte order mark"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    const CsvTable table = ParseCsv(c.text);
    EXPECT_EQ(table.rows, c.rows);
    EXPECT_TRUE(table.faults.empty());
  }
}

TEST(CsvTest, AnUnclosedQuoteSpoilsOnlyItsLine) {
  const CsvTable table = ParseCsv("a,b\nc,\"d\ne,f\n");
  EXPECT_EQ(table.rows, (std::vector<CsvRow>{{1, {"a", "b"}}, {3, {"e", "f"}}}));
  ASSERT_EQ(table.faults.size(), 1U);
  EXPECT_EQ(table.faults[0].line, 2);
  EXPECT_EQ(table.faults[0].column, 2);
}

TEST(CsvTest, TextBehindAClosingQuoteIsAFault) {
  const CsvTable table = ParseCsv("\"a\"b,c\nd,e\n");
  EXPECT_EQ(table.rows, (std::vector<CsvRow>{{2, {"d", "e"}}}));
  ASSERT_EQ(table.faults.size(), 1U);
  EXPECT_EQ(table.faults[0].line, 1);
}

TEST(CsvTest, TakesAnotherSeparator) {
  EXPECT_EQ(ParseCsv("a;\"b;c\"\nd,e;f\n", ';').rows, (std::vector<CsvRow>{{1, {"a", "b;c"}}, {2, {"d,e", "f"}}}));
}

TEST(TrimmedCell, LosesBlanksAtItsEndsOnly) {
  EXPECT_EQ(TrimmedCell(" 6V6 GT\t\r\n"), "6V6 GT");
  EXPECT_EQ(TrimmedCell(" \t"), "");
}

}  // namespace
}  // namespace benchleaf
