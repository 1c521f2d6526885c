#include "extract/page_text.h"

#include "benchleaf/paging/paging.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;

PageFacts Facts(const PageReading& reading) { return DescribePage(reading, ShippedRules()); }

std::vector<std::string> Repeated(const std::string& line, int times) {
  return std::vector<std::string>(static_cast<std::size_t>(times), line);
}

std::vector<std::string> Joined(std::vector<std::string> a, const std::vector<std::string>& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}

// Page matter as manuals have it: common practice, no source.
const std::vector<std::string> kProse =
    Repeated("The signal from the antenna is coupled through the primary winding to the grid of the mixer.", 14);

PageReading Schematic(const std::vector<std::string>& more) {
  PageReading reading = PageOf(Joined({"R1      C2        V1        L4", "470K    .05       6AU6      2MH",
                                       "    R2         C3        R5       T1", "    1M         250MMF    33K      ",
                                       "C5     R7      V2      C8      R9", "10MMF  2.2K    6AV6    .01MFD  47K"},
                                      more),
                               WordOrigin::kString);
  reading.measures.line_ink = 0.5;
  reading.measures.long_lines = 30;
  return reading;
}

TEST(DescribePage, KnowsASchematic) {
  EXPECT_EQ(Facts(Schematic({})).kind, PageKind::kSchematic);
  const PageFacts titled = Facts(Schematic({"", "FIGURE 8-3. SCHEMATIC DIAGRAM"}));
  EXPECT_EQ(titled.kind, PageKind::kSchematic);
  EXPECT_GT(titled.kind_confidence, Facts(Schematic({})).kind_confidence);
  EXPECT_THAT(titled.titles, Contains(HasSubstr("FIGURE 8-3.")));
}

TEST(DescribePage, KnowsAPartsList) {
  std::vector<std::string> lines = {"PARTS LIST", ""};
  for (int i = 1; i < 12; ++i) {
    lines.push_back("R" + std::to_string(i) + "      Resistor, 470K, 1/2 W     61-20" + std::to_string(10 + i) + "-1");
  }
  EXPECT_EQ(Facts(PageOf(lines)).kind, PageKind::kPartsList);
  lines[0] = "";
  EXPECT_EQ(Facts(PageOf(lines)).kind, PageKind::kPartsList) << "a continued page without a title";
}

TEST(DescribePage, KnowsALocatorByDesignatorsWithoutValues) {
  PageReading reading = PageOf({"R1      C2       V1       L4", "   R2       C3      R5", "C5      R7      V2      C8"},
                               WordOrigin::kString);
  reading.measures.dark_share = 0.3;
  EXPECT_EQ(Facts(reading).kind, PageKind::kPartsLocator);
}

TEST(DescribePage, KnowsALocatorOfOutlinesByTheSideOfTheChassisThatItShows) {
  for (const char* title : {"TOP OF CHASSIS", "UNDERSIDE OF CHASSIS", "CHASSIS LAYOUT", "REAR VIEW"}) {
    PageReading reading =
        PageOf({title, "", "R1      C2       V1       L4", "   R2       C3      R5", "C5      R7      V2      C8"},
               WordOrigin::kString);
    reading.measures.line_ink = 0.5;  // the outlines of parts look like a circuit's lines
    EXPECT_EQ(Facts(reading).kind, PageKind::kPartsLocator) << title;
  }
}

// A circuit round a part of many pins, each with a name: designators are one word in a dozen.
TEST(DescribePage, KnowsASchematicFullOfNames) {
  PageReading reading = PageOf(Joined(Repeated("WR   RD   CS   OE   TX+   RX+   NMI-   CK", 12),
                                      {"R1      C2        R4        C4      R7", "    FRAME    LINE"}),
                               WordOrigin::kString);
  EXPECT_EQ(Facts(reading).kind, PageKind::kOther);
  reading.measures.line_ink = 0.5;
  reading.measures.glyphs = 400;
  reading.measures.text_row_share = 0.3;
  EXPECT_EQ(Facts(reading).kind, PageKind::kSchematic);
  reading.measures.text_row_share = 0.9;
  EXPECT_EQ(Facts(reading).kind, PageKind::kOther) << "a table, whatever of";
}

