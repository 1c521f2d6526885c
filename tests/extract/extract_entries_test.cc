#include "extract/page_text.h"

#include "benchleaf/extract/extract.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <ctime>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

// One line an entry: assembly/designator|description|part number|quantity|value, the layout's parts as printed; an item
// number stands as #12 in the designator's place.
std::vector<std::string> Rows(const PageReading& reading, ListState& state) {
  std::vector<std::string> rows;
  for (const Entry& entry : ExtractEntries(reading, ShippedRules(), state)) {
    std::string row = entry.assembly.empty() ? "" : entry.assembly + "/";
    row += (entry.item.empty() ? entry.designator : "#" + entry.item) + "|" + entry.description + "|" +
           entry.part_number + "|" + entry.quantity + "|" + entry.value;
    rows.push_back(row);
  }
  return rows;
}

std::vector<std::string> Rows(const std::vector<std::string>& lines) {
  ListState state;
  return Rows(PageOf(lines), state);
}

using Strings = std::vector<std::string>;

// Layouts of parts lists of 1958 to 1985 manuals: common practice, no source.

TEST(ExtractEntries, ReadsColumnsWithTheDesignatorFirst) {
  EXPECT_EQ(Rows({
                "SYMBOL   DESCRIPTION                        PART NO.",
                "",
                "C1       Capacitor, .05 MFD, 600 V, paper    74-1032-5",
                "C2       Capacitor, 250 MMF, 500 V, mica     74-1033-7",
                "R1       Resistor, 470K, 1/2 W, 10%          61-2001-1",
                "V1       Tube, 6AU6                          86-1001-1",
            }),
            (Strings{
                "C1|Capacitor, .05 MFD, 600 V, paper|74-1032-5||.05MFD",
                "C2|Capacitor, 250 MMF, 500 V, mica|74-1033-7||250MMF",
                "R1|Resistor, 470K, 1/2 W, 10%|61-2001-1||470K",
                "V1|Tube, 6AU6|86-1001-1||",
            }));
}

TEST(ExtractEntries, ReadsDottedLeaders) {
  EXPECT_EQ(Rows({
                "R101.....Resistor, 470K, 1/2 W.........61-2001-1",
                "R102 ....Resistor, 1 MEG, 1/2 W .......61-2002-4",
                "R103 . . Resistor, 4.7K, 1 W . . . . . 61-2003-2",
            }),
            (Strings{
                "R101|Resistor, 470K, 1/2 W|61-2001-1||470K",
                "R102|Resistor, 1 MEG, 1/2 W|61-2002-4||1MEG",
                "R103|Resistor, 4.7K, 1 W|61-2003-2||4.7K",
            }));
}

TEST(ExtractEntries, SpellsOutRangesAndLists) {
  EXPECT_EQ(Rows({
                "R1-R3          Resistor, 470K     61-2001-1",
                "R4 thru R6     Resistor, 100K     61-2002-4",
                "D1~2           Diode, 1N34A       48-1001-2",
                "C12,14,17      Capacitor, 10 MMF  20-1001-3",
                "C1A            Capacitor, 80 MFD  24-1001-3",
                "B              Capacitor, 20 MFD",
            }),
            (Strings{
                "R1|Resistor, 470K|61-2001-1||470K",
                "R2|Resistor, 470K|61-2001-1||470K",
                "R3|Resistor, 470K|61-2001-1||470K",
                "R4|Resistor, 100K|61-2002-4||100K",
                "R5|Resistor, 100K|61-2002-4||100K",
                "R6|Resistor, 100K|61-2002-4||100K",
                "D1|Diode, 1N34A|48-1001-2||",
                "D2|Diode, 1N34A|48-1001-2||",
                "C12|Capacitor, 10 MMF|20-1001-3||10MMF",
                "C14|Capacitor, 10 MMF|20-1001-3||10MMF",
                "C17|Capacitor, 10 MMF|20-1001-3||10MMF",
                "C1A|Capacitor, 80 MFD|24-1001-3||80MFD",
                "C1B|Capacitor, 20 MFD|24-1001-3||20MFD",
            }));
}

