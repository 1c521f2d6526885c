#include "cli/made_library.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

class GapsCommand : public MadeLibrary {};

TEST_F(GapsCommand, NamesFindingsAndThePagesThatWereNotRead) {
  const RunResult result = Ask({"gaps", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out,
              AllOf(StartsWith("QUILLHAVEN 12, chassis: "), HasSubstr("searched: 3 pages, 1 of them failed"),
                    HasSubstr("could not be read: the page took too long"), HasSubstr("quillhaven/chassis.png p. 2")));
}

TEST_F(GapsCommand, OfASetWithoutAPartsListSaysSo) {
  const RunResult result = Ask({"gaps", "brackenford"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound) << "nothing is known to be missing";
  EXPECT_THAT(result.out, HasSubstr("no parts list was found among them"));
}

TEST_F(GapsCommand, GivesOnlyTheKindsAskedFor) {
  const RunResult result = Ask({"gaps", "quillhaven", "--only", "unread", "--only", "page", "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_THAT(result.out, AllOf(HasSubstr("\"kind\":\"unread\""), Not(HasSubstr("\"kind\":\"not-listed\"")),
                                HasSubstr("{\"type\":\"summary\",\"command\":\"gaps\",\"set\":\"QUILLHAVEN 12\"")));
  EXPECT_EQ(Ask({"gaps", "quillhaven", "--only", "volume"}).code, ExitCode::kNothingFound);
  const RunResult wrong = Ask({"gaps", "quillhaven", "--only", "holes"});
  EXPECT_EQ(wrong.code, ExitCode::kUsage);
  EXPECT_THAT(wrong.err, HasSubstr("the kinds are: unread, volume, page"));
}

TEST_F(GapsCommand, WritesCsvAndSuggestsNames) {
  EXPECT_THAT(Ask({"gaps", "quillhaven", "--csv"}).out, StartsWith("set,manual,kind,grade,"));
  const RunResult unknown = Ask({"gaps", "quillhven"});
  EXPECT_EQ(unknown.code, ExitCode::kNothingFound);
  EXPECT_EQ(unknown.out, "");
  EXPECT_THAT(unknown.err, HasSubstr("QUILLHAVEN 12"));
}

}  // namespace
}  // namespace benchleaf
