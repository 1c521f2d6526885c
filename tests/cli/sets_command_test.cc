#include "cli/made_library.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class SetsCommand : public MadeLibrary {};

TEST_F(SetsCommand, ListsAllSets) {
  const RunResult result = Ask({"sets"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_EQ(result.out,
            "set             manuals  volumes  pages  not read  parts  drawn\n"
            "--------------  -------  -------  -----  --------  -----  -----\n"
            "BRACKENFORD T7        1        1      1         0      0      -\n"
            "QUILLHAVEN 12         1        1      3         1      2   50 %\n");
}

TEST_F(SetsCommand, TellsOfOneSetWhatCouldNotBeRead) {
  const RunResult result = Ask({"sets", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, StartsWith("QUILLHAVEN 12\nmaker: QUILLHAVEN\nmodel: 12\n"));
  EXPECT_THAT(result.out, AllOf(HasSubstr("schematic"), HasSubstr("parts list"),
                                HasSubstr("quillhaven/chassis.png     2  the page took too long")));
}

TEST_F(SetsCommand, WritesOneJsonObjectALine) {
  const RunResult result = Ask({"sets", "--json"});
  EXPECT_THAT(result.out, StartsWith(R"({"type":"set","set":"BRACKENFORD T7","maker":"BRACKENFORD","model":"T7",)"));
  EXPECT_THAT(result.out, HasSubstr(R"({"type":"summary","command":"sets","sets":2})"));
}

}  // namespace
}  // namespace benchleaf