TEST(DescribePage, KnowsATubeLayout) {
  EXPECT_EQ(Facts(PageOf({"TUBE LAYOUT", "", "V1       V2       V3       V4", "6AU6     6AV6     12AX7    5U4GB", "",
                          "V5       V6", "6SN7GT   6BQ6GTB"},
                         WordOrigin::kString))
                .kind,
            PageKind::kTubeLayout);
}

TEST(DescribePage, KnowsKindsByTheirWords) {
  const struct {
    const char* title;
    PageKind kind;
  } kCases[] = {
      {"TABLE OF CONTENTS", PageKind::kContents},       {"ALIGNMENT PROCEDURE", PageKind::kAlignment},
      {"SECTION 4. CALIBRATION", PageKind::kAlignment}, {"SPECIFICATIONS", PageKind::kSpecifications},
      {"BLOCK DIAGRAM", PageKind::kBlockDiagram},       {"TROUBLESHOOTING", PageKind::kTroubleshooting},
      {"THEORY OF OPERATION", PageKind::kText},         {"FIGURE 3. WAVEFORMS", PageKind::kWaveforms},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Facts(PageOf(Joined({one.title, ""}, kProse))).kind, one.kind) << one.title;
  }
}

TEST(DescribePage, ReadsTitlesWithASpoiledLetter) {
  EXPECT_EQ(Facts(PageOf(Joined({"SPECIFlCATlONS", ""}, {}))).kind, PageKind::kOther) << "two letters are too many";
  EXPECT_EQ(Facts(PageOf({"SPECIFICATI0NS", ""})).kind, PageKind::kSpecifications);
}

TEST(DescribePage, KnowsRunningTextAndCovers) {
  PageReading text = PageOf(kProse);
  text.measures.text_row_share = 0.95;
  EXPECT_EQ(Facts(text).kind, PageKind::kText);
  PageReading cover = PageOf({"", "", "", "", "", "SERVICE MANUAL", "", "LARKFIELD", "", "MODEL 512"});
  for (Word& word : cover.words) {
    word.box.height *= 3;
  }
  const PageFacts facts = Facts(cover);
  EXPECT_EQ(facts.kind, PageKind::kCover);
  EXPECT_EQ(facts.model, "512");
}

TEST(DescribePage, MentionsInTextDoNotOutweighTheShape) {
  std::vector<std::string> lines = kProse;
  lines.insert(lines.begin() + 8, "Refer to the schematic diagram for the connections of the coil and the parts list.");
  PageReading reading = PageOf(lines);
  reading.measures.text_row_share = 0.95;
  EXPECT_EQ(Facts(reading).kind, PageKind::kText);
}

TEST(DescribePage, ReadsThePrintedNumber) {
  const struct {
    const char* foot;
    const char* number;
  } kCases[] = {
      {"                              8-17", "8-17"},
      {"                         -42-", "42"},
      {"         PAGE 42", "42"},
      {"SERVICE DATA                          42", "42"},
      {"                  8-l7", "8-17"},
      {"      LARKFIELD 512", ""},
      {"          74-1032-5", ""},
      {"       - 9 -", "9"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Facts(PageOf(Joined(Joined(kProse, kProse), {"", one.foot}))).printed_number, one.number) << one.foot;
  }
}

TEST(DescribePage, ReadsTheModel) {
  EXPECT_EQ(Facts(PageOf({"LARKFIELD MODEL 1420"})).model, "1420");
  EXPECT_EQ(Facts(PageOf({"CHASSIS TV-217"})).model, "TV-217");
  EXPECT_EQ(Facts(PageOf({"MODEL NO. 535A"})).model, "535A");
  EXPECT_EQ(Facts(PageOf({"THE CHASSIS IS GROUNDED"})).model, "");
}

TEST(DescribePage, IsOtherForAPageWithoutWords) {
  const PageFacts facts = Facts(PageReading{});
  EXPECT_EQ(facts.kind, PageKind::kOther);
  EXPECT_EQ(facts.kind_confidence, 0);
  EXPECT_TRUE(facts.titles.empty());
}

TEST(DescribePage, ReadsTurnedTitles) {
  PageReading reading = Schematic({});
  Word word;
  word.text = "SCHEMATIC";
  word.box = {20, 100, 70, 200};
  word.turn = 90;
  word.confidence = 1;
  reading.words.push_back(word);
  EXPECT_EQ(Facts(reading).kind, PageKind::kSchematic);
}

}  // namespace
}  // namespace benchleaf