TEST(ExtractEntries, TakesADashForTheDotOfACapacitorInMicrofarads) {
  EXPECT_EQ(Rows({
                "C1       Capacitor, -1 MFD, 200 V            74-1032-5",
                "C2       Capacitor, -005MFD, 600 V           74-1033-7",
                "C3       Capacitor, -250 MMF, 500 V, mica    74-1034-2",
                "C4       Capacitor, 80-40 MFD, 450 V         74-1035-2",
            }),
            (Strings{
                "C1|Capacitor, -1 MFD, 200 V|74-1032-5||.1MFD",
                "C2|Capacitor, -005 MFD, 600 V|74-1033-7||.005MFD",
                "C3|Capacitor, -250 MMF, 500 V, mica|74-1034-2||250MMF",
                "C4|Capacitor, 80-40 MFD, 450 V|74-1035-2||80-40MFD",
            }));
}

TEST(ExtractEntries, ReadsValuesOfWhichALetterIsSpoiled) {
  EXPECT_EQ(Rows({
                "C1       Capacitor, S00 MMF, 500 V, mica     20-1032-5",
                "C2       Capacitor, .1 MED, 400 V, paper     20-1033-7",
                "C3       Capacitor, 1O0MMP, 500 V, mica      20-1034-7",
                "C4       Capacitor, o1 MFD, 200 V, paper     20-1035-7",
                "R1       Resistor, 2.2 MEG.1/2 W, 10%        61-2001-1",
                "R2       Resistor, 470 DHMS, 1/2 W, 10%      61-2002-1",
                "R3       Resistor, see note 3                61-2003-1",
                "R4       Resistor, 4,7K.2W,10%               61-2004-1",
            }),
            (Strings{
                "C1|Capacitor, S00 MMF, 500 V, mica|20-1032-5||500MMF",
                "C2|Capacitor, .1 MED, 400 V, paper|20-1033-7||.1MFD",
                "C3|Capacitor, 1O0MMP, 500 V, mica|20-1034-7||100MMF",
                "C4|Capacitor, o1 MFD, 200 V, paper|20-1035-7||",
                "R1|Resistor, 2.2 MEG.1/2 W, 10%|61-2001-1||2.2MEG",
                "R2|Resistor, 470 DHMS, 1/2 W, 10%|61-2002-1||470OHMS",
                "R3|Resistor, see note 3|61-2003-1||",
                "R4|Resistor, 4,7K.2W,10%|61-2004-1||4.7K",
            }));
}

TEST(ExtractEntries, TakesNoHeadingOfAGroupIntoADescription) {
  EXPECT_EQ(Rows({
                "L1       Coil, loop antenna                  36-7885-8",
                "         LOUDSPEAKERS",
                "LS1      Loudspeaker, 4 inch                 55-6407-5",
                "         with cable",
                "P1       PLUG, LINE                          14-7401-3",
                "         CORD",
            }),
            (Strings{
                "L1|Coil, loop antenna|36-7885-8||",
                "LS1|Loudspeaker, 4 inch with cable|55-6407-5||",
                "P1|PLUG, LINE CORD|14-7401-3||",
            }));
}

TEST(ExtractEntries, TakesNoPinsOfADrawingForRows) {
  PageReading reading = PageOf({"R1     CLOCK", "R2     DATA", "R3     RESET", "R4     READY"}, WordOrigin::kString);
  ListState state;
  EXPECT_EQ(ExtractEntries(reading, ShippedRules(), state).size(), 4U) << "nothing is known of the page";
  reading.measures.glyphs = 300;
  reading.measures.text_row_share = 0.2;
  EXPECT_TRUE(ExtractEntries(reading, ShippedRules(), state).empty()) << "its lettering stands scattered";
}

TEST(ExtractEntries, FollowsCellsThatWrap) {
  EXPECT_EQ(Rows({
                "C4,5,8,15,    Capacitor, .01 MFD, 400 V    20-1001-3",
                "17,21         paper",
                "C6            Capacitor, 100 MMF, mica     20-1002-3",
                "C103,105-     Capacitor, 56 MMF            20-1003-3",
                "107",
            }),
            (Strings{
                "C4|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C5|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C8|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C15|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C17|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C21|Capacitor, .01 MFD, 400 V paper|20-1001-3||.01MFD",
                "C6|Capacitor, 100 MMF, mica|20-1002-3||100MMF",
                "C103|Capacitor, 56 MMF|20-1003-3||56MMF",
                "C105|Capacitor, 56 MMF|20-1003-3||56MMF",
                "C106|Capacitor, 56 MMF|20-1003-3||56MMF",
                "C107|Capacitor, 56 MMF|20-1003-3||56MMF",
            }));
}

