#include "store/test_index.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace benchleaf {
namespace {

using FindTest = IndexTest;
using testing::ElementsAre;
using testing::IsEmpty;

// A manual of one set whose only page has these sightings.
ManualRecord OnePage(const std::string& set, std::vector<Sighting> sightings, PageKind kind = PageKind::kSchematic) {
  ManualRecord manual;
  manual.set = set;
  manual.manual = "service";
  manual.pages = {MakePage(set + ".pdf", 1, kind)};
  manual.pages[0].sightings = std::move(sightings);
  return manual;
}

Sighting Designator(std::string text, double confidence = 0.9, std::string assembly = "") {
  Sighting sighting = MakeSighting(TermKind::kDesignator, std::move(text), confidence);
  sighting.assembly = std::move(assembly);
  return sighting;
}

Sighting Tube(std::string text, double confidence = 0.9) {
  return MakeSighting(TermKind::kTube, std::move(text), confidence);
}

// "set text match" of each answer, in order.
std::vector<std::string> Told(const std::vector<FoundSighting>& found) {
  std::vector<std::string> told;
  for (const FoundSighting& one : found) {
    told.push_back(one.place.set + ' ' + one.sighting.text + ' ' + std::string(Name(one.match)));
  }
  return told;
}

std::vector<std::string> Told(const std::vector<FoundTube>& tubes) {
  std::vector<FoundSighting> found;
  for (const FoundTube& tube : tubes) found.push_back(tube.found);
  return Told(found);
}

TEST_F(FindTest, AnAnswerNamesPlaceSightingAndKind) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  const auto found = Reader()->Find({"C112", "", {}, 10}).value();
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].place.set, manual.set);
  EXPECT_EQ(found[0].place.manual, manual.manual);
  EXPECT_EQ(found[0].place.file, manual.pages[0].file);
  EXPECT_EQ(found[0].place.page, 1);
  EXPECT_EQ(found[0].place.kind, PageKind::kSchematic);
  EXPECT_EQ(found[0].place.printed_number, "8-17");
  EXPECT_EQ(found[0].sighting, manual.pages[0].sightings[0]);
  EXPECT_EQ(found[0].match, Match::kExact);
  EXPECT_EQ(found[0].kind(), TermKind::kDesignator);
}

TEST_F(FindTest, SpacesAndCasesOfTheTermDoNotMatter) {
  Store(OnePage("A", {Designator("C112")}));
  const auto reader = Reader();
  for (const char* term : {"C112", "c112", " C 112 ", "c\t112"}) {
    EXPECT_THAT(Told(reader->Find({term, "", {}, 10}).value()), ElementsAre("A C112 exact")) << term;
  }
  for (const char* term : {"", "  ", "C11", "C1122", "112"}) {
    EXPECT_THAT(reader->Find({term, "", {}, 10}).value(), IsEmpty()) << term;
  }
}

TEST_F(FindTest, ExactComesBeforeFormsBeforeLookAlikes) {
  // From best to worst; the confidences go the other way, to show that the match decides first. Forms: an assembly's
  // prefix before the designator (ASME Y14.44). Look-alikes: figure 1 and letter I, figure 2 and letter Z (common
  // practice, no source).
  Store(OnePage("A", {Designator("CII2", 0.99), Designator("A4C112", 0.8), Designator("C112", 0.1)}));
  EXPECT_THAT(Told(Reader()->Find({"C112", "", {}, 10}).value()),
              ElementsAre("A C112 exact", "A A4C112 form", "A CII2 look-alike"));
}

TEST_F(FindTest, EqualMatchesGoByConfidenceThenPlace) {
  Store(OnePage("C", {Designator("R1", 0.5)}), OnePage("B", {Designator("R1", 0.5), Designator("R1", 0.7)}),
        OnePage("A", {Designator("R1", 0.5)}), OnePage("D", {Designator("R1", 0.9)}));
  const auto reader = Reader();
  const auto told = [](const std::vector<FoundSighting>& found) {
    std::vector<std::string> sets;
    for (const FoundSighting& one : found) sets.push_back(one.place.set);
    return sets;
  };
  EXPECT_THAT(told(reader->Find({"R1", "", {}, 10}).value()), ElementsAre("D", "B", "A", "B", "C"));
  // A limit takes the first of the same order, whatever order they were stored in.
  EXPECT_THAT(told(reader->Find({"R1", "", {}, 3}).value()), ElementsAre("D", "B", "A"));
  EXPECT_THAT(reader->Find({"R1", "", {}, 0}).value(), IsEmpty());
  EXPECT_THAT(reader->Find({"R1", "", {}, -1}).value(), IsEmpty());
}

