#include "cli/merge_command.h"

#include "cli/status_line.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/text.h"
#include "benchleaf/store/merge_shards.h"

#include <CLI/CLI.hpp>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>

namespace benchleaf {

namespace {

std::string Megabytes(std::uintmax_t bytes) {
  constexpr std::uintmax_t kMegabyte = 1'000'000;
  return std::to_string((bytes + kMegabyte / 2) / kMegabyte);
}

}  // namespace

void SetUpMerge(CLI::App& app, Job& job) {
  auto options = std::make_shared<MergeOptions>();
  CLI::App* command = app.add_subcommand("merge", "Make one index of all shards of a library");
  command->add_option("--db", options->database, "Folder of the index that is made; must be new or empty")
      ->type_name("DIR")
      ->required();
  command->add_option("SHARD", options->shards, "Folders that `index --shard` has made: all of them, each once")
      ->required();
  command->add_flag("--json", options->json, "Write a summary as one JSON object");
  command->footer(
      "The shards are left as they are. Their index is what `index` without --shard would have made.\n\n"
      "Example:\n"
      "  benchleaf merge --db ~/manuals/.benchleaf ~/manuals/.benchleaf-shards/*");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunMerge(*options, s); }; });
}

ExitCode RunMerge(const MergeOptions& options, const Streams& streams) {
  const std::vector<std::filesystem::path> shards(options.shards.begin(), options.shards.end());
  const std::vector<Error> faults = FaultsOfShards(shards);
  for (const Error& fault : faults) Say(streams, fault.ToString());
  if (!faults.empty()) {
    Say(streams, "nothing is merged");
    return ExitCodeFor(faults.front().code);
  }
  StatusLine line(streams, Talk::kNormal, &std::chrono::steady_clock::now);
  const Result<void> merged = MergeShards(options.database, shards, [&line](std::uintmax_t done, std::uintmax_t all) {
    line.Show("merged " + Megabytes(done) + " of " + Megabytes(all) + " MB", true);
  });
  line.Finish();
  if (!merged) return Stop(streams, merged.error());
  if (options.json) {
    streams.out << Json::Object({{"type", "summary"},
                                 {"command", "merge"},
                                 {"shards", static_cast<int>(shards.size())},
                                 {"database", options.database}})
                       .Dump()
                << '\n';
  }
  Say(streams, "one index of " + Counted(shards.size(), "shard") + " is in '" + options.database + "'");
  return ExitCode::kOk;
}

}  // namespace benchleaf
