#include "benchleaf/lineup/line_up.h"

#include "lineup/shipped_tables.h"
#include "record/printed_page.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

void List(PageRecord& page, const std::string& designator, const std::string& type, const std::string& words, int y,
          const std::string& assembly = "") {
  Print(page, type, 300, y, TermKind::kTube);
  Entry entry;
  entry.designator = designator;
  entry.assembly = assembly;
  entry.description = "Tube, " + type + ", " + words;
  entry.box = {0.1, (y - 2.0) / 1000, 0.8, 0.024};
  entry.confidence = 0.8;
  page.entries.push_back(entry);
}

std::string Text(const std::vector<PageRecord>& pages) {
  ManualRecord manual;
  manual.set = "QUILLHAVEN 12";
  manual.manual = "m";
  manual.pages = pages;
  std::string text;
  for (const LineupTube& tube : LineUp(manual, ShippedTubes(), ShippedFunctions()).tubes) {
    text += (text.empty() ? "" : ", ") + tube.socket.designator + " " + tube.socket.type;
    for (const TubeDuty& duty : tube.duties) {
      text += " " + (duty.section.empty() ? "" : duty.section + "=") + "[" +
              (duty.function.empty() ? "?" + duty.read : duty.function) + "]";
    }
  }
  return text;
}

TEST(LineUp, TakesFunctionsFromThePartsList) {
  PageRecord list = PrintedPage(PageKind::kPartsList, 7);
  List(list, "V1", "6BE6", "CONVERTER", 200);
  List(list, "V2", "6AT6", "DET. 1ST AUDIO", 240);
  List(list, "V3", "6AQ5", "GRZL", 280);
  EXPECT_EQ(Text({list}), "V1 6BE6 [converter], V2 6AT6 [detector] [audio amplifier], V3 6AQ5 [?GRZL]")
      << "words that are no known function are shown as read";
}

TEST(LineUp, TakesFunctionsFromTheTitlesOfADrawing) {
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 3);
  Print(drawing, "HORIZONTAL", 200, 100);
  Print(drawing, "OUTPUT", 232, 126);
  Print(drawing, "V16", 250, 200, TermKind::kDesignator);
  Print(drawing, "6BQ6GTB", 250, 226, TermKind::kTube);
  Print(drawing, "MIXER", 600, 100);
  Print(drawing, "V2A", 600, 200, TermKind::kDesignator);
  Print(drawing, "6U8A", 600, 226, TermKind::kTube);
  Print(drawing, "OSC.", 820, 100);
  Print(drawing, "V2B", 820, 200, TermKind::kDesignator);  // its type cannot be read
  EXPECT_EQ(Text({drawing}), "V2 6U8A A=[mixer] B=[oscillator], V16 6BQ6GTB [horizontal output]");
}

TEST(LineUp, GivesATitleToTheNearestTubeAndNotToOneFarOff) {
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 3);
  Print(drawing, "DAMPER", 200, 100);
  Print(drawing, "V1", 200, 160, TermKind::kDesignator);
  Print(drawing, "6AX4GT", 200, 186, TermKind::kTube);
  Print(drawing, "V2", 300, 300, TermKind::kDesignator);
  Print(drawing, "6AU6", 300, 326, TermKind::kTube);
  EXPECT_EQ(Text({drawing}), "V1 6AX4GT [damper], V2 6AU6");
}

TEST(LineUp, TakesFunctionsFromATableOfTubes) {
  PageRecord table = PrintedPage(PageKind::kSpecifications, 2);
  Print(table, "V2", 100, 200, TermKind::kDesignator);
  Print(table, "6BA6", 180, 200, TermKind::kTube);
  Print(table, "I.F.", 400, 200);
  Print(table, "amplifier", 480, 200);
  Print(table, "V3", 100, 240, TermKind::kDesignator);
  Print(table, "6AT6", 180, 240, TermKind::kTube);
  Print(table, "Detector", 400, 240);
  EXPECT_EQ(Text({table}), "V2 6BA6 [i.f. amplifier], V3 6AT6 [detector]");
}

TEST(LineUp, CountsATubeOnceHoweverOftenItIsSeen) {
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 3);
  Print(drawing, "V2", 250, 200, TermKind::kDesignator, "A1");
  Print(drawing, "6AU6", 250, 226, TermKind::kTube);
  PageRecord list = PrintedPage(PageKind::kPartsList, 7);
  List(list, "V2", "6AU6", "DRIVER", 200, "A1");
  List(list, "V2", "6AU6", "INTEGRATOR", 240, "A2");
  EXPECT_EQ(Text({drawing, list}), "A1V2 6AU6 [driver], A2V2 6AU6 [sweep generator]")
      << "the drawing of assembly A1 does not print A1 before V2";
}

TEST(LineUp, CountsNoTubeWhereSeveralAssembliesMayBeMeant) {
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 3);
  Print(drawing, "V2", 250, 200, TermKind::kDesignator);
  Print(drawing, "6AU6", 250, 226, TermKind::kTube);
  PageRecord list = PrintedPage(PageKind::kPartsList, 7);
  List(list, "V2", "6AU6", "DRIVER", 200, "A1");
  List(list, "V2", "6AU6", "INTEGRATOR", 240, "A2");
  EXPECT_EQ(Text({drawing, list}), "A1V2 6AU6 [driver], A2V2 6AU6 [sweep generator]");
}

TEST(LineUp, CountsHeatersOfTubesWithADesignatorOnly) {
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 3);
  for (const int i : {1, 2, 3}) {
    Print(drawing, "V" + std::to_string(i), 250, 200 * i, TermKind::kDesignator);
    Print(drawing, "6AU6", 250, 200 * i + 26, TermKind::kTube);
  }
  Print(drawing, "5Y3GT", 700, 500, TermKind::kTube);
  ManualRecord manual;
  manual.pages = {drawing};
  const ManualLineup lineup = LineUp(manual, ShippedTubes(), ShippedFunctions());
  ASSERT_EQ(lineup.tubes.size(), 4U);
  EXPECT_FALSE(lineup.tubes[3].counted);
  ASSERT_EQ(lineup.heaters.groups.size(), 1U);
  EXPECT_NEAR(lineup.heaters.groups[0].amps, 0.9, 1e-9);
}

TEST(LineUp, SaysWhichPagesItCouldNotSearch) {
  PageRecord unread = PrintedPage(PageKind::kOther, 4);
  unread.failure = Error{ErrorCode::kTimeout, "the page took too long", "m.pdf", 4};
  ManualRecord manual;
  manual.pages = {PrintedPage(PageKind::kText, 1), unread};
  const ManualLineup lineup = LineUp(manual, ShippedTubes(), ShippedFunctions());
  EXPECT_EQ(lineup.pages, 1U);
  EXPECT_EQ(lineup.failures, (std::vector<Error>{*unread.failure}));
  EXPECT_TRUE(lineup.tubes.empty());
}

}  // namespace
}  // namespace benchleaf
