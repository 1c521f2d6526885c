#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

class TubeCommand : public MadeLibrary {};

TEST_F(TubeCommand, AnswersForEveryFormAndSaysWhichWasRead) {
  const RunResult result = Ask({"tube", "6CB6"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, HasSubstr("\n\n6CB6: 2 sets, 2 places\n"));
  EXPECT_THAT(result.out, AllOf(HasSubstr("BRACKENFORD T7"), HasSubstr("QUILLHAVEN 12"),
                                HasSubstr("read as: 6CB6 (1 place), 6CB6A (1 place)")));
}

TEST_F(TubeCommand, NamesTheTubeThatStandsNextToTheType) {
  EXPECT_THAT(Ask({"tube", "6CB6A", "--json"}).out,
              HasSubstr(R"({"type":"tube","asked":"6CB6A","designator":"V3","set":"QUILLHAVEN 12",)"));
}

TEST_F(TubeCommand, TellsFirstWhatTheTubeIs) {
  EXPECT_THAT(Ask({"tube", "6CB6"}).out, StartsWith("6CB6: sharp-cutoff pentode\n  heater          6.3 V, 0.3 A\n"));
  EXPECT_THAT(Ask({"tube", "6CB6", "--json"}).out, StartsWith(R"({"type":"tube-type","name":"6CB6",)"));
}

TEST_F(TubeCommand, TakesTheRestorersOwnRowsFromTheLibrary) {
  std::ofstream own(library_ / "tubes.tsv");
  own << "type\theater_volts\theater_amps\tclass\tbase\tbasing\tequivalents\theater_variants\tserved_by\tindustrial\t"
         "service\tnote\tsource\n"
         "6QZ9\t6.3\t0.3\tsharp-cutoff pentode\t7-pin miniature\t\t6CB6\t\t\t\t\t\tmy bench\n";
  own.close();
  const RunResult result = Ask({"tube", "6QZ9"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("source          my bench"), HasSubstr("6QZ9: 2 sets, 2 places"),
                                HasSubstr("same as asked")))
      << "sets that use its equivalent";
}

TEST_F(TubeCommand, NamesThePlaceOfAWrongOwnRow) {
  std::ofstream own(library_ / "tubes.tsv");
  own << "type\n";
  own.close();
  const RunResult result = Ask({"tube", "6CB6"});
  EXPECT_EQ(result.code, ExitCode::kUsage);
  EXPECT_THAT(result.err, AllOf(HasSubstr("tubes.tsv"), HasSubstr("line 1: the header has no column 'heater_volts'")));
}

TEST_F(TubeCommand, NothingFoundIsSaidAndCoded) {
  const RunResult result = Ask({"tube", "5U4GB"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_THAT(result.out, StartsWith("5U4GB: full-wave rectifier\n")) << "what is known is told all the same";
  EXPECT_THAT(result.err, HasSubstr("5U4GB: no set is known to use it"));
}

}  // namespace
}  // namespace benchleaf
