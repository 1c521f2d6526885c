#include "benchleaf/report/hits.h"

#include <gmock/gmock.h>

#include <string>

namespace benchleaf {
namespace {

using testing::HasSubstr;
using testing::Not;

FoundSighting Hit(const std::string& set, const std::string& manual, const std::string& read, Match match) {
  FoundSighting hit;
  hit.place.set = set;
  hit.place.manual = manual;
  hit.place.file = manual + ".pdf";
  hit.place.page = 3;
  hit.place.kind = PageKind::kSchematic;
  hit.sighting.text = "C112";
  hit.sighting.read = read;
  hit.sighting.box = {0.1, 0.1, 0.02, 0.01};
  hit.sighting.confidence = 0.9;
  hit.match = match;
  return hit;
}

TEST(HitsText, NumbersThePlacesAndTellsHowEachWasRead) {
  TermHits found;
  found.term = "C112";
  found.hits = {Hit("Q 12", "a", "C112", Match::kExact), Hit("Q 12", "a", "CI12", Match::kLookAlike)};
  EXPECT_EQ(HitsText(found, {}),
            "C112: 2 places in 1 set\n"
            "#  set   file   page  kind       where on the page                   reads  sure  match\n"
            "-  ----  -----  ----  ---------  ----------------------------------  -----  ----  ----------\n"
            "1  Q 12  a.pdf  3     schematic  upper left, 11 % across, 11 % down         90 %  exact\n"
            "2  Q 12  a.pdf  3     schematic  upper left, 11 % across, 11 % down  CI12   90 %  look-alike\n");
}

TEST(HitsText, NamesTheManualWhenASetAnswersFromSeveral) {
  TermHits found;
  found.term = "C112";
  found.hits = {Hit("Q 12", "early", "C112", Match::kExact), Hit("Q 12", "late", "C112", Match::kExact)};
  EXPECT_THAT(HitsText(found, {}), HasSubstr("set   manual  file"));
  found.hits[1].place.set = "Q 13";
  EXPECT_THAT(HitsText(found, {}), Not(HasSubstr("manual")));
}

TEST(HitsText, ListsTheAssembliesOfAnAmbiguousDesignator) {
  TermHits found;
  found.term = "C112";
  found.hits = {Hit("Q 12", "a", "C112", Match::kExact), Hit("Q 12", "a", "C112", Match::kExact)};
  found.hits[0].sighting.assembly = "UNIT 1";
  EXPECT_THAT(HitsText(found, {}), Not(HasSubstr("assembl"))) << "one alone is not ambiguous";
  found.hits[1].sighting.assembly = "UNIT 2";
  EXPECT_THAT(HitsText(found, {}), HasSubstr("where on the page                   assembly"));
  EXPECT_THAT(HitsText(found, {}),
              HasSubstr("C112 is a part of its own in each of these assemblies of Q 12: UNIT 1, UNIT 2\n"));
  found.hits[1].place.set = "Q 13";
  EXPECT_THAT(HitsText(found, {}), Not(HasSubstr("assembl"))) << "two sets";
}

TEST(HitsText, TellsKindsOfTermsApartWhenThereAreSeveral) {
  TermHits found;
  found.term = "5725";
  found.hits = {Hit("Q 12", "a", "5725", Match::kExact), Hit("Q 12", "a", "5725", Match::kExact)};
  EXPECT_THAT(HitsText(found, {}), Not(HasSubstr("seen as")));
  found.hits[0].sighting.kind = TermKind::kTube;
  found.hits[1].sighting.kind = TermKind::kPartNumber;
  EXPECT_THAT(HitsText(found, {}), HasSubstr("seen as"));
  EXPECT_THAT(HitsText(found, {}), HasSubstr("part-number"));
}

TEST(HitsText, LetsNothingThroughThatATerminalWouldObey) {
  TermHits found;
  found.term = "C\x1b[1m";
  found.hits = {Hit("Q\x1b]0;x\x07", "a\nb", "C\x9b", Match::kText)};
  for (const char c : HitsText(found, {})) EXPECT_TRUE(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
  found.hits.clear();
  found.near = {"C\x1b[2J"};
  found.searched = {"in Q\x1b[1m"};
  EXPECT_THAT(NothingFoundText(found), Not(HasSubstr("\x1b")));
}

TEST(HitsJson, MendsTextThatIsNotUtf8) {
  TermHits found;
  found.term = "C1";
  found.hits = {Hit("Q 12", "a", "C\xff\n", Match::kExact)};
  const std::string json = HitsJson(found);
  EXPECT_THAT(json, HasSubstr("\"read\":\"C\uFFFD\\n\""));
  EXPECT_EQ(json.find('\n'), json.size() - 1);
}

}  // namespace
}  // namespace benchleaf
