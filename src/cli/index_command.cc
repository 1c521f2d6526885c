#include "cli/index_command.h"

#include "cli/interrupt.h"
#include "cli/progress.h"
#include "cli/shell_words.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/text.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <thread>

namespace benchleaf {
namespace {

constexpr int kMostWorkers = 256;

std::string SummaryJson(const IndexSummary& summary, const Progress& progress) {
  Json problems = Json::Array();
  for (const Error& problem : summary.problems) {
    problems.Add(Json::Object({{"file", problem.source},
                               {"page", problem.page},
                               {"code", std::string(Name(problem.code))},
                               {"reason", problem.message}}));
  }
  return Json::Object({{"type", "summary"},
                       {"command", "index"},
                       {"sets", summary.sets},
                       {"manuals", summary.manuals},
                       {"pages", summary.pages},
                       {"pages_read", summary.pages_read},
                       {"pages_known", summary.pages_known},
                       {"pages_failed", progress.pages_failed()},
                       {"manuals_removed", summary.manuals_removed},
                       {"cancelled", summary.cancelled},
                       {"problems", problems}})
             .Dump() +
         "\n";
}

std::string SummaryWords(const IndexSummary& summary) {
  const auto counted = [](int count, const char* noun) { return Counted(static_cast<std::size_t>(count), noun); };
  std::string words = "the index holds " + counted(summary.pages, "page") + " of " +
                      counted(summary.manuals, "manual") + " of " + counted(summary.sets, "set") + "; " +
                      counted(summary.pages_read, "page") + " read now, " + std::to_string(summary.pages_known) +
                      " known before";
  if (summary.manuals_removed > 0) {
    words += ", " + counted(summary.manuals_removed, "manual") + " no longer in the library removed";
  }
  if (!summary.problems.empty()) {
    words += "; " + Counted(summary.problems.size(), "problem") + " named above";
  }
  return words;
}

// What an interrupted run leaves for the next one.
std::string KeptWords(const IndexSummary& summary) {
  if (summary.pages == 0) return "no manual was finished yet, so the same command begins again";
  return "the manuals finished so far are in the index, " + Counted(static_cast<std::size_t>(summary.pages), "page") +
         " in all, and the same command goes on with the rest";
}

// The command that goes on with the work, to be pasted into a shell.
std::string CommandAgain(const IndexCommandOptions& options) {
  std::string command = "benchleaf index " + Quoted(options.places.library);
  const auto add = [&](const char* name, const std::string& value) {
    if (!value.empty()) command += std::string(" ") + name + ' ' + Quoted(value);
  };
  for (const std::string& database : options.places.databases) add("--db", database);
  add("--config", options.places.config);
  add("--shard", options.shard);
  return command;
}

}  // namespace

void SetUpIndex(CLI::App& app, Job& job) {
  auto options = std::make_shared<IndexCommandOptions>();
  options->workers = static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, 64U));
  CLI::App* command = app.add_subcommand("index", "Read a library of scans and bring its index up to date");
  command->add_option("LIBRARY", options->places.library, "Folder of scans: a folder or a file in it for each set")
      ->required();
  command->add_option("--workers", options->workers, "Pages read at the same time (default: one for each core)")
      ->type_name("N")
      ->check(CLI::Range(1, kMostWorkers));
  command
      ->add_option("--shard", options->shard,
                   "Only the sets of this shard, as 3/8: `merge` makes one index of all eight\n"
                   "(default of --db then: .benchleaf-shards/3-of-8 in the library)")
      ->type_name("I/N");
  command->add_flag("--read-again", options->read_again, "Read every page again, also those that are in the index");
  AddTalkOptions(*command, options->talk);
  command->add_flag("--json", options->json, "Write a summary as one JSON object");
  AddPlaceOptions(*command, options->places);
  command->footer(
      "A run that was stopped goes on where it was when it is started again.\n\n"
      "Example:\n"
      "  benchleaf index ~/manuals\n"
      "  benchleaf index ~/manuals --shard 3/8");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunIndex(*options, s); }; });
}

ExitCode RunIndex(const IndexCommandOptions& options, const Streams& streams) {
  IndexOptions index;
  index.library = options.places.library;
  index.database = options.places.DatabaseFolders().front();
  index.config = options.places.ConfigFolder();
  if (!options.shard.empty()) {
    const auto shard = ParseShardPlace(options.shard);
    if (!shard) return Stop(streams, shard.error());
    index.shard = *shard;
    if (options.places.databases.empty()) {
      index.database = std::filesystem::path(options.places.library) / ".benchleaf-shards" /
                       (std::to_string(shard->number) + "-of-" + std::to_string(shard->count));
    }
  }
  index.program = ProgramPath();
  index.workers = options.workers;
  index.read_again = options.read_again;

  Progress progress(streams, options.talk.talk());
  const Interrupt interrupt;
  const auto summary = IndexLibrary(index, progress, interrupt.flag());
  progress.Finish();
  if (!summary) return Stop(streams, summary.error());
  if (options.json) streams.out << SummaryJson(*summary, progress);
  if (summary->cancelled) {
    Say(streams, "stopped; " + KeptWords(*summary) + ": " + CommandAgain(options));
    return ExitCode::kInterrupted;
  }
  if (!options.talk.quiet) Say(streams, SummaryWords(*summary));
  return summary->problems.empty() && progress.pages_failed() == 0 ? ExitCode::kOk : ExitCode::kPartly;
}

}  // namespace benchleaf