TEST(ExtractEntries, PutsContinuationLinesToTheRowAbove) {
  ListState state;
  const PageReading reading = PageOf({
      "T1    Transformer, power,          38-1001-1",
      "        117 V, 60 cycle",
      "T2    Transformer, audio output    38-1002-2",
      "S1    Switch, on-off               58-1001-1",
  });
  EXPECT_EQ(Rows(reading, state), (Strings{
                                      "T1|Transformer, power, 117 V, 60 cycle|38-1001-1||",
                                      "T2|Transformer, audio output|38-1002-2||",
                                      "S1|Switch, on-off|58-1001-1||",
                                  }));
  const auto entries = ExtractEntries(reading, ShippedRules(), state);
  const Box row = ToLevel(reading.frame, entries[0].box);
  EXPECT_NEAR(row.y, kMargin, 2);
  EXPECT_NEAR(row.bottom(), kMargin + kLinePitch + kCapHeight, 2) << "the box holds both lines";
}

TEST(ExtractEntries, PutsHeadingsOfAssembliesInForce) {
  ListState state;
  EXPECT_EQ(Rows(PageOf({
                     "ASSEMBLY A4  SWEEP GENERATOR",
                     "",
                     "R1    Resistor, 470K    61-2001-1",
                     "R2    Resistor, 100K    61-2002-1",
                     "",
                     "UNIT 2",
                     "",
                     "R1    Resistor, 33K     61-2003-1",
                     "R2    Resistor, 1K      61-2004-1",
                 }),
                 state),
            (Strings{
                "A4/R1|Resistor, 470K|61-2001-1||470K",
                "A4/R2|Resistor, 100K|61-2002-1||100K",
                "UNIT 2/R1|Resistor, 33K|61-2003-1||33K",
                "UNIT 2/R2|Resistor, 1K|61-2004-1||1K",
            }));
  EXPECT_EQ(state.assembly, "UNIT 2");
  // The next page goes on with it.
  EXPECT_EQ(Rows(PageOf({"R3    Resistor, 2K    61-2005-1", "R4    Resistor, 3K    61-2006-1"}), state),
            (Strings{"UNIT 2/R3|Resistor, 2K|61-2005-1||2K", "UNIT 2/R4|Resistor, 3K|61-2006-1||3K"}));
}

TEST(ExtractEntries, KeepsPrintedAssemblies) {
  EXPECT_EQ(Rows({
                "A4       Board assembly, power supply    74-1000-1",
                "A4C1     Capacitor, .1 MFD               20-1001-1",
                "A4R1     Resistor, 1K                    61-1001-1",
            }),
            (Strings{
                "A4|Board assembly, power supply|74-1000-1||",
                "A4/A4C1|Capacitor, .1 MFD|20-1001-1||.1MFD",
                "A4/A4R1|Resistor, 1K|61-1001-1||1K",
            }));
}

TEST(ExtractEntries, ReadsTheDesignatorInTheLastColumn) {
  EXPECT_EQ(Rows({
                "PART NO.      DESCRIPTION              SYMBOL",
                "61-2001-1     Resistor, 470K, 1/2 W    R1",
                "61-2002-1     Resistor, 100K, 1/2 W    R2,3",
                "20-1001-1     Capacitor, .05 MFD       C1",
            }),
            (Strings{
                "R1|Resistor, 470K, 1/2 W|61-2001-1||470K",
                "R2|Resistor, 100K, 1/2 W|61-2002-1||100K",
                "R3|Resistor, 100K, 1/2 W|61-2002-1||100K",
                "C1|Capacitor, .05 MFD|20-1001-1||.05MFD",
            }));
}

TEST(ExtractEntries, ReadsThePartNumberInTheFirstColumn) {
  EXPECT_EQ(Rows({
                "61-2001-1    R1    Resistor, 470K, 1/2 W",
                "61-2002-1    R2    Resistor, 100K, 1/2 W",
                "20-1001-1    C1    Capacitor, .05 MFD",
            }),
            (Strings{
                "R1|Resistor, 470K, 1/2 W|61-2001-1||470K",
                "R2|Resistor, 100K, 1/2 W|61-2002-1||100K",
                "C1|Capacitor, .05 MFD|20-1001-1||.05MFD",
            }));
}

