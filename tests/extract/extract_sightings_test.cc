#include "extract/page_text.h"
#include "extract/plain_text.h"

#include "benchleaf/extract/extract.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstddef>
#include <random>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::UnorderedElementsAre;

std::vector<std::string> Terms(const PageReading& reading) {
  std::vector<std::string> terms;
  for (const Sighting& sighting : ExtractSightings(reading, ShippedRules())) {
    terms.push_back(std::string(Name(sighting.kind)) + " " + sighting.text);
  }
  return terms;
}

// The terms of a drawing with these strings.
std::vector<std::string> Drawn(const std::vector<std::string>& lines) {
  return Terms(PageOf(lines, WordOrigin::kString));
}

TEST(ExtractSightings, FindsEveryKindOfTerm) {
  EXPECT_THAT(Drawn({"R12     470K     V3     6AU6     CR1     1N34A     5905-00-104-8350"}),
              ElementsAre("designator R12", "value 470K", "designator V3", "tube 6AU6", "designator CR1",
                          "semiconductor 1N34A", "part-number 5905-00-104-8350"));
}

TEST(ExtractSightings, SplitsWordsThatHoldSeveralTerms) {
  EXPECT_THAT(Drawn({"V1:6AU6"}), ElementsAre("designator V1", "tube 6AU6"));
  EXPECT_THAT(Drawn({"V1,2:"}), ElementsAre("designator V1", "designator V2"));
  EXPECT_THAT(Drawn({"V1-6AU6"}), ElementsAre("designator V1", "tube 6AU6"));
  EXPECT_THAT(Drawn({"R1/C5"}), ElementsAre("designator R1", "designator C5"));
  EXPECT_THAT(Drawn({"470K,1/2W"}), ElementsAre("value 470K", "value 1/2W"));
  EXPECT_THAT(Drawn({"6AU6*"}), ElementsAre("tube 6AU6"));
}

TEST(ExtractSightings, JoinsWhatIsSpacedApart) {
  EXPECT_THAT(Drawn({"R 1 2"}), ElementsAre("designator R12"));
  EXPECT_THAT(Drawn({"C 112"}), ElementsAre("designator C112"));
  EXPECT_THAT(Drawn({".05 MFD"}), ElementsAre("value .05MFD"));
  EXPECT_THAT(Drawn({"4.7 K OHMS"}), ElementsAre("value 4.7KOHMS"));
  EXPECT_THAT(Drawn({"1/2 6SN7GTB"}), ElementsAre("tube 6SN7GTB"));
  EXPECT_THAT(Drawn({"R      12"}), IsEmpty()) << "too far apart";
}

TEST(ExtractSightings, DoesNotMakeDesignatorsOfSentences) {
  EXPECT_THAT(Drawn({"A 12 VOLT SUPPLY IS NEEDED"}), Not(Contains("designator A12")));
  EXPECT_THAT(Terms(PageOf({"SO IT IS TO BE DONE IN SECTION VI"})), IsEmpty());
}

TEST(ExtractSightings, GivesBoxTurnAndReading) {
  PageReading reading = PageOf({"Ri7"}, WordOrigin::kString);
  reading.words[0].turn = 90;
  reading.words[0].confidence = 0.8;
  const auto sightings = ExtractSightings(reading, ShippedRules());
  ASSERT_EQ(sightings.size(), 1U);
  EXPECT_EQ(sightings[0].text, "R17");
  EXPECT_EQ(sightings[0].read, "Ri7");
  EXPECT_EQ(sightings[0].turn, 90);
  EXPECT_LT(sightings[0].confidence, 0.8);
  EXPECT_GT(sightings[0].confidence, 0.5);
  const Box box = ToLevel(reading.frame, sightings[0].box);
  EXPECT_NEAR(box.x, kMargin, 1);
  EXPECT_NEAR(box.width, 3 * kCharWidth, 2);
}

TEST(ExtractSightings, TellsTurnsOnTheScanOfASidewaysPage) {
  PageReading reading = PageOf({"R17"}, WordOrigin::kString);
  reading.frame.orientation = 90;
  std::swap(reading.frame.scan_width, reading.frame.scan_height);
  const auto sightings = ExtractSightings(reading, ShippedRules());
  ASSERT_EQ(sightings.size(), 1U);
  EXPECT_EQ(sightings[0].turn, 270) << "turned clockwise by 90 it is upright";
}

