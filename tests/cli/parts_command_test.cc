#include "cli/made_library.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class PartsCommand : public MadeLibrary {};

TEST_F(PartsCommand, ListsPartsWithThePlacesWhereTheyAreDrawn) {
  const RunResult result = Ask({"parts", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, StartsWith("QUILLHAVEN 12: 2 parts, 1 of them seen on a drawing\n"));
  EXPECT_THAT(result.out,
              AllOf(HasSubstr("CAPACITOR, PAPER, 400 V"), HasSubstr(".047MFD"), HasSubstr("quillhaven/list.png p. 1"),
                    HasSubstr("quillhaven/chassis.png p. 1 (printed 8-17), upper left"), HasSubstr("KNOB")));
}

TEST_F(PartsCommand, WritesCsvThatASpreadsheetTakesForText) {
  const RunResult result = Ask({"parts", "quillhaven", "--csv"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_EQ(
      result.out,
      "set,manual,designator,assembly,item,description,value,part_number,quantity,file,page,confidence,drawn_on\r\n"
      "QUILLHAVEN 12,chassis,C112,,,\"CAPACITOR, PAPER, 400 V\",.047MFD,'=23-117,1,quillhaven/list.png,1,0.8,"
      "\"quillhaven/chassis.png p. 1, upper left, 24 % across, 14 % down, only candidate\"\r\n"
      "QUILLHAVEN 12,chassis,,,,KNOB,,77-2,,quillhaven/list.png,1,0.7,\r\n");
}

TEST_F(PartsCommand, WritesOneJsonObjectALine) {
  const RunResult result = Ask({"parts", "quillhaven", "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_THAT(
      result.out,
      AllOf(
          StartsWith(R"({"type":"part","set":"QUILLHAVEN 12","manual":"chassis","file":"quillhaven/list.png","page":1,)"
                     R"("printed_page":"","page_kind":"parts list","designator":"C112","assembly":"","item":"",)"
                     R"("description":"CAPACITOR, PAPER, 400 V","value":".047MFD","part_number":"=23-117",)"
                     R"("quantity":"1","box":[0.1,0.2,0.8,0.01],"confidence":0.8,"drawn":[{)"
                     R"("file":"quillhaven/chassis.png","page":1,"printed_page":"8-17","page_kind":"schematic",)"),
          HasSubstr("{\"type\":\"summary\",\"command\":\"parts\",\"set\":\"QUILLHAVEN 12\",\"parts\":2}\n")));
}

TEST_F(PartsCommand, OfASetWithoutAListSaysSo) {
  const RunResult result = Ask({"parts", "BRACKENFORD T7"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_EQ(result.out, "");
  EXPECT_THAT(result.err, HasSubstr("BRACKENFORD T7: no parts list was found"));
}

TEST_F(PartsCommand, OfAnUnknownSetPointsToTheList) {
  const RunResult result = Ask({"parts", "zzzzzzzzzzzz"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_THAT(result.err, HasSubstr("no set is called 'zzzzzzzzzzzz'"));
}

TEST_F(PartsCommand, TakesOneFormOnly) {
  EXPECT_EQ(Ask({"parts", "quillhaven", "--csv", "--json"}).code, ExitCode::kUsage);
}

}  // namespace
}  // namespace benchleaf