TEST(ExtractEntries, ReadsTwoTablesAbreastOneAfterTheOther) {
  EXPECT_EQ(Rows({
                "                    ASSEMBLY A1 RECEIVER CHASSIS",
                "",
                "R1   Resistor, 470K   61-2001-1      C1   Capacitor, 10 MMF   20-1001-1",
                "R2   Resistor, 100K   61-2002-1      C2   Capacitor, 20 MMF   20-1002-1",
                "R3   Resistor, 33K    61-2003-1      C3   Capacitor, 30 MMF   20-1003-1",
            }),
            (Strings{
                "A1/R1|Resistor, 470K|61-2001-1||470K",
                "A1/R2|Resistor, 100K|61-2002-1||100K",
                "A1/R3|Resistor, 33K|61-2003-1||33K",
                "A1/C1|Capacitor, 10 MMF|20-1001-1||10MMF",
                "A1/C2|Capacitor, 20 MMF|20-1002-1||20MMF",
                "A1/C3|Capacitor, 30 MMF|20-1003-1||30MMF",
            }));
}

TEST(ExtractEntries, LetsAHeadingOverBothTablesEndThem) {
  const Strings rows = Rows({
      "R1   Resistor, 470K   61-2001-1      C1   Capacitor, 10 MMF   20-1001-1",
      "R2   Resistor, 100K   61-2002-1      C2   Capacitor, 20 MMF   20-1002-1",
      "",
      "               A2 POWER SUPPLY CHASSIS ASSEMBLY",
      "",
      "R1   Resistor, 33K    61-2003-1      C1   Capacitor, 30 MMF   20-1003-1",
      "R2   Resistor, 22K    61-2004-1      C2   Capacitor, 40 MMF   20-1004-1",
  });
  ASSERT_EQ(rows.size(), 8U);
  EXPECT_EQ(rows[2], "C1|Capacitor, 10 MMF|20-1001-1||10MMF");
  EXPECT_EQ(rows[4], "A2/R1|Resistor, 33K|61-2003-1||33K");
  EXPECT_EQ(rows[7], "A2/C2|Capacitor, 40 MMF|20-1004-1||40MMF");
}

TEST(ExtractEntries, ReadsListsByItemNumbers) {
  EXPECT_EQ(Rows({
                "ITEM   PART NO.     DESCRIPTION",
                "1      74-1001-1    Knob, black",
                "2      74-1002-1    Bezel, chrome",
                "3      74-1003-1    Foot, rubber",
                "4      74-1004-1    Screw, shoulder",
            }),
            (Strings{
                "#1|Knob, black|74-1001-1||",
                "#2|Bezel, chrome|74-1002-1||",
                "#3|Foot, rubber|74-1003-1||",
                "#4|Screw, shoulder|74-1004-1||",
            }));
}

TEST(ExtractEntries, BeginsARowWhereAnItemNumberStandsThoughItsPartNumberIsUnread) {
  EXPECT_EQ(Rows({
                "ITEM   DESCRIPTION        PART NO.",
                "8      Knob, black        74-1001-1",
                "9      Bezel, chrome",
                "10     Foot, rubber,      74-1003-1",
                "       with felt",
                "10A    Screw, shoulder    74-1004-1",
                "11     Washer             74-1005-1",
            }),
            (Strings{
                "#8|Knob, black|74-1001-1||",
                "#9|Bezel, chrome|||",
                "#10|Foot, rubber, with felt|74-1003-1||",
                "#10A|Screw, shoulder|74-1004-1||",
                "#11|Washer|74-1005-1||",
            }));
}

TEST(ExtractEntries, PutsItemNumbersRightByThoseAboveAndBelow) {
  EXPECT_EQ(Rows({
                "l      74-1001-1    Knob, black",
                "2      74-1002-1    Bezel, chrome",
                "S      74-1003-1    Foot, rubber",
                "4      74-1004-1    Screw, shoulder",
                "       74-1005-1    Washer",
                "6      74-1006-1    Nut",
                "7I     74-1007-1    Clip",
                "8      74-1008-1    Spring",
            }),
            (Strings{
                "#1|Knob, black|74-1001-1||",
                "#2|Bezel, chrome|74-1002-1||",
                "#3|Foot, rubber|74-1003-1||",
                "#4|Screw, shoulder|74-1004-1||",
                "#5|Washer|74-1005-1||",
                "#6|Nut|74-1006-1||",
                "#7|Clip|74-1007-1||",
                "#8|Spring|74-1008-1||",
            }));
}

