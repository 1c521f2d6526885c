#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

// The library's sets: QUILLHAVEN 12 with V3, a 6CB6A; BRACKENFORD T7 with a 6CB6 whose designator was not read.
class StockCommand : public MadeLibrary {
 protected:
  std::string List(const std::string& text) const {
    const std::filesystem::path file = folder_ / "tubes.csv";
    std::ofstream(file) << text;
    return file.string();
  }
};

TEST_F(StockCommand, TellsWhichSetsAreServed) {
  const RunResult result = Ask({"stock", List("type,count,condition,place\n6CB6A,1,new,shelf\n6AL5,2,new,\n")});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(StartsWith("2 rows, 3 tubes, 3 of them counted as good\n\nset"),
                                HasSubstr("BRACKENFORD T7      0       0  no designators known"),
                                HasSubstr("QUILLHAVEN 12       1       1  served"),
                                HasSubstr("Seen without a designator; look whether it is a tube of the set:\n"),
                                HasSubstr("BRACKENFORD T7  6CB6"), Not(HasSubstr("Claimed by more sets")),
                                HasSubstr("No set of the library needs:\n"
                                          "line  type  count  remark\n"
                                          "----  ----  -----  ----------\n"
                                          "   3  6AL5      2  dual diode\n")));
}

TEST_F(StockCommand, SaysWhatLacksAndWhatLiesNearIt) {
  const RunResult result = Ask({"stock", List("type,count,condition\n6CB6,1,new\n3CB6,1,new\n"), "--in", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(
      result.out,
      AllOf(HasSubstr("QUILLHAVEN 12: lacks tubes, 0 of 1 tube\n"),
            HasSubstr("V3    6CB6A  90 %  quillhaven/chassis.png p. 1 (printed 8-17), centre  lacks"),
            HasSubstr("on hand: 6CB6, line 2: earlier or plainer form"),
            HasSubstr("on hand: 3CB6, line 3: other heater (3.15 V, 0.6 A); not"), Not(HasSubstr("BRACKENFORD"))));
}

TEST_F(StockCommand, NamesABadRowAndAnswersForTheRest) {
  const RunResult result = Ask({"stock", List("type,count,condition\n6CB6A,some,new\n6CB6,1,new\n")});
  EXPECT_EQ(result.code, ExitCode::kPartly);
  EXPECT_THAT(result.err, HasSubstr("tubes.csv: line 2, column 2 (count): 'some' is no count"));
  EXPECT_THAT(result.out, HasSubstr("QUILLHAVEN 12       1       0  lacks tubes"));
}

TEST_F(StockCommand, SaysThatATableWithoutConditionsIsTakenForGood) {
  const RunResult result = Ask({"stock", List("type,colour\n6CB6,red\n")});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_THAT(result.out, HasSubstr("every tube is taken for good. Test them first."));
  EXPECT_THAT(result.err, AllOf(HasSubstr("no column is named condition or tester"),
                                HasSubstr("columns that nothing is taken from: colour")));
}

TEST_F(StockCommand, DecodesATypeThatNoTableKnows) {
  EXPECT_THAT(Ask({"stock", List("type\n6QZ9\n")}).out,
              AllOf(HasSubstr("Not in the tables of tube types; what their numbers say:\n6QZ9: no row"),
                    HasSubstr("heater of about 6 V")));
}

TEST_F(StockCommand, WritesCsvAndJson) {
  const std::string file = List("type,count,condition,place\n6CB6A,1,new,=shelf\n");
  EXPECT_EQ(Ask({"stock", file, "--csv", "--in", "quillhaven"}).out,
            "set,verdict,designator,type,confidence,file,page,where,served_by,standing,line,place,perhaps\r\n"
            "QUILLHAVEN 12,served,V3,6CB6A,0.9,quillhaven/chassis.png,1,\"centre, 52 % across, 52 % down\",6CB6A,"
            "same tube,2,'=shelf,\r\n");
  EXPECT_THAT(
      Ask({"stock", file, "--json"}).out,
      AllOf(StartsWith(R"({"type":"stock-set","set":"BRACKENFORD T7","verdict":"no designators known","tubes":0,)"),
            HasSubstr(R"({"type":"stock-row","line":2,"tube":"6CB6A","count":1,)"),
            HasSubstr(R"({"type":"summary","command":"stock","sets":2,"served":1,"rows":1,"rows_left_out":0,)")));
}

TEST_F(StockCommand, TakesTheRestorersOwnWords) {
  std::ofstream(library_ / "stock-words.tsv") << "role\twords\tsource\nbad\tMUFFLED\tmy bench\n";
  EXPECT_THAT(Ask({"stock", List("type,condition\n6CB6A,muffled\n")}).out, HasSubstr("its condition is 'muffled'"));
}

TEST_F(StockCommand, RefusesWhatItCannotRead) {
  EXPECT_EQ(Ask({"stock", (folder_ / "none.csv").string()}).code, ExitCode::kCannotRun);
  EXPECT_EQ(Ask({"stock", folder_.string()}).code, ExitCode::kCannotRun) << "a folder";
  const RunResult nameless = Ask({"stock", List("6CB6,1\n")});
  EXPECT_EQ(nameless.code, ExitCode::kUsage);
  EXPECT_THAT(nameless.err, HasSubstr("line 1: no column is named type or glass"));
}

}  // namespace
}  // namespace benchleaf
