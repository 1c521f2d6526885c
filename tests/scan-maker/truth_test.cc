#include "scan-maker/truth.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

PageTruth Page() {
  PageTruth page;
  page.file = "set/manual \"1\".pdf";
  page.page = 3;
  page.kind = "parts list";
  page.printed_number = "8-17";
  page.terms = {{"designator", "C12", {0.125, 0.25, 0.0625, 0.5}, 270}, {"value", "4.7\u03A9", {0, 0, 1, 1}, 0}};
  page.entries = {{"C12", "A4", "CAP: .01", "283-0001-00", ".01MFD", {0.1, 0.2, 0.3, 0.4}}};
  return page;
}

TEST(TruthTest, ComesBackAsItWasWritten) {
  const std::string text = ToJsonLines({Page(), PageTruth{}});
  const std::vector<PageTruth> pages = FromJsonLines(text);
  ASSERT_EQ(pages.size(), 2U);
  EXPECT_EQ(ToJsonLines(pages), text);
  EXPECT_EQ(pages[0].file, Page().file);
  EXPECT_EQ(pages[0].terms[0].turn, 270);
  EXPECT_EQ(pages[0].terms[0].box, Page().terms[0].box);
  EXPECT_EQ(pages[0].terms[1].text, Page().terms[1].text);
  EXPECT_EQ(pages[0].entries[0].part_number, "283-0001-00");
}

TEST(TruthTest, RefusesOtherText) {
  for (const char* text : {"nonsense", "{}", "[1]", "{\"file\":3}"}) {
    EXPECT_THROW(FromJsonLines(text), std::runtime_error) << text;
  }
}

}  // namespace
}  // namespace benchleaf::scanmaker