TEST(ExtractEntries, ReadsItemsInTwoTablesAbreastAndAnewInEachAssembly) {
  EXPECT_EQ(Rows({
                "1    Knob, black     74-1001-1      4    Washer    74-1004-1",
                "2    Bezel           74-1002-1      5    Nut       74-1005-1",
                "3    Foot, rubber    74-1003-1      6    Clip      74-1006-1",
                "",
                "               A2 CABINET BACK AND GRILLE ASSEMBLY",
                "",
                "1    Grille          74-1007-1      3    Strip     74-1009-1",
                "2    Back            74-1008-1      4    Cord      74-1010-1",
            }),
            (Strings{
                "#1|Knob, black|74-1001-1||",
                "#2|Bezel|74-1002-1||",
                "#3|Foot, rubber|74-1003-1||",
                "#4|Washer|74-1004-1||",
                "#5|Nut|74-1005-1||",
                "#6|Clip|74-1006-1||",
                "A2/#1|Grille|74-1007-1||",
                "A2/#2|Back|74-1008-1||",
                "A2/#3|Strip|74-1009-1||",
                "A2/#4|Cord|74-1010-1||",
            }));
}

TEST(ExtractEntries, TakesNoStepsOfInstructionsForItems) {
  EXPECT_EQ(Rows({
                "1.   Remove the four screws of the back.",
                "2.   Pull the knobs off their shafts.",
                "3.   Lift the chassis, part 74-1003-1, out.",
                "4.   Note how the leads are dressed.",
                "5.   Turn the chassis over.",
            }),
            Strings{});
}

TEST(ExtractEntries, LeavesQuantitiesInFrontOfTheRowsAlone) {
  EXPECT_EQ(Rows({
                "2      74-1001-1    Knob, black",
                "1      74-1002-1    Bezel, chrome",
                "4      74-1003-1    Foot, rubber",
                "4      74-1004-1    Screw, shoulder",
            }),
            (Strings{
                "|Knob, black|74-1001-1|2|",
                "|Bezel, chrome|74-1002-1|1|",
                "|Foot, rubber|74-1003-1|4|",
                "|Screw, shoulder|74-1004-1|4|",
            }));
}

TEST(ExtractEntries, CopiesWhatAnotherRowSays) {
  EXPECT_EQ(Rows({
                "R4    Resistor, 470K, 1/2 W    61-2001-1",
                "R5    Same as R4",
                "R6    Resistor, 1K, 1/2 W      61-2002-1",
                "R7    Not used",
            }),
            (Strings{
                "R4|Resistor, 470K, 1/2 W|61-2001-1||470K",
                "R5|Same as R4|61-2001-1||470K",
                "R6|Resistor, 1K, 1/2 W|61-2002-1||1K",
                "R7|Not used|||",
            }));
}

TEST(ExtractEntries, ReplacesSignsOfRepetition) {
  EXPECT_EQ(Rows({
                "R4    Resistor, carbon    470K    61-2001-1",
                "R5       \"               1K      61-2002-1",
                "R6       do.              2K      61-2003-1",
            }),
            (Strings{
                "R4|Resistor, carbon 470K|61-2001-1||470K",
                "R5|Resistor, carbon 1K|61-2002-1||1K",
                "R6|Resistor, carbon 2K|61-2003-1||2K",
            }));
}

TEST(ExtractEntries, TellsQuantities) {
  EXPECT_EQ(Rows({
                "SYMBOL   DESCRIPTION        PART NO.     QTY",
                "R1-R2    Resistor, 470K     61-2001-1    2",
                "R3       Resistor, 100K     61-2002-1    1",
                "C1       Capacitor, 5 MMF   20-1001-1    1",
            }),
            (Strings{
                "R1|Resistor, 470K|61-2001-1|2|470K",
                "R2|Resistor, 470K|61-2001-1|2|470K",
                "R3|Resistor, 100K|61-2002-1|1|100K",
                "C1|Capacitor, 5 MMF|20-1001-1|1|5MMF",
            }));
}

TEST(ExtractEntries, PutsRightWhatAReaderSpoils) {
  EXPECT_EQ(Rows({
                "R1O1    Resistor, 470K    61-2001-1",
                "Rl02    Resistor, 100K    61-2OO2-1",
                "R1?3    Resistor, 33K     612003-1",
                "R104    Resistor, 22K     61-2004-1",
                "R105    Resistor, 10K     I61-2005-1",
            }),
            (Strings{
                "R101|Resistor, 470K|61-2001-1||470K",
                "R102|Resistor, 100K|61-2002-1||100K",
                "R103|Resistor, 33K|61-2003-1||33K",
                "R104|Resistor, 22K|61-2004-1||22K",
                "R105|Resistor, 10K|61-2005-1||10K",
            }));
}