TEST(ExtractSightings, TakesAnAlternativeThatIsATermWhereTheFirstReadingIsNone) {
  PageReading reading = PageOf({"8l2@"}, WordOrigin::kString);
  reading.words[0].alternatives = {{"R12", 0.5}};
  EXPECT_THAT(Terms(reading), ElementsAre("designator R12"));
  reading.words[0].alternatives = {{"R12", 0.1}};
  EXPECT_THAT(Terms(reading), IsEmpty()) << "it is no surer than its own reading, however sure the first";
  reading = PageOf({"R12"}, WordOrigin::kString);
  reading.words[0].alternatives = {{"R72", 0.9}};
  EXPECT_THAT(Terms(reading), ElementsAre("designator R12")) << "the first reading is a term already";
}

TEST(ExtractSightings, TakesBareNumbersForTubesOnlyBesideATube) {
  EXPECT_THAT(Drawn({"V4", "80"}), Contains("tube 80"));
  EXPECT_THAT(Drawn({"V4 5725"}), Contains("tube 5725"));
  EXPECT_THAT(Drawn({"80     5725"}), IsEmpty());
}

TEST(ExtractSightings, TellsValuesFromTubesByThePage) {
  EXPECT_THAT(Drawn({"6K8"}), ElementsAre("tube 6K8"));
  EXPECT_THAT(Drawn({"6K8        4K7"}), ElementsAre("value 6K8", "value 4K7")) << "IEC 60062 code is in use here";
  EXPECT_THAT(Drawn({"6k8"}), ElementsAre("value 6K8"));
}

TEST(ExtractSightings, LeavesNamesOfPinsAlone) {
  EXPECT_THAT(Drawn({"P/A7"}), IsEmpty());
  EXPECT_THAT(Drawn({"CLK4/A16"}), IsEmpty());
  EXPECT_THAT(Drawn({"R5/47K"}), ElementsAre("designator R5", "value 47K"));
  EXPECT_THAT(Drawn({"V1/6AU6"}), ElementsAre("designator V1", "tube 6AU6"));
}

TEST(ExtractSightings, TakesARowOfConnectorsForNoPins) {
  EXPECT_THAT(
      Drawn({"P101", "P102", "P103", "P104", "P105"}),
      ElementsAre("designator P101", "designator P102", "designator P103", "designator P104", "designator P105"));
}

TEST(ExtractSightings, LeavesAlignmentPointsAlone) {
  EXPECT_THAT(Drawn({"ALIGNMENT POINTS", "A1     A2     R5"}), ElementsAre("designator R5"));
}

TEST(ExtractSightings, LeavesAloneWhatOnlyLooksLikeADesignator) {
  // Seen on drawings and in texts of 1958 to 1985: common practice, no source.
  const struct {
    std::vector<std::string> lines;
    const char* designator;
    const char* reason;
  } kCases[] = {
      {{"SEE PAGE C12"}, "designator C12", "a page"},
      {{"ZONE B4"}, "designator B4", "a place on the sheet"},
      {{"FIG. A2"}, "designator A2", "a figure"},
      {{"PIN A7"}, "designator A7", "a pin"},
      {{"TOOL T12"}, "designator T12", "a tool"},
      {{"2SC458(C1)"}, "designator C1", "a gain group"},
      {{"2SC458 (C1)"}, "designator C1", "a gain group, spaced"},
      {{"F1", "T2A"}, "designator T2A", "the rating of a slow fuse"},
      {{"A1", "A2", "A3", "A4", "A5", "A6"}, "designator A3", "the pins of a connector"},
  };
  for (const auto& one : kCases) {
    PageReading reading = PageOf(one.lines, WordOrigin::kString);
    EXPECT_THAT(Terms(reading), Not(Contains(one.designator))) << one.lines.front() << ": " << one.reason;
  }
  EXPECT_THAT(Drawn({"R1", "R2", "R3", "R4", "R5", "R6"}), Contains("designator R3")) << "resistors in a column";
  EXPECT_THAT(Drawn({"A1     A2     A3"}), Contains("designator A2")) << "assemblies";
  EXPECT_THAT(Drawn({"T2A     T2B"}), Contains("designator T2A")) << "no fuse near";
}

