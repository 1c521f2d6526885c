#include "benchleaf/cli/run.h"

#include "cli/binder_command.h"
#include "cli/completion_command.h"
#include "cli/exit_codes.h"
#include "cli/export_command.h"
#include "cli/files_command.h"
#include "cli/find_command.h"
#include "cli/gaps_command.h"
#include "cli/index_command.h"
#include "cli/lineup_command.h"
#include "cli/merge_command.h"
#include "cli/parts_command.h"
#include "cli/picture_command.h"
#include "cli/replace_command.h"
#include "cli/searchable_command.h"
#include "cli/sets_command.h"
#include "cli/stock_command.h"
#include "cli/talk.h"
#include "cli/tube_command.h"
#include "cli/version_text.h"
#include "cli/worker_command.h"

#include <CLI/CLI.hpp>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <exception>
#include <new>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace {

std::string ExitCodesText() {
  std::string text = "Exit codes:";
  for (const ExitCodeMeaning& code : kExitCodes) {
    const std::string number = std::to_string(static_cast<int>(code.code));
    text += "\n  " + number + std::string(number.size() < 5 ? 5 - number.size() : 1, ' ') + std::string(code.meaning);
  }
  return text;
}

void SetUp(CLI::App& app, Job& job) {
  app.name("benchleaf");
  app.description(
      "Indexes scanned service manuals, and answers where a part is drawn, what a set's parts are,\n"
      "and which sets use a tube.");
  app.require_subcommand(1);
  app.get_formatter()->column_width(32);
  SetUpIndex(app, job);
  SetUpFind(app, job);
  SetUpParts(app, job);
  SetUpTube(app, job);
  SetUpLineup(app, job);
  SetUpGaps(app, job);
  SetUpStock(app, job);
  SetUpReplace(app, job);
  SetUpSets(app, job);
  SetUpPicture(app, job);
  SetUpBinder(app, job);
  SetUpSearchable(app, job);
  SetUpFiles(app, job);
  SetUpExport(app, job);
  SetUpMerge(app, job);
  SetUpCompletion(app, job);
  SetUpWorker(app, job);
  app.set_version_flag("--version", &VersionText, "Tell the versions of the program and of its libraries");
  app.footer(
      "`benchleaf COMMAND --help` tells more of a command.\n\n"
      "Example:\n"
      "  benchleaf index ~/manuals\n"
      "  cd ~/manuals && benchleaf find C112\n\n" +
      ExitCodesText());
}

bool IsCommand(const CLI::App& app, const std::string& word) {
  return !app.get_subcommands([&](const CLI::App* command) { return command->get_name() == word; }).empty();
}

std::string ListOfCommands(const CLI::App& app) {
  std::string list;
  for (const CLI::App* command : app.get_subcommands([](const CLI::App* c) { return !c->get_group().empty(); })) {
    if (!list.empty()) list += ", ";
    list += command->get_name();
  }
  return list;
}

ExitCode Parse(CLI::App& app, const std::vector<std::string>& arguments, const Streams& streams) {
  if (arguments.empty()) {
    Say(streams, "no command was given; the commands are: " + ListOfCommands(app) + "; `benchleaf --help` tells more");
    return ExitCode::kUsage;
  }
  // CLI11 would only say that the word was not expected.
  const bool has_word = !arguments.front().empty() && arguments.front().front() != '-';
  if (has_word && !IsCommand(app, arguments.front())) {
    Say(streams, "no command is called '" + arguments.front() + "'; the commands are: " + ListOfCommands(app));
    return ExitCode::kUsage;
  }
  try {
    // CLI11 takes the arguments last first.
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::Success& success) {  // help was asked for
    app.exit(success, streams.out, streams.err);
    return ExitCode::kOk;
  } catch (const CLI::ParseError& error) {
    Say(streams, error.what());
    const std::vector<CLI::App*> named = app.get_subcommands();
    Say(streams, "`benchleaf " + (named.empty() ? std::string() : named.front()->get_name() + ' ') +
                     "--help` shows what can be said");
    return ExitCode::kUsage;
  }
  return ExitCode::kOk;
}

constexpr const char* kNoMemory =
    "stopped: there is not enough memory; close other programs, or use fewer --workers, and run it again";

// Where memory runs out while something is being put away, no exception gets through: it is told all the same, without
// asking for any. What was committed stays.
[[noreturn]] void EndWithoutMemory() {
  try {
    if (std::current_exception()) throw;
  } catch (const std::bad_alloc&) {
    static constexpr std::string_view kStart = "benchleaf: ";
    for (const std::string_view part : {kStart, std::string_view(kNoMemory), std::string_view("\n")}) {
      if (write(STDERR_FILENO, part.data(), part.size()) < 0) break;
    }
    _exit(static_cast<int>(ExitCode::kCannotRun));
  } catch (...) {
    std::abort();
  }
  std::abort();
}

}  // namespace

ExitCode Run(const std::vector<std::string>& arguments, const Streams& streams) {
  std::set_terminate(EndWithoutMemory);
  try {
    CLI::App app;
    Job job;
    SetUp(app, job);
    const ExitCode parsed = Parse(app, arguments, streams);
    return job ? job(streams) : parsed;
  } catch (const std::bad_alloc&) {
    Say(streams, kNoMemory);
  } catch (const std::exception& error) {
    Say(streams, std::string("stopped by a fault of the program: ") + error.what());
  } catch (...) {
    Say(streams, "stopped by a fault of the program");
  }
  return ExitCode::kCannotRun;
}

}  // namespace benchleaf