TEST(ExtractEntries, DoesNotTakePartNumbersThatBeginLikeDesignatorsForParts) {
  const Strings rows = Rows({
      "R1    Resistor, 470K    R-1234",
      "R2    Resistor, 100K    R-1235",
      "R3    Resistor, 33K     R-1236",
  });
  EXPECT_EQ(rows, (Strings{"R1|Resistor, 470K|R-1234||470K", "R2|Resistor, 100K|R-1235||100K",
                           "R3|Resistor, 33K|R-1236||33K"}));
}

TEST(ExtractEntries, FindsNoListOnOtherPages) {
  ListState state;
  EXPECT_TRUE(Rows(PageOf({}), state).empty());
  EXPECT_TRUE(Rows(PageOf({"Turn the set on and let it warm up for ten minutes. Then adjust",
                           "the control R12 until the meter M1 reads zero, and lock it."}),
                   state)
                  .empty());
  EXPECT_TRUE(Rows(PageOf({"    C4          R12     V2", "   .05          470K    6AU6", "        L3            C7",
                           " B+       R14      10"},
                          WordOrigin::kString),
                   state)
                  .empty());
  EXPECT_EQ(state.assembly, "");
}

TEST(ExtractEntries, FindsNoListAmongInstructions) {
  EXPECT_EQ(Rows({
                "Let the receiver and the signal generator warm up for ten",
                "minutes. Turn the volume control full on.",
                "STEP  GENERATOR   DIAL      ADJUST      FOR",
                "1     455 KC      1600 KC   T2 top      Maximum",
                "      at grid of V1         and bottom",
                "2     455 KC      1600 KC   T1 top      Maximum",
                "      at grid of V1         and bottom",
                "3     1600 KC     1600 KC   C2          Maximum",
                "      through a loop of wire",
                "Rock the tuning while step 3 is done, and repeat it until",
                "nothing more is gained. Voltages to chassis, at 117 volts:",
            }),
            Strings{});
}

TEST(ExtractEntries, IsLessSureOfRowsThatWereRepaired) {
  ListState state;
  const auto entries =
      ExtractEntries(PageOf({"R101    Resistor, 470K    61-2001-1", "Rl02    Resistor, 100K    61-2002-1",
                             "R103    Resistor, 33K     61-2003-1"}),
                     ShippedRules(), state);
  ASSERT_EQ(entries.size(), 3U);
  EXPECT_GT(entries[0].confidence, entries[1].confidence);
}

// A page of so many rows as a hostile file may hold them, some of them read badly.
PageReading LongList(int rows) {
  std::vector<std::string> lines;
  for (int row = 1; row <= rows; ++row) {
    const std::string number = std::to_string(row);
    lines.push_back((row % 7 == 0 ? "K" : "R") + number + std::string(8 - number.size(), ' ') +
                    (row % 5 == 0 ? "Same as R1" : "Resistor, 470K 1/2W") + "    61-" +
                    std::to_string(1000 + row % 900) + "-1");
  }
  PageReading reading = PageOf(lines);
  for (std::size_t i = 0; i < reading.words.size(); i += 9) {
    reading.words[i].confidence = 0.3;
  }
  return reading;
}

TEST(ExtractEntries, TakesTimeByTheRowsOfALongList) {
  // Of the processor, so that a busy machine does not count; the limits are wide, since sanitizers count.
  const auto seconds = [](int rows) {
    const PageReading reading = LongList(rows);
    const std::clock_t start = std::clock();
    ListState state;
    EXPECT_GT(ExtractEntries(reading, ShippedRules(), state).size(), static_cast<std::size_t>(rows) / 2);
    EXPECT_GT(ExtractSightings(reading, ShippedRules()).size(), static_cast<std::size_t>(rows));
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
  };
  const double short_list = seconds(250);
  const double long_list = seconds(2000);
  EXPECT_LT(long_list, 20);
  EXPECT_LT(long_list, 24 * short_list + 0.1) << "eight times the rows; were it by their square, 64 times the seconds";
}

}  // namespace
}  // namespace benchleaf
