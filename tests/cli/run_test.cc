#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace fs = std::filesystem;

const std::vector<std::string> kCommands = {"index", "find",    "parts", "tube",      "lineup", "gaps",
                                            "stock", "replace", "sets",  "picture",   "binder", "searchable",
                                            "files", "export",  "merge", "completion"};

TEST(Run, HelpListsEveryCommandForPeople) {
  const RunResult result = RunProgram({"--help"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_EQ(result.err, "");
  for (const std::string& command : kCommands) EXPECT_THAT(result.out, HasSubstr("\n  " + command + " "));
  EXPECT_THAT(result.out, Not(HasSubstr("worker")));
  EXPECT_THAT(result.out, HasSubstr("Example"));
}

TEST(Run, HelpTellsTheExitCodes) {
  const std::string help = RunProgram({"--help"}).out;
  EXPECT_THAT(help, AllOf(HasSubstr("Exit codes:\n  0    done\n"), HasSubstr("\n  130  interrupted")));
}

TEST(Run, VersionNamesTheProgramAndTheLibrariesThatRun) {
  const RunResult result = RunProgram({"--version"});
  EXPECT_EQ(result.code, ExitCode::kOk);
  EXPECT_EQ(result.err, "");
  EXPECT_THAT(result.out, testing::StartsWith("benchleaf "));
  for (const char* library : {"tesseract", "leptonica", "poppler", "qpdf", "xapian", "pango", "cairo", "utf8proc",
                              "nlohmann-json", "nettle", "libseccomp", "tl::expected", "CLI11"}) {
    EXPECT_THAT(result.out, testing::ContainsRegex(std::string("\n  ") + library + " [0-9]")) << library;
  }
}

// The commands that the program's help lists: two columns, under a title of their own.
std::vector<std::string> ListedCommands() {
  std::istringstream help(RunProgram({"--help"}).out);
  std::vector<std::string> commands;
  bool listed = false;
  for (std::string line; std::getline(help, line);) {
    if (listed && line.empty()) break;
    if (listed && line.starts_with("  ") && line.size() > 2 && line[2] != ' ') {
      commands.push_back(line.substr(2, line.find(' ', 2) - 2));
    }
    listed = listed || line.starts_with("Subcommands:");
  }
  return commands;
}

TEST(Run, EveryCommandHasHelpWithAnExample) {
  const std::vector<std::string> commands = ListedCommands();
  EXPECT_THAT(commands, testing::UnorderedElementsAreArray(kCommands)) << "the commands that these tests know";
  for (const std::string& command : commands) {
    const RunResult result = RunProgram({command, "--help"});
    EXPECT_EQ(result.code, ExitCode::kOk) << command;
    EXPECT_THAT(result.out, AllOf(HasSubstr("Example:"), HasSubstr("\n  benchleaf " + command))) << command;
  }
}

// What a command answers can be had as JSON, but for what is not an answer.
TEST(Run, EveryCommandThatAnswersHasJson) {
  for (const std::string& command : ListedCommands()) {
    const bool answers = command != "completion" && command != "files";
    const std::string help = RunProgram({command, "--help"}).out;
    if (!answers) continue;
    EXPECT_THAT(help, AllOf(HasSubstr("--json"), HasSubstr("--db"))) << command;
  }
}

TEST(Run, EveryCommandThatTakesLongCanBeQuietOrTellOfEachPage) {
  for (const std::string command : {"index", "picture", "binder", "searchable"}) {
    EXPECT_THAT(RunProgram({command, "--help"}).out, AllOf(HasSubstr("-q,--quiet"), HasSubstr("-v,--verbose")))
        << command;
  }
}

TEST(Run, MisuseGoesToTheTalkingStream) {
  struct Case {
    const char* why;
    std::vector<std::string> arguments;
    const char* said;
  };
  const std::vector<Case> cases = {
      {"no command", {}, "--help"},
      {"no such command",
       {"prats"},
       "the commands are: index, find, parts, tube, lineup, gaps, stock, replace, sets, picture, binder, searchable, "
       "files, export, merge, completion"},
      {"an option that is none", {"sets", "--colour"}, "--colour"},
      {"a command without what it needs", {"find"}, "TERM"},
      {"a number that is none", {"find", "C1", "--limit", "many"}, "--limit"},
      {"a number out of range", {"index", "x", "--workers", "0"}, "--workers"},
      {"quiet and verbose", {"index", "x", "-q", "-v"}, "excludes"},
      {"control characters are not echoed", {"\x1b[2J"}, "\uFFFD[2J"},
  };
  for (const Case& c : cases) {
    const RunResult result = RunProgram(c.arguments);
    EXPECT_EQ(result.code, ExitCode::kUsage) << c.why;
    EXPECT_EQ(result.out, "") << c.why;
    EXPECT_THAT(result.err, HasSubstr(c.said)) << c.why;
    EXPECT_THAT(result.err, Not(HasSubstr("\x1b"))) << c.why;
  }
}

class RunOnDisk : public MadeLibrary {};

TEST_F(RunOnDisk, WithoutAnIndexSaysHowToMakeOne) {
  fs::create_directories(folder_ / "empty");
  for (const std::vector<std::string>& command :
       std::vector<std::vector<std::string>>{{"find", "C1"}, {"parts", "x"}, {"sets"}, {"export"}, {"picture", "C1"}}) {
    std::vector<std::string> arguments = command;
    arguments.insert(arguments.end(), {"--library", (folder_ / "empty").string()});
    const RunResult result = RunProgram(arguments);
    EXPECT_EQ(result.code, ExitCode::kCannotRun) << command.front();
    EXPECT_EQ(result.out, "") << command.front();
    EXPECT_THAT(result.err, HasSubstr("index")) << command.front();
  }
}

TEST_F(RunOnDisk, WithoutAnIndexATubesTypeIsStillTold) {
  fs::create_directories(folder_ / "empty");
  const RunResult result = RunProgram({"tube", "80", "--library", (folder_ / "empty").string()});
  EXPECT_EQ(result.code, ExitCode::kCannotRun) << "which sets use it is not known";
  EXPECT_THAT(result.out, HasSubstr("full-wave rectifier"));
  EXPECT_THAT(result.err, HasSubstr("index"));
}

TEST_F(RunOnDisk, IndexOfAFolderThatIsNoneOrHoldsNoScansSaysSo) {
  const RunResult missing = RunProgram({"index", (folder_ / "nowhere").string()});
  EXPECT_EQ(missing.code, ExitCode::kCannotRun);
  EXPECT_THAT(missing.err, HasSubstr("nowhere"));
  fs::create_directories(folder_ / "empty");
  const RunResult empty = RunProgram({"index", (folder_ / "empty").string()});
  EXPECT_EQ(empty.code, ExitCode::kCannotRun);
  EXPECT_THAT(empty.err, HasSubstr("empty"));
  EXPECT_EQ(empty.out, "");
}

TEST_F(RunOnDisk, AConfigFolderThatIsNoneIsNamed) {
  const RunResult result = Ask({"sets", "--config", (folder_ / "no-config").string()});
  EXPECT_EQ(result.code, ExitCode::kCannotRun);
  EXPECT_THAT(result.err, HasSubstr("no-config"));
}

TEST_F(RunOnDisk, ExportWritesARecordForEveryPageTheSameEachTime) {
  const RunResult first = Ask({"export"});
  EXPECT_EQ(first.code, ExitCode::kOk) << first.err;
  EXPECT_THAT(first.out,
              AllOf(HasSubstr("\"record\":\"page\""), HasSubstr("\"record\":\"link\""), HasSubstr("t7.png")));
  EXPECT_EQ(Ask({"export"}).out, first.out);
}

}  // namespace
}  // namespace benchleaf
