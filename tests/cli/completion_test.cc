#include "cli/completion.h"

#include "cli/made_library.h"
#include "cli/man_page.h"

#include <gmock/gmock.h>
#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace fs = std::filesystem;

struct ShellRun {
  int code = -1;
  std::string out;
};

ShellRun Shell(const std::string& command) {
  ShellRun run;
  std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), nullptr);
  std::array<char, 4096> chunk{};
  while (pipe && std::fgets(chunk.data(), chunk.size(), pipe.get()) != nullptr) run.out += chunk.data();
  const int status = pclose(pipe.release());
  run.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return run;
}

bool HasProgram(const std::string& name) { return Shell("command -v " + name + " >/dev/null").code == 0; }

class Completion : public MadeLibrary {
 protected:
  void SetUp() override {
    MadeLibrary::SetUp();
    for (const char* shell : {"bash", "zsh", "fish"}) {
      const RunResult result = RunProgram({"completion", shell});
      ASSERT_EQ(result.code, ExitCode::kOk) << result.err;
      std::ofstream(folder_ / shell) << result.out;
    }
    // What stands for the program on the completed line: it can tell the names of sets.
    std::ofstream(folder_ / "benchleaf") << "#!/bin/sh\nprintf 'QUILLHAVEN 12\\nBRACKENFORD T7\\n'\n";
    fs::permissions(folder_ / "benchleaf", fs::perms::owner_all);
  }

  // What bash offers at the end of the words.
  std::string OfferedByBash(const std::string& words) const {
    return Shell("bash --norc -c 'source " + (folder_ / "bash").string() + "; compopt() { :; }; COMP_WORDS=(" +
                 (folder_ / "benchleaf").string() + " " + words +
                 "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _benchleaf; printf \"%s\\n\" \"${COMPREPLY[@]}\"' 2>&1")
        .out;
  }
};

TEST_F(Completion, OfBashOffersCommandsOptionsAndValues) {
  struct Case {
    const char* why;
    std::string words;
    std::string offered;
  };
  const std::vector<Case> cases = {
      {"commands", "li", "lineup\n"},
      {"options of the program", "--v", "--version\n"},
      {"options of a command", "picture C1 --tog", "--together\n"},
      {"an option's own values", "find C1 --kind parts", "parts\\ list\nparts\\ locator\n"},
      {"kinds of another command", "replace x --only sel", "selenium\n"},
      {"views", "picture --view sp", "spot\n"},
      {"a set, whatever its case", "parts quill", "QUILLHAVEN\\ 12\n"},
      {"a set as an option's value", "find C1 --in B", "BRACKENFORD\\ T7\n"},
      {"shells", "completion z", "zsh\n"},
      {"nothing that fits", "zz", "\n"},
  };
  for (const Case& c : cases) EXPECT_EQ(OfferedByBash(c.words), c.offered) << c.why;
}

TEST_F(Completion, ScriptsAreWellFormedForTheirShells) {
  EXPECT_EQ(Shell("bash -n " + (folder_ / "bash").string()).code, 0);
  for (const char* shell : {"zsh", "fish"}) {
    if (!HasProgram(shell)) continue;
    EXPECT_EQ(Shell(std::string(shell) + " -n " + (folder_ / shell).string()).code, 0) << shell;
  }
}

TEST_F(Completion, EveryShellKnowsEveryCommandThatHelpLists) {
  const std::string help = RunProgram({"--help"}).out;
  for (const char* shell : {"bash", "zsh", "fish"}) {
    const std::string script = RunProgram({"completion", shell}).out;
    for (const char* command : {"index", "find", "parts", "tube", "lineup", "gaps", "stock", "replace", "sets",
                                "picture", "binder", "searchable", "files", "export", "merge", "completion"}) {
      EXPECT_THAT(help, HasSubstr(std::string("\n  ") + command + " "));
      EXPECT_THAT(script, HasSubstr(command)) << shell;
    }
    EXPECT_THAT(script, Not(HasSubstr("worker)"))) << shell;
  }
}

TEST(CompletionCommand, RefusesAShellThatItDoesNotKnow) {
  const RunResult result = RunProgram({"completion", "abacus"});
  EXPECT_EQ(result.code, ExitCode::kUsage);
  EXPECT_THAT(result.err, HasSubstr("bash, zsh or fish"));
}

TEST_F(Completion, TheManualPageTellsEveryCommandAndExitCodeAndTroffHasNoComplaint) {
  const RunResult page = RunProgram({"man-page"});
  ASSERT_EQ(page.code, ExitCode::kOk) << page.err;
  EXPECT_THAT(page.out, AllOf(HasSubstr(".SS picture\n"), HasSubstr(".SH EXIT STATUS"), HasSubstr("\\fB130\\fR"),
                              HasSubstr("\\-\\-together"), Not(HasSubstr("worker\n"))));
  std::ofstream(folder_ / "benchleaf.1") << page.out;
  if (!HasProgram("groff")) GTEST_SKIP() << "groff is not installed";
  const ShellRun troff = Shell("groff -man -Tutf8 -ww -z " + (folder_ / "benchleaf.1").string() + " 2>&1");
  EXPECT_EQ(troff.code, 0);
  EXPECT_EQ(troff.out, "");
}

}  // namespace
}  // namespace benchleaf
