#include "cli/export_command.h"

#include "cli/talk.h"

#include "benchleaf/record/codec.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace benchleaf {

void SetUpExport(CLI::App& app, Job& job) {
  auto options = std::make_shared<ExportOptions>();
  CLI::App* command = app.add_subcommand("export", "Write everything in the index as JSON Lines");
  command->add_flag("--json")->description("JSON Lines, which is what export always writes");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf export > library.jsonl");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunExport(*options, s); }; });
}

ExitCode RunExport(const ExportOptions& options, const Streams& streams) {
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto written = (*index)->ForEachManual([&](const ManualRecord& manual) {
    streams.out << ExportLines(manual);
    return streams.out.good();  // a full disk ends the work at once
  });
  if (!written) return Stop(streams, written.error());
  return ExitCode::kOk;
}

}  // namespace benchleaf