// What a person would expect of a list that is cut, checked against sorting everything.
TEST_F(FindTest, ALimitTakesTheBestOfMany) {
  const auto writer = Writer();
  for (int set = 0; set < 20; ++set) {
    std::vector<Sighting> sightings;
    for (int i = 0; i <= set % 4; ++i) {
      sightings.push_back(Designator("R1", ((set * 7 + i * 13) % 10) / 10.0));
      sightings.push_back(Designator("A1R1", ((set * 3 + i * 5) % 10) / 10.0));
    }
    // Stored in an order that is not that of the names.
    ASSERT_TRUE(writer->ReplaceManual(OnePage(std::string(1, static_cast<char>('A' + set * 7 % 20)), sightings)));
  }
  const auto reader = Reader();
  const std::vector<FoundSighting> all = reader->Find({"R1", "", {}, 1000}).value();
  ASSERT_EQ(all.size(), 100U);
  for (const int limit : {1, 2, 7, 49, 50, 51, 99}) {
    const std::vector<FoundSighting> some = reader->Find({"R1", "", {}, limit}).value();
    ASSERT_EQ(some.size(), static_cast<std::size_t>(limit));
    EXPECT_TRUE(std::equal(some.begin(), some.end(), all.begin(), [](const FoundSighting& a, const FoundSighting& b) {
      return a.place.set == b.place.set && a.sighting == b.sighting && a.match == b.match;
    })) << limit;
  }
}

TEST_F(FindTest, KeepsToOneSetAndKind) {
  ManualRecord a = OnePage("A", {Designator("C1")});
  a.pages.push_back(MakePage("A.pdf", 2, PageKind::kPartsList));
  a.pages[1].sightings = {Designator("C1", 0.3)};
  Store(a, OnePage("A 2", {Designator("C1")}, PageKind::kPartsLocator));
  const auto reader = Reader();
  const auto pages = [&](const FindQuery& query) {
    std::vector<std::string> told;
    const std::vector<FoundSighting> found = reader->Find(query).value();
    for (const FoundSighting& one : found) {
      told.push_back(one.place.set + ' ' + std::to_string(one.place.page));
    }
    return told;
  };
  EXPECT_THAT(pages({"C1", "", {}, 10}), ElementsAre("A 1", "A 2 1", "A 2"));
  EXPECT_THAT(pages({"C1", "A", {}, 10}), ElementsAre("A 1", "A 2"));
  EXPECT_THAT(pages({"C1", "", PageKind::kPartsList, 10}), ElementsAre("A 2"));
  EXPECT_THAT(pages({"C1", "A 2", PageKind::kPartsLocator, 10}), ElementsAre("A 2 1"));
  EXPECT_THAT(pages({"C1", "A 2", PageKind::kPartsList, 10}), IsEmpty());
  EXPECT_THAT(pages({"C1", "a", {}, 10}), IsEmpty()) << "a set goes by its exact name";
}

TEST_F(FindTest, AssembliesTellPartsApart) {
  Store(OnePage("A", {Designator("A4C12", 0.9), Designator("C12", 0.8, "A4"), Designator("C12", 0.7),
                      Designator("C12", 0.6, "A3"), Designator("A3C12", 0.5)}));
  const auto reader = Reader();
  // C12 asked: all of them, whatever the assembly.
  EXPECT_EQ(reader->Find({"C12", "", {}, 10}).value().size(), 5U);
  // A4C12 asked: not what is known to be of another assembly.
  const auto found = reader->Find({"A4C12", "", {}, 10}).value();
  EXPECT_THAT(Told(found), ElementsAre("A A4C12 exact", "A C12 form", "A C12 form"));
  EXPECT_EQ(found[1].sighting.assembly, "A4");
  EXPECT_EQ(found[2].sighting.assembly, "");
}

TEST_F(FindTest, SectionsOfAPartBelongTogether) {
  // Sections of a multiple capacitor are lettered: C1A and C1B of C1 (IEEE 315).
  Store(OnePage("A", {Designator("C1A"), Designator("C1B"), Designator("C1")}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Find({"C1", "", {}, 10}).value()), ElementsAre("A C1 exact", "A C1A form", "A C1B form"));
  EXPECT_THAT(Told(reader->Find({"C1A", "", {}, 10}).value()), ElementsAre("A C1A exact", "A C1 form"));
}

TEST_F(FindTest, ASightingIsToldOnce) {
  // 1I1 is its own look-alike and has no form; each comes once, as its best match.
  Store(OnePage("A", {Designator("R111"), Designator("RI11")}));
  EXPECT_THAT(Told(Reader()->Find({"R111", "", {}, 10}).value()), ElementsAre("A R111 exact", "A RI11 look-alike"));
}

