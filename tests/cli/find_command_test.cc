#include "cli/made_library.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

class FindCommand : public MadeLibrary {};

TEST_F(FindCommand, NamesSetFilePageKindAndPlace) {
  const RunResult result = Ask({"find", "C112"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_EQ(result.err, "");
  EXPECT_THAT(result.out, StartsWith("C112: 2 places in 1 set\n"));
  EXPECT_THAT(result.out,
              AllOf(HasSubstr("QUILLHAVEN 12"), HasSubstr("quillhaven/chassis.png"), HasSubstr("1 (printed 8-17)"),
                    HasSubstr("schematic"), HasSubstr("upper left, 24 % across, 14 % down"), HasSubstr("90 %"),
                    HasSubstr("exact")));
}

TEST_F(FindCommand, AnswersEachTermOnItsOwn) {
  const RunResult result = Ask({"find", "C112", "R7"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_THAT(result.out, AllOf(HasSubstr("C112: 2 places"), HasSubstr("R7: 1 place in 1 set")));
}

TEST_F(FindCommand, TakesQuotedWordsAsText) {
  const RunResult result = Ask({"find", "vertical hold"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("t7.png"), HasSubstr("text")));
}

TEST_F(FindCommand, NarrowsToASetAndAKindOfPage) {
  EXPECT_THAT(Ask({"find", "C112", "--kind", "parts-list"}).out,
              AllOf(HasSubstr("1 place"), HasSubstr("list.png"), Not(HasSubstr("chassis.png"))));
  const RunResult elsewhere = Ask({"find", "C112", "--in", "brackenford t7"});
  EXPECT_EQ(elsewhere.code, ExitCode::kNothingFound);
  EXPECT_THAT(elsewhere.err, HasSubstr("C112: nothing found in BRACKENFORD T7"));
  EXPECT_EQ(elsewhere.out, "");
}

TEST_F(FindCommand, SaysThatThereIsMoreThanTheLimit) {
  const RunResult result = Ask({"find", "C112", "--limit", "1"});
  EXPECT_THAT(result.out, StartsWith("C112: 1 place in 1 set, and more (--limit shows more)\n"));
}

TEST_F(FindCommand, NothingFoundNamesWhatComesNear) {
  const RunResult result = Ask({"find", "C1122"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_EQ(result.out, "");
  EXPECT_THAT(result.err, AllOf(HasSubstr("C1122: nothing found"), HasSubstr("C112")));
}

TEST_F(FindCommand, WritesOneJsonObjectALine) {
  const RunResult result = Ask({"find", "V3", "X99", "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_THAT(result.out,
              StartsWith(R"({"type":"hit","term":"V3","number":1,"set":"QUILLHAVEN 12","manual":"chassis",)"
                         R"("file":"quillhaven/chassis.png","page":1,"printed_page":"8-17","page_kind":"schematic",)"
                         R"("kind":"designator","text":"V3","read":"V3","box":[0.5,0.5,0.03,0.01],"turn":0,)"
                         R"("where":"centre, 52 % across, 51 % down","confidence":0.9,"assembly":"","match":"exact"})"
                         "\n"
                         R"({"type":"nothing","term":"X99",)"));
  EXPECT_THAT(result.out, testing::EndsWith(R"({"type":"summary","command":"find","terms":2,"places":1})"
                                            "\n"));
}

TEST_F(FindCommand, RefusesAKindThatIsNone) {
  const RunResult result = Ask({"find", "C112", "--kind", "drawing"});
  EXPECT_EQ(result.code, ExitCode::kUsage);
  EXPECT_THAT(result.err, AllOf(HasSubstr("'drawing'"), HasSubstr("schematic, parts list, parts locator")));
}

TEST_F(FindCommand, SuggestsSetsWithNamesNearToAnUnknownOne) {
  const RunResult result = Ask({"find", "C112", "--in", "QUILLHAVEN 13"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_THAT(result.err, AllOf(HasSubstr("no set is called 'QUILLHAVEN 13'"), HasSubstr("QUILLHAVEN 12")));
}

}  // namespace
}  // namespace benchleaf
