#include "benchleaf/report/csv.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(CsvField, QuotesAsRfc4180AndDisarmsFormulas) {
  struct Case {
    const char* why;
    std::string text;
    std::string field;
  };
  const std::vector<Case> cases = {
      {"plain", "C112", "C112"},
      {"empty", "", ""},
      {"comma: RFC 4180, 2.6", "paper, 400 V", "\"paper, 400 V\""},
      {"quote, doubled: RFC 4180, 2.7", "3/4\" bushing", "\"3/4\"\" bushing\""},
      {"line break: RFC 4180, 2.6", "a\nb", "\"a\nb\""},
      {"carriage return within", "a\rb", "\"a\rb\""},
      {"leading space is part of the field: RFC 4180, 2.4", " C1", " C1"},
      // OWASP, "CSV Injection": = + - @ tab CR begin a formula.
      {"formula", "=1+1", "'=1+1"},
      {"formula with quotes", "=HYPERLINK(\"x\")", "\"'=HYPERLINK(\"\"x\"\")\""},
      {"at sign", "@SUM(A1)", "'@SUM(A1)"},
      {"tab", "\t=1", "'\t=1"},
      {"carriage return first", "\r=1", "\"'\r=1\""},
      {"minus with a call", "-2+3+cmd|' /C calc'!A0", "'-2+3+cmd|' /C calc'!A0"},
      {"plus with a cell", "+A1", "'+A1"},
      {"a lone minus is a ditto mark's misreading", "-", "'-"},
      {"a negative voltage is no formula", "-5V", "-5V"},
      {"nor is a signed value", "+.047MFD", "+.047MFD"},
      {"nor a tolerance", "-20%", "-20%"},
      {"a sign within stays", "C1-C8", "C1-C8"},
  };
  for (const Case& c : cases) EXPECT_EQ(CsvField(c.text), c.field) << c.why;
}

TEST(CsvRecord, JoinsWithCommasAndEndsInCrLf) {
  EXPECT_EQ(CsvRecord({"C1", "", "a,b"}), "C1,,\"a,b\"\r\n");
  EXPECT_EQ(CsvRecord({""}), "\r\n");
}

}  // namespace
}  // namespace benchleaf