TEST_F(FindTest, LookAlikesOfFormsAreFound) {
  Store(OnePage("A", {Designator("A4CI2")}));
  EXPECT_THAT(Told(Reader()->Find({"C12", "", {}, 10}).value()), ElementsAre("A A4CI2 look-alike"));
}

TEST_F(FindTest, TermsOfEveryKindAreFound) {
  Store(
      OnePage("A", {MakeSighting(TermKind::kPartNumber, "281-0047-00"), MakeSighting(TermKind::kSemiconductor, "2N404"),
                    MakeSighting(TermKind::kValue, ".047MFD"), Tube("6CB6")}));
  const auto reader = Reader();
  for (const char* term : {"281-0047-00", "2n404", ".047 mfd", "6CB6"}) {
    const auto found = reader->Find({term, "", {}, 10}).value();
    ASSERT_EQ(found.size(), 1U) << term;
    EXPECT_EQ(found[0].match, Match::kExact) << term;
  }
}

TEST_F(FindTest, TubesAnswerForTheirFormsInOrderOfSets) {
  // Suffix letters name later versions of a type, a slash a second name (RETMA type designations; the slash is common
  // practice, no source).
  Store(OnePage("B", {Tube("6CB6A", 0.95), Tube("6CB6", 0.5), Tube("6BC8")}),
        OnePage("A", {Tube("6CB6A/6CF6", 0.6), Designator("6CB6")}), OnePage("C", {Tube("12AX7")}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Tube("6cb6").value()), ElementsAre("A 6CB6A/6CF6 form", "B 6CB6 exact", "B 6CB6A form"));
  EXPECT_THAT(Told(reader->Tube("6CF6").value()), ElementsAre("A 6CB6A/6CF6 form"));
  EXPECT_THAT(reader->Tube("").value(), IsEmpty());
  EXPECT_THAT(reader->Tube("6SN7").value(), IsEmpty());
  EXPECT_THAT(reader->Tube("item 6").value(), IsEmpty());
}

TEST_F(FindTest, VersionsOfATubeAreNotTakenForEachOther) {
  Store(OnePage("A", {Tube("6CB6A"), Tube("6CB6B")}));
  EXPECT_THAT(Told(Reader()->Tube("6CB6A").value()), ElementsAre("A 6CB6A exact"));
}

TEST_F(FindTest, ATubeOfTwoNamesIsFoundByEither) {
  Store(OnePage("A", {Tube("12AX7A/ECC83", 0.9)}), OnePage("B", {Tube("ECC83", 0.9)}),
        OnePage("C", {Tube("ECC83/12AX7", 0.9)}), OnePage("D", {Tube("12AX7", 0.9)}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Tube("ECC83").value()),
              ElementsAre("A 12AX7A/ECC83 form", "B ECC83 exact", "C ECC83/12AX7 form"));
  EXPECT_THAT(Told(reader->Tube("12AX7").value()),
              ElementsAre("A 12AX7A/ECC83 form", "C ECC83/12AX7 form", "D 12AX7 exact"));
  EXPECT_THAT(Told(reader->Tube("12AX7A/ECC83").value()),
              ElementsAre("A 12AX7A/ECC83 exact", "B ECC83 form", "C ECC83/12AX7 form", "D 12AX7 form"));
}

TEST_F(FindTest, AnItemIsFoundByItsNumberAndIsNoDesignatorForLookingLikeOne) {
  Store(OnePage("A", {MakeSighting(TermKind::kItem, "12", 0.9), Tube("80"), MakeSighting(TermKind::kItem, "80", 0.8)}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Find({"12", "", {}, 10}).value()), ElementsAre("A 12 exact"));
  EXPECT_THAT(Told(reader->Find({"item 12", "", {}, 10}).value()), ElementsAre("A 12 exact"));
  EXPECT_THAT(Told(reader->Find({"80", "", {}, 10}).value()), ElementsAre("A 80 exact", "A 80 exact"));
  const auto items = reader->Find({"Item 80", "", {}, 10}).value();
  ASSERT_EQ(items.size(), 1U);
  EXPECT_EQ(items[0].sighting.kind, TermKind::kItem);
  EXPECT_THAT(reader->Find({"L2", "", {}, 10}).value(), IsEmpty());
  EXPECT_THAT(reader->Find({"item 13", "", {}, 10}).value(), IsEmpty());
}

}  // namespace
}  // namespace benchleaf