TEST(ExtractSightings, FindsTubeTypesAsManualsPrintThem) {
  const struct {
    std::vector<std::string> lines;
    const char* tube;
    const char* reason;
  } kCases[] = {
      {{"V1:6AU6"}, "tube 6AU6", "behind the designator"},
      {{"V1,2: 12AX7"}, "tube 12AX7", "behind two designators"},
      {{"V4", "6AU6"}, "tube 6AU6", "below the designator"},
      {{"6AU6\u2020"}, "tube 6AU6", "a footnote"},
      {{"12AX7**"}, "tube 12AX7", "a footnote"},
      {{"\u00bd12AX7"}, "tube 12AX7", "half a tube"},
      {{"1/2 6AL5"}, "tube 6AL5", "half a tube, spaced"},
      {{"12AX7 (7025)"}, "tube 12AX7", "another name in brackets"},
      {{"THE 5725 PENTODE"}, "tube 5725", "a tube word behind"},
      {{"TUBE 5725"}, "tube 5725", "a tube word in front"},
      {{"V7", "6AUG"}, "tube 6AU6", "a G for the 6"},
  };
  for (const auto& one : kCases) {
    EXPECT_THAT(Drawn(one.lines), Contains(one.tube)) << one.lines.front() << ": " << one.reason;
  }
  EXPECT_THAT(Drawn({"12AX7(7025)"}), ElementsAre("tube 12AX7", "tube 7025"));
  EXPECT_THAT(Drawn({"CV4024"}), ElementsAre("tube CV4024"));
  EXPECT_THAT(Drawn({"CV12"}), ElementsAre("designator CV12")) << "a variable capacitor";
  EXPECT_THAT(Drawn({"IN34A     2N4O4"}), ElementsAre("semiconductor 1N34A", "semiconductor 2N404"));
}

TEST(ExtractSightings, ReadsALoneSectionBAsAnEight) {
  EXPECT_THAT(Drawn({"R1B"}), ElementsAre("designator R18"));
  EXPECT_THAT(Drawn({"R1A     R1B"}), ElementsAre("designator R1A", "designator R1B"));
  EXPECT_THAT(Drawn({"V1B"}), ElementsAre("designator V1B")) << "halves of tubes stand on sheets of their own";
  EXPECT_THAT(Drawn({"C12     C10B"}), Contains("designator C10B")) << "no C108 where C12 is the highest";
  EXPECT_THAT(Drawn({"C99     C10B"}), Contains("designator C108"));
}

TEST(ExtractSightings, LeavesOutTubesThatAreHardlyRead) {
  const auto tubes = [](double confidence) {
    PageReading page = PageOf({"6AU6"}, WordOrigin::kString);
    for (Word& word : page.words) word.confidence = confidence;
    return ExtractSightings(page, ShippedRules()).size();
  };
  EXPECT_EQ(tubes(0.05), 0U);
  EXPECT_EQ(tubes(0.9), 1U);
}

TEST(ExtractSightings, SetsTheAssemblyThatADrawingShows) {
  auto sightings = ExtractSightings(PageOf({"R12", "", "A4 SCHEMATIC DIAGRAM"}, WordOrigin::kString), ShippedRules());
  ASSERT_FALSE(sightings.empty());
  EXPECT_EQ(sightings[0].assembly, "A4");
  sightings = ExtractSightings(PageOf({"R12", "", "P/O A4", "", "P/O A5"}, WordOrigin::kString), ShippedRules());
  EXPECT_EQ(sightings[0].assembly, "") << "two are named";
}

TEST(ExtractSightings, GivesTheTermsOfListRowsToo) {
  const auto sightings = ExtractSightings(PageOf({
                                              "ASSEMBLY A4",
                                              "R1-R3    Resistor, 470K    61-2001-1",
                                              "V1       Tube, 6AU6        86-1001-1",
                                              "C1       Capacitor, 5 MMF  20-1001-1",
                                          }),
                                          ShippedRules());
  std::vector<std::string> terms;
  for (const Sighting& sighting : sightings) {
    terms.push_back(std::string(Name(sighting.kind)) + " " + sighting.text);
    if (sighting.kind == TermKind::kDesignator && sighting.text != "A4") {
      EXPECT_EQ(sighting.assembly, "A4") << sighting.text;
    }
  }
  for (const char* term : {"designator R1", "designator R2", "designator R3", "part-number 61-2001-1", "value 470K",
                           "tube 6AU6", "value 5MMF"}) {
    EXPECT_THAT(terms, Contains(term));
  }
}

