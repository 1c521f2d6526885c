#include "cli/made_library.h"

#include "benchleaf/raster/page_source.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace fs = std::filesystem;

class SearchableCommand : public MadeLibrary {
 protected:
  std::string Target(const std::string& name) const { return (folder_ / name).string(); }
};

TEST_F(SearchableCommand, WritesACopyInWhichTheWordsAreFound) {
  const RunResult result = Ask({"searchable", "BRACKENFORD", "-o", Target("t7.pdf"), "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("\"type\":\"copy\""), HasSubstr("\"pages\":1"), HasSubstr("\"left_out\":0"),
                                HasSubstr("\"type\":\"summary\",\"command\":\"searchable\"")));
  const auto copy = OpenScan(Target("t7.pdf"), "t7.pdf");
  ASSERT_TRUE(copy) << copy.error().ToString();
  const auto page = (*copy)->Load(1);
  ASSERT_TRUE(page) << page.error().ToString();
  std::vector<std::string> words;
  for (const LayerWord& word : page->layer) words.push_back(word.text);
  EXPECT_THAT(words, testing::UnorderedElementsAre("VERTICAL", "HOLD", "6CB6", "R7"));
}

TEST_F(SearchableCommand, NamesThePagesThatItLeavesOut) {
  // The index knows a second page and a list of which no scan is left.
  const RunResult result = Ask({"searchable", "QUILLHAVEN", "-o", Target("q.pdf")});
  EXPECT_EQ(result.code, ExitCode::kPartly);
  EXPECT_THAT(result.err, AllOf(HasSubstr("left out: quillhaven/chassis.png, page 2"),
                                HasSubstr("left out: quillhaven/list.png, page 1")));
  EXPECT_TRUE(fs::exists(Target("q.pdf")));
}

TEST_F(SearchableCommand, NamesAScanThatIsNotInTheLibrary) {
  const RunResult result =
      RunProgram({"searchable", "BRACKENFORD", "-o", Target("t7.pdf"), "--db", (library_ / ".benchleaf").string(),
                  "--library", (folder_ / "elsewhere").string()},
                 state_folder_);
  EXPECT_EQ(result.code, ExitCode::kCannotRun);
  EXPECT_THAT(result.err, AllOf(HasSubstr("is not in the library folder"), HasSubstr("--library")));
  EXPECT_THAT(result.err, Not(HasSubstr("1 page"))) << "nothing is promised before that";
}

TEST_F(SearchableCommand, TellsAsMuchAsIsWanted) {
  const std::vector<std::string> command = {"searchable", "BRACKENFORD", "-o", Target("t7.pdf"), "--force"};
  const auto with = [&](const char* option) {
    std::vector<std::string> arguments = command;
    arguments.emplace_back(option);
    return Ask(arguments).err;
  };
  EXPECT_EQ(with("--quiet"), "");
  EXPECT_THAT(with("--verbose"), HasSubstr("benchleaf: t7.png, page 1\n"));
  EXPECT_THAT(Ask(command).err, AllOf(HasSubstr("1 page, 4 words"), Not(HasSubstr("t7.png"))));
}

TEST_F(SearchableCommand, RefusesWhatItCannotWrite) {
  struct Case {
    const char* why;
    std::vector<std::string> arguments;
    ExitCode code;
    const char* said;
  };
  std::ofstream(Target("mine.pdf")) << "mine";
  const std::vector<Case> cases = {
      {"a file that is there",
       {"searchable", "BRACKENFORD", "-o", Target("mine.pdf")},
       ExitCode::kCannotRun,
       "--force"},
      {"a place in the library",
       {"searchable", "BRACKENFORD", "-o", (library_ / "copy.pdf").string()},
       ExitCode::kUsage,
       "lies in the library"},
      {"another form", {"searchable", "BRACKENFORD", "-o", Target("t7.png")}, ExitCode::kUsage, "ends in .pdf"},
      {"an unknown set", {"searchable", "NOBODY"}, ExitCode::kNothingFound, "no set"},
      {"an unknown manual", {"searchable", "BRACKENFORD", "--manual", "x"}, ExitCode::kNothingFound, "there are: t7"},
  };
  for (const Case& c : cases) {
    const RunResult result = Ask(c.arguments);
    EXPECT_EQ(result.code, c.code) << c.why << ": " << result.err;
    EXPECT_THAT(result.err, HasSubstr(c.said)) << c.why;
    EXPECT_EQ(result.out, "") << c.why;
  }
  EXPECT_EQ(fs::file_size(Target("mine.pdf")), 4U);
}

}  // namespace
}  // namespace benchleaf
