#include "gaps/page_numbers.h"

#include "record/printed_page.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::gaps {
namespace {

TEST(ParsePageNumber, TakesPlainNumbersAndThoseOfSections) {
  EXPECT_EQ(ParsePageNumber("42", 0)->number, 42);
  EXPECT_EQ(ParsePageNumber("8-17", 0)->number, 17);
  EXPECT_EQ(ParsePageNumber("8-17", 0)->Section(), 8);
  EXPECT_EQ(ParsePageNumber("42", 0)->Section(), 0);
  for (const char* none : {"", "-", "8-", "-3", "A-3", "0", "12345", "iv"})
    EXPECT_FALSE(ParsePageNumber(none, 0)) << none;
}

std::string Chain(const std::vector<std::string>& printed) {
  ManualRecord manual;
  for (const std::string& number : printed) {
    manual.pages.push_back(PrintedPage(PageKind::kText, static_cast<int>(manual.pages.size()) + 1, number));
  }
  std::string chain;
  for (const NumberedPage& page : NumberedPages(manual)) {
    chain += (chain.empty() ? "" : " ") + std::to_string(page.page) + ":" + page.prefix + std::to_string(page.number);
  }
  return chain;
}

TEST(NumberedPages, LeaveOutMisreadNumbers) {
  EXPECT_EQ(Chain({"", "2", "3", "4"}), "1:2 2:3 3:4");
  EXPECT_EQ(Chain({"3", "4", "9", "6", "7"}), "0:3 1:4 3:6 4:7") << "9 is a misread 5";
  EXPECT_EQ(Chain({"", "", "4", "4", "5", "6"}), "3:4 4:5 5:6") << "the 4 that is in step with 5 and 6";
  EXPECT_EQ(Chain({"1-1", "1-2", "2-1", "2-2"}), "0:1-1 1:1-2 2:2-1 3:2-2");
  EXPECT_EQ(Chain({}), "");
}

}  // namespace
}  // namespace benchleaf::gaps
