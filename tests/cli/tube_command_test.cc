#include "cli/made_library.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class TubeCommand : public MadeLibrary {};

TEST_F(TubeCommand, AnswersForEveryFormAndSaysWhichWasRead) {
  const RunResult result = Ask({"tube", "6CB6"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, StartsWith("6CB6: 2 sets, 2 places\n"));
  EXPECT_THAT(result.out, AllOf(HasSubstr("BRACKENFORD T7"), HasSubstr("QUILLHAVEN 12"),
                                HasSubstr("read as: 6CB6 (1 place), 6CB6A (1 place)")));
}

TEST_F(TubeCommand, NamesTheTubeThatStandsNextToTheType) {
  EXPECT_THAT(Ask({"tube", "6CB6A", "--json"}).out,
              HasSubstr(R"({"type":"tube","asked":"6CB6A","designator":"V3","set":"QUILLHAVEN 12",)"));
}

TEST_F(TubeCommand, NothingFoundIsSaidAndCoded) {
  const RunResult result = Ask({"tube", "5U4GB"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_EQ(result.out, "");
  EXPECT_THAT(result.err, HasSubstr("5U4GB: no set is known to use it"));
}

}  // namespace
}  // namespace benchleaf
