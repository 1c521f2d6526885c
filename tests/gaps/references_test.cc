#include "gaps/references.h"

#include "record/printed_page.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::gaps {
namespace {

std::string Found(PageKind kind, const std::string& line) {
  PageRecord page = PrintedPage(kind, 1);
  PrintLine(page, line, 50, 500);
  std::string found;
  for (const Reference& reference : ReferencesOn(page)) {
    const char* names[] = {"figure", "section", "page", "volume"};
    found += (found.empty() ? "" : ", ") + std::string(names[static_cast<int>(reference.named)]) + " " +
             reference.number + (reference.is_caption ? "!" : "");
  }
  return found;
}

TEST(ReferencesOn, TellCaptionsFromMentions) {
  const struct {
    PageKind kind;
    const char* line;
    const char* found;
    const char* why;
  } kCases[] = {
      {PageKind::kText, "ADJUST L3, SEE FIG. 5-3, FOR MAXIMUM", "figure 5-3", "spoken of"},
      {PageKind::kText, "FIG. 5-3 SCHEMATIC DIAGRAM", "figure 5-3!", "stands there"},
      {PageKind::kText, "AS FIG.5-3 SHOWS", "figure 5-3", "read as one word"},
      {PageKind::kText, "SEE FIGURE 2A AND SECTION IV", "figure 2A, section IV", "letters and Roman numbers"},
      {PageKind::kText, "SECTION 4 CALIBRATION", "section 4!", "a heading"},
      {PageKind::kText, "VOLUME 2 HAS THE SCHEMATIC DIAGRAMS ON PAGE 4-7", "volume 2, page 4-7", "two of them"},
      {PageKind::kSchematic, "CHASSIS TV-217 FIG. 7", "figure 7!", "on a drawing anywhere"},
      {PageKind::kContents, "FIG. 5-3 SCHEMATIC DIAGRAM      5-1", "figure 5-3, page 5-1", "contents only name"},
      {PageKind::kContents, "CHANNELS 2 THROUGH 13", "", "no page: nothing leads up to it"},
      {PageKind::kContents, "PARTS LIST ......... 6", "page 6", "leaders"},
      {PageKind::kText, "TURN VOLUME CONTROL TO MAXIMUM", "", "another kind of volume"},
      {PageKind::kText, "PAGE THE OPERATOR", "", "no number"},
      {PageKind::kText, "", "", "nothing"},
  };
  for (const auto& one : kCases) EXPECT_EQ(Found(one.kind, one.line), one.found) << one.line << ": " << one.why;
}

}  // namespace
}  // namespace benchleaf::gaps
