#include "benchleaf/report/gaps.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

PagePlace Place(int page, PageKind kind) {
  return {"QUILLHAVEN 12", "m", "m.pdf", page, kind, "8-" + std::to_string(page)};
}

ManualGaps Made() {
  ManualGaps gaps;
  gaps.set = "QUILLHAVEN 12";
  gaps.manual = "m";
  gaps.pages = {{Place(1, PageKind::kSchematic), std::nullopt, 0.9, false},
                {Place(2, PageKind::kSchematic), std::nullopt, 0.1, true}};
  gaps.schematic_pages = 2;
  gaps.gaps = {{GapKind::kNotDrawn,
                GapGrade::kNotSeen,
                "C3",
                "listed, and on no schematic",
                {{Place(1, PageKind::kPartsList), FractionBox{0.1, 0.2, 0.25, 0.02}, "Capacitor"}},
                {Place(2, PageKind::kSchematic)}},
               {GapKind::kVolume, GapGrade::kMissing, "volume 2", "no file is this volume", {}, {}}};
  return gaps;
}

TEST(GapsText, SaysWhatWasSearchedAndWhatCouldNotBeCompared) {
  EXPECT_THAT(
      GapsText(Made(), {}),
      StartsWith("QUILLHAVEN 12, m: 2 findings\n"
                 "searched: 2 pages, 1 of them failed or badly read; 2 pages of kind 'schematic' (1 badly read), 0 "
                 "pages of kind 'parts list'\n"
                 "no parts list was found among them: what is drawn cannot be compared with a list\n"));
}

TEST(GapsText, NamesThePageOfAFindingAndThePagesThatMayHoldIt) {
  EXPECT_THAT(
      GapsText(Made(), {}),
      AllOf(HasSubstr("not-drawn  not seen  C3        listed, and on no schematic  m.pdf p. 1 (printed 8-1), upper "
                      "left  m.pdf p. 2 (printed 8-2)"),
            HasSubstr("volume     missing   volume 2")));
}

TEST(GapsJson, HoldsWhatWasSearchedAndBoxesThatCanBeShown) {
  EXPECT_THAT(
      GapsJson(Made()),
      AllOf(StartsWith("{\"type\":\"searched\",\"set\":\"QUILLHAVEN 12\""), HasSubstr("\"status\":\"badly read\""),
            HasSubstr("{\"type\":\"gap\",\"set\":\"QUILLHAVEN 12\",\"manual\":\"m\",\"kind\":\"not-drawn\","
                      "\"grade\":\"not seen\",\"what\":\"C3\""),
            HasSubstr("\"box\":[0.1,0.2,0.25,0.02],\"read\":\"Capacitor\"")));
}

TEST(GapsCsv, HasARowForEachPlace) {
  EXPECT_EQ(GapsCsv(Made(), true),
            "set,manual,kind,grade,what,why,file,page,printed_page,box,badly_read\r\n"
            "QUILLHAVEN 12,m,not-drawn,not seen,C3,\"listed, and on no schematic\",m.pdf,1,8-1,\"0.1,0.2,0.25,0.02\","
            "m.pdf p. 2 (printed 8-2)\r\n"
            "QUILLHAVEN 12,m,volume,missing,volume 2,no file is this volume,,,,,\r\n");
  EXPECT_THAT(GapsCsv(Made(), false), Not(HasSubstr("grade")));
}

}  // namespace
}  // namespace benchleaf
