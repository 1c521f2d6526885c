#include "cli/completion_command.h"

#include "cli/completion.h"
#include "cli/man_page.h"
#include "cli/talk.h"
#include "cli/version_text.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <string>

namespace benchleaf {
namespace {

ExitCode WriteCompletion(const CLI::App& app, const std::string& shell, const Streams& streams) {
  const ProgramOutline outline = OutlineOf(app);
  if (shell == "bash") {
    streams.out << BashCompletion(outline);
  } else if (shell == "zsh") {
    streams.out << ZshCompletion(outline);
  } else if (shell == "fish") {
    streams.out << FishCompletion(outline);
  } else {
    return Stop(streams, {ErrorCode::kUsage, "no completion is written for '" + shell + "': bash, zsh or fish", {}, 0});
  }
  return ExitCode::kOk;
}

}  // namespace

void SetUpCompletion(CLI::App& app, Job& job) {
  auto shell = std::make_shared<std::string>();
  CLI::App* command = app.add_subcommand("completion", "Write a script that completes these commands in a shell");
  command->add_option("SHELL", *shell, "bash, zsh or fish")->required();
  command->footer(
      "An installed benchleaf brings them along; without one:\n\n"
      "Example:\n"
      "  benchleaf completion bash > ~/.local/share/bash-completion/completions/benchleaf");
  command->callback(
      [shell, &app, &job] { job = [shell, &app](const Streams& s) { return WriteCompletion(app, *shell, s); }; });

  CLI::App* page = app.add_subcommand("man-page", "Write the manual page");
  page->group("");  // not listed
  page->callback([&app, &job] {
    job = [&app](const Streams& streams) {
      streams.out << ManPage(OutlineOf(app), ProgramVersion());
      return ExitCode::kOk;
    };
  });
}

}  // namespace benchleaf
