#include "benchleaf/report/tube_knowledge.h"

#include "places/places.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <string>

namespace benchleaf {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

const TubeTable& Tubes() {
  static const auto table = TubeTable::Load({SourceFolder() / "config" / "tubes.tsv"});
  return table.value();
}

std::string Text(const std::string& asked) { return KnowledgeText(KnowTube(asked, Tubes()), Tubes(), {}); }

TEST(KnowledgeText, TellsRowThenNumberAndWhereBothComeFrom) {
  EXPECT_EQ(Text("6cb6"),
            "6CB6: sharp-cutoff pentode\n"
            "  heater          6.3 V, 0.3 A\n"
            "  base            7-pin miniature, pins 7CM\n"
            "  served by       6CB6A\n"
            "  industrial form 6676\n"
            "  other heaters   3CB6 (3.15 V, 0.6 A), 4CB6 (4.2 V, 0.45 A)\n"
            "                  the same tube for another supply: only where its volts and amps fit the set\n"
            "  source          RETMA/EIA registration, from memory\n"
            "  the number      6: heater of about 6 V, nearly always 6.3 V; CB: order of registration, says\n"
            "                  nothing of the tube; 6: 6 elements with a connection, the heater counted as one\n"
            "  read by         RETMA standard ET-109-A, from memory\n");
}

TEST(KnowledgeText, OfAnUnknownTypeSaysSoAndWhatTheNumberSays) {
  EXPECT_THAT(Text("6QZ9"), AllOf(StartsWith("6QZ9: no row in the tables of tube types\n  the number      6: heater"),
                                  Not(HasSubstr("heater   "))));
  EXPECT_THAT(Text("KT99X"), HasSubstr("says nothing by any standard that we know"));
}

TEST(KnowledgeText, OfAnUnknownSuffixGivesTheRowOfTheTypeWithoutIt) {
  EXPECT_THAT(Text("6CB6B"), HasSubstr("row             of 6CB6: there is none for 6CB6B\n"));
}

TEST(KnowledgeText, NeverFillsInAFigureThatIsNotKnown) {
  EXPECT_THAT(Text("2GK5"), HasSubstr("heater          volts not known to us, 0.6 A"));
}

TEST(KnowledgeText, WritesBothWaysOfWiringAHeater) {
  EXPECT_THAT(Text("12AX7"), HasSubstr("heater          12.6 V, 0.15 A or 6.3 V, 0.3 A\n"));
  EXPECT_THAT(Text("0A2"), HasSubstr("heater          none\n"));
}

TEST(KnowledgeText, WarnsOfAnIndustrialFormThatDrawsMore) {
  EXPECT_THAT(Text("12AX7"), HasSubstr("12AX7WA, 5751 (12.6 V, 0.175 A or 6.3 V, 0.35 A)"));
}

TEST(KnowTube, TakesEveryNameOfOneMarking) {
  const auto tubes = KnowTube("12AX7A/ECC83", Tubes());
  ASSERT_EQ(tubes.size(), 2U);
  EXPECT_EQ(tubes[0].entry->type, "12AX7A");
  EXPECT_EQ(tubes[1].entry->type, "ECC83");
  EXPECT_THAT(KnowTube("", Tubes()), IsEmpty());
}

TEST(OtherNames, AreThoseOfTheSameTube) {
  EXPECT_THAT(OtherNames(KnowTube("EL84", Tubes())), ElementsAre("6BQ5", "CV2975"));
  EXPECT_THAT(OtherNames(KnowTube("6BQ5/EL84", Tubes())), ElementsAre("CV2975"));
  EXPECT_THAT(OtherNames(KnowTube("6CB6", Tubes())), IsEmpty()) << "other heaters are other tubes";
}

TEST(KnowledgeJson, KeepsUnknownFiguresNull) {
  const std::string json = KnowledgeJson(KnowTube("2GK5", Tubes()));
  EXPECT_THAT(json, AllOf(StartsWith(R"({"type":"tube-type","name":"2GK5","system":"RETMA/EIA receiving tubes",)"),
                          HasSubstr(R"("heater":[{"volts":null,"amps":0.6}])"), HasSubstr(R"("source":")")));
  EXPECT_THAT(KnowledgeJson(KnowTube("6QZ9", Tubes())), HasSubstr(R"("row":null)"));
}

}  // namespace
}  // namespace benchleaf
