#include "benchleaf/report/lineup.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

TubeEntry Row(const std::string& type, const std::string& kind, double volts, double amps) {
  TubeEntry row;
  row.type = type;
  row.tube_class = kind;
  row.heater = {{volts, amps}};
  row.source = "a handbook, from memory";
  return row;
}

LineupTube Tube(const std::string& designator, const std::string& type, const TubeEntry* row) {
  LineupTube tube;
  tube.socket.designator = designator;
  tube.socket.type = type;
  tube.socket.confidence = 0.9;
  SeenTube seen;
  seen.place = {"QUILLHAVEN 12", "chassis", "chassis.pdf", 3, PageKind::kSchematic, "8-3"};
  seen.sighting.text = type;
  seen.sighting.box = {0.1, 0.2, 0.03, 0.01};
  seen.sighting.confidence = 0.9;
  tube.socket.seen = {seen};
  tube.row = row;
  return tube;
}

class LineupReport : public testing::Test {
 protected:
  LineupReport() {
    lineup_.set = "QUILLHAVEN 12";
    lineup_.manual = "chassis";
    lineup_.pages = 8;
    lineup_.tubes = {Tube("V1", "6CB6A", &pentode_), Tube("V2", "12AX7", nullptr), Tube("V3", "5Y3GT", &rectifier_)};
    SeenTube other = lineup_.tubes[0].socket.seen[0];
    other.sighting.text = "6CB8";
    other.sighting.confidence = 0.4;
    lineup_.tubes[0].socket.otherwise = {other};
    lineup_.tubes[0].duties = {{"", "mixer", "MIXER", {}, {}, 0.9}, {"B", "", "GRZL", {}, {}, 0.9}};
    lineup_.heaters = SumHeaters({&pentode_, nullptr, &rectifier_});
  }

  TubeEntry pentode_ = Row("6CB6", "sharp-cutoff pentode", 6.3, 0.3);
  TubeEntry rectifier_ = Row("5Y3GT", "full-wave rectifier", 5, 2);
  ManualLineup lineup_;
};

TEST_F(LineupReport, NamesPageSurenessAndWhatElseWasRead) {
  lineup_.failures = {{ErrorCode::kTimeout, "the page took too long", "chassis.pdf", 5}};
  const std::string text = LineupText(lineup_, {});
  EXPECT_THAT(text, StartsWith("QUILLHAVEN 12, chassis: 3 tubes on 8 pages read\n"
                               "not read: chassis.pdf, page 5: the page took too long\n"));
  EXPECT_THAT(text, AllOf(HasSubstr("mixer; B: \"GRZL\""), HasSubstr("6.3 V, 0.3 A (row of 6CB6)"),
                          HasSubstr("chassis.pdf p. 3 (printed 8-3)"), HasSubstr("90 %"),
                          HasSubstr("6CB8 (40 %, chassis.pdf p. 3)"), HasSubstr("no row for this type")));
}

TEST_F(LineupReport, SaysWhichHeatersAreInNoSumAndThatFiguresAreFromMemory) {
  EXPECT_THAT(LineupText(lineup_, {}),
              AllOf(HasSubstr("heater not known to us; in no sum: V2\n"),
                    HasSubstr("source of the figures: a handbook, from memory. Check a heater's figures")));
}

TEST_F(LineupReport, OfAStringSetsTheSumAgainstTheLine) {
  HeaterString string;
  string.amps = 0.15;
  string.volts = 121.6;
  string.heaters = {{0, 6.3, 0.15, false}};
  string.unequal = {{2, 5, 2, false}};
  lineup_.heaters.string = string;
  const std::string text = LineupText(lineup_, {});
  EXPECT_THAT(text,
              HasSubstr("string of 0.15 A: 1 heater, 121.6 V against the line's 117 V: 4.6 V more than the line"));
  EXPECT_THAT(text, HasSubstr("unequal current: V3, 5Y3GT: 5 V, 2 A; not in the sum\n"));
  lineup_.heaters.string->volts = 95;
  EXPECT_THAT(LineupText(lineup_, {}), HasSubstr("22 V for a resistor, a ballast, or heaters that are not known here"));
}

TEST_F(LineupReport, WritesATubeALineAsJsonAndCsv) {
  EXPECT_THAT(LineupJson(lineup_),
              AllOf(StartsWith("{\"type\":\"lineup-tube\",\"designator\":\"V1\",\"tube_type\":\"6CB6A\",\"set\":"),
                    HasSubstr("\"box\":[0.1,0.2,0.03,0.01]"), HasSubstr("\"other_types\":[\"6CB8\"]"),
                    HasSubstr("\"row\":null"), HasSubstr("{\"type\":\"heaters\",\"set\":\"QUILLHAVEN 12\"")));
  const std::string csv = LineupCsv(lineup_, WithHeader::kYes);
  EXPECT_THAT(csv, StartsWith("set,manual,designator,type,functions,class,heater,file,page,confidence,other_types\r\n"
                              "QUILLHAVEN 12,chassis,V1,6CB6A,\"mixer; B: \"\"GRZL\"\"\",sharp-cutoff pentode,"));
  EXPECT_THAT(LineupCsv(lineup_, WithHeader::kNo), Not(HasSubstr("functions")));
}

TEST_F(LineupReport, SetsTwoSetsSideBySide) {
  ManualLineup other;
  other.set = "BRACKENFORD T7";
  other.manual = "BRACKENFORD T7";
  other.tubes = {Tube("V9", "6CB6A", &pentode_)};
  other.tubes[0].duties = lineup_.tubes[0].duties;
  other.heaters.wiring = HeaterWiring::kSeries;
  const LineupComparison comparison = Compare(lineup_, other);
  const std::string text = ComparisonText(lineup_, other, comparison, {});
  EXPECT_THAT(text,
              AllOf(StartsWith("QUILLHAVEN 12, chassis (first) and BRACKENFORD T7 (second): 3 tubes and 1 tube\n"),
                    HasSubstr("same type          6CB6A  1: V1  6CB6A   1: V9"), HasSubstr("only in the first"),
                    HasSubstr("mixer     V1 6CB6A  V9 6CB6A  same"), HasSubstr("look at a heater's supply")));
  EXPECT_THAT(ComparisonCsv(lineup_, other, comparison, WithHeader::kYes),
              HasSubstr("same type,QUILLHAVEN 12,chassis,6CB6A,V1,BRACKENFORD T7,BRACKENFORD T7,6CB6A,V9\r\n"));
  EXPECT_THAT(ComparisonJson(lineup_, other, comparison),
              AllOf(HasSubstr("{\"type\":\"compared-type\",\"relation\":\"same type\""),
                    HasSubstr("{\"type\":\"compared-function\",\"function\":\"mixer\"")));
}

}  // namespace
}  // namespace benchleaf