TEST(ExtractSightings, CountsASightingOnce) {
  PageReading reading = PageOf({"R12"}, WordOrigin::kString);
  reading.words.push_back(reading.words[0]);
  EXPECT_EQ(ExtractSightings(reading, ShippedRules()).size(), 1U);
}

TEST(ExtractSightings, IsEmptyForAnEmptyPage) {
  EXPECT_THAT(ExtractSightings(PageReading{}, ShippedRules()), IsEmpty());
}

TEST(ExtractSightings, BelievesInAListsDescriptionsOnlyPartsThatTheWordsSpeakOf) {
  PageReading reading = PageOf({"R1    Resistor, 470K       61-2001-1", "R2    Same as R1           61-2001-1",
                                "R3    Resistor C8  10K     61-2002-4", "R4    Resistor, 22K        61-2003-4"},
                               WordOrigin::kString);
  for (Word& word : reading.words) {
    word.confidence = word.text == "C8" ? 0.5 : 0.9;
  }
  std::vector<std::string> designators;
  for (const Sighting& sighting : ExtractSightings(reading, ShippedRules())) {
    if (sighting.kind == TermKind::kDesignator) {
      designators.push_back(sighting.text);
    }
  }
  EXPECT_THAT(designators, UnorderedElementsAre("R1", "R2", "R1", "R3", "R4"));
}

// Words of random bytes: nothing may crash, and every designator must look like what was read.
TEST(ExtractSightings, MakesNoDesignatorsOfNoise) {
  std::mt19937 random(20240501);  // fixed: the test is the same every time
  const std::string letters =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,-/:()|!?$&*'\"~_=+#@%\x80\xc3\xff";
  for (int round = 0; round < 300; ++round) {
    std::vector<std::string> lines;
    for (int line = 0; line < 12; ++line) {
      std::string text;
      for (int word = 0; word < 6; ++word) {
        const std::size_t length = 1 + random() % 9;
        for (std::size_t i = 0; i < length; ++i) {
          text += letters[random() % letters.size()];
        }
        text += std::string(1 + random() % 5, ' ');
      }
      lines.push_back(text);
    }
    const PageReading reading = PageOf(lines, round % 2 == 0 ? WordOrigin::kString : WordOrigin::kPage);
    ListState state;
    ExtractEntries(reading, ShippedRules(), state);
    for (const Sighting& sighting : ExtractSightings(reading, ShippedRules())) {
      EXPECT_GE(sighting.confidence, 0);
      EXPECT_LE(sighting.confidence, 1);
      if (sighting.kind != TermKind::kDesignator) {
        continue;
      }
      // A figure or a stroke for one, and the class letter, stand in what was read.
      const std::string read = FoldLookAlikes(extract::Upper(sighting.read), ShippedRules());
      const std::string letter = FoldLookAlikes(sighting.text.substr(0, 1), ShippedRules());
      EXPECT_NE(read.find(letter), std::string::npos) << sighting.read << " gave " << sighting.text;
      EXPECT_NE(read.find_first_of("0123456789"), std::string::npos) << sighting.read << " gave " << sighting.text;
    }
  }
}

TEST(ExtractSightings, GivesNoDesignatorForNumbersOrWordsAlone) {
  std::mt19937 random(7);
  for (int round = 0; round < 2000; ++round) {
    std::string number;
    std::string word;
    for (std::size_t i = 0; i < 1 + random() % 6; ++i) {
      number += static_cast<char>('0' + random() % 10);
      word += "ABCDEFGHJKMNPRTUVWXY"[random() % 20];  // without look-alikes of figures
    }
    for (const Sighting& sighting : ExtractSightings(PageOf({number, word}, WordOrigin::kString), ShippedRules())) {
      EXPECT_NE(sighting.kind, TermKind::kDesignator) << number << " " << word << " gave " << sighting.text;
    }
  }
}

}  // namespace
}  // namespace benchleaf
