#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class LineupCommand : public MadeLibrary {};

TEST_F(LineupCommand, ListsTubesAndNamesPagesNotRead) {
  const RunResult result = Ask({"lineup", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(StartsWith("QUILLHAVEN 12, chassis: 1 tube on 2 pages read\n"),
                                HasSubstr("not read: quillhaven/chassis.png, page 2: the page took too long"),
                                HasSubstr("V3    6CB6A"), HasSubstr("from memory")));
}

TEST_F(LineupCommand, ComparesTwoSets) {
  const RunResult result = Ask({"lineup", "quillhaven", "brackenford"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, HasSubstr("first serves for second  6CB6A  1: V3  6CB6    1: (6CB6)"));
}

TEST_F(LineupCommand, WritesJsonAndCsv) {
  const RunResult json = Ask({"lineup", "quillhaven", "--json"});
  EXPECT_THAT(json.out, AllOf(HasSubstr("{\"type\":\"lineup-tube\""),
                              HasSubstr("{\"type\":\"summary\",\"command\":\"lineup\",\"manuals\":1,\"tubes\":1}\n")));
  EXPECT_THAT(Ask({"lineup", "quillhaven", "--csv"}).out, StartsWith("set,manual,designator,"));
  EXPECT_THAT(Ask({"lineup", "quillhaven", "T7", "--csv"}).out, StartsWith("relation,first_set,"));
  EXPECT_EQ(Ask({"lineup", "quillhaven", "--csv", "--json"}).code, ExitCode::kUsage);
}

TEST_F(LineupCommand, SuggestsNamesForAnUnknownSet) {
  for (const auto& arguments : {std::vector<std::string>{"lineup", "quillhven"},
                                std::vector<std::string>{"lineup", "quillhaven", "brackenfrd"}}) {
    const RunResult result = Ask(arguments);
    EXPECT_EQ(result.code, ExitCode::kNothingFound);
    EXPECT_EQ(result.out, "");
    EXPECT_THAT(result.err, HasSubstr("no set is called"));
  }
}

TEST_F(LineupCommand, NamesTheLineOfAWrongRowOfARestorersTable) {
  std::ofstream(library_ / "tube-functions.tsv") << "function\twords\tsource\n\tDAMPER\tmine\n";
  const RunResult result = Ask({"lineup", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kUsage);
  EXPECT_THAT(result.err, HasSubstr("line 2"));
}

}  // namespace
}  // namespace benchleaf
