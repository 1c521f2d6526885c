#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

// QUILLHAVEN 12 lists C112, ".047MFD, CAPACITOR, PAPER, 400 V", and a knob; BRACKENFORD T7 has no list.
class ReplaceCommand : public MadeLibrary {};

TEST_F(ReplaceCommand, TellsWhatToOrderAndWhere) {
  const RunResult result = Ask({"replace", "quillhaven"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, StartsWith("QUILLHAVEN 12: 1 part to order in 1 item, 0 rows not understood\n"
                                     "count  order           value     code  rating  replaces  old             list "
                                     "page                 least sure\n"
                                     "-----  --------------  --------  ----  ------  --------  --------------  "
                                     "------------------------  ----------\n"
                                     "    1  film capacitor  0.047 uF  47n   400 V   C112      0.047 uF 400 V  "
                                     "quillhaven/list.png p. 1        80 %\n"));
}

TEST_F(ReplaceCommand, PrintsTheCautionsWithIt) {
  EXPECT_THAT(Ask({"replace", "quillhaven"}).out, AllOf(HasSubstr("chassis may be live"), HasSubstr("PCBs"),
                                                        HasSubstr("IEC 60384-14"), HasSubstr("Follow local codes")));
  EXPECT_THAT(Ask({"replace", "quillhaven", "--csv"}).err, HasSubstr("chassis may be live"))
      << "a table for an order has no place for them";
  EXPECT_THAT(Ask({"replace", "quillhaven", "--json"}).out, HasSubstr(R"("cautions":["Values were read by a machine)"));
}

TEST_F(ReplaceCommand, WritesCsvAndJson) {
  EXPECT_EQ(Ask({"replace", "quillhaven", "--csv"}).out,
            "count,order,value,code,rating,replaces,old,list_pages,confidence,check,note\r\n"
            "1,film capacitor,0.047 uF,47n,400 V,C112,0.047 uF 400 V,quillhaven/list.png p. 1,0.8,,\r\n");
  EXPECT_THAT(Ask({"replace", "quillhaven", "--json"}).out,
              AllOf(StartsWith(R"({"type":"order-item","set":"QUILLHAVEN 12","kind":"paper","count":1,)"
                               R"("order":"film capacitor","value":"0.047 uF","code":"47n","rating":"400 V",)"),
                    HasSubstr(R"("designator":"C112","item":"","section":0,"sections":1,"was":"0.047 uF 400 V",)"),
                    HasSubstr(R"({"type":"summary","command":"replace","set":"QUILLHAVEN 12","items":1,"parts":1,)")));
}

TEST_F(ReplaceCommand, TakesKindsOneByOne) {
  const RunResult none = Ask({"replace", "quillhaven", "--only", "carbon", "--only", "electrolytic"});
  EXPECT_EQ(none.code, ExitCode::kNothingFound);
  EXPECT_THAT(none.err, HasSubstr("no part of the kinds asked for"));
  EXPECT_EQ(Ask({"replace", "--only", "paper", "quillhaven"}).code, ExitCode::kOk) << "the set may stand behind it";
  const RunResult unknown = Ask({"replace", "quillhaven", "--only", "bakelite"});
  EXPECT_EQ(unknown.code, ExitCode::kUsage);
  EXPECT_THAT(unknown.err, HasSubstr("no kind of part is called 'bakelite'; the kinds are: electrolytic, selenium"));
}

TEST_F(ReplaceCommand, OfASetWithoutAListSaysSo) {
  const RunResult result = Ask({"replace", "brackenford"});
  EXPECT_EQ(result.code, ExitCode::kNothingFound);
  EXPECT_EQ(result.out, "");
  EXPECT_THAT(result.err, HasSubstr("BRACKENFORD T7: no parts list was found"));
}

TEST_F(ReplaceCommand, TakesTheRestorersOwnWords) {
  std::ofstream(library_ / "replace-words.tsv") << "role\twords\tsource\nmica\tPAPER\tmy bench\n";
  EXPECT_EQ(Ask({"replace", "quillhaven"}).code, ExitCode::kNothingFound);
  std::ofstream(library_ / "replace-words.tsv") << "role\twords\tsource\nodd\tPAPER\tmy bench\n";
  const RunResult wrong = Ask({"replace", "quillhaven"});
  EXPECT_EQ(wrong.code, ExitCode::kUsage);
  EXPECT_THAT(wrong.err, AllOf(HasSubstr("replace-words.tsv"), HasSubstr("line 2, column 'role'")));
}

}  // namespace
}  // namespace benchleaf
