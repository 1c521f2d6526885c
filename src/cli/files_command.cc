#include "cli/files_command.h"

#include "cli/talk.h"

#include "benchleaf/library/library.h"
#include "benchleaf/raster/file_beside.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/library_rows.h"
#include "benchleaf/report/text.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <system_error>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr const char* kTableName = "library.csv";

Result<void> WriteTable(const FilesOptions& options, const std::string& csv) {
  const fs::path table = fs::path(options.library) / kTableName;
  std::error_code ignored;
  if (fs::exists(fs::symlink_status(table, ignored))) {
    return Fail(ErrorCode::kIo, "is there already and is left alone; without --write the rows are only shown",
                table.string());
  }
  FileBeside file(table);
  if (auto written = file.Write(csv); !written) return written;
  return file.TakeTargetsPlace();
}

}  // namespace

void SetUpFiles(CLI::App& app, Job& job) {
  auto options = std::make_shared<FilesOptions>();
  CLI::App* command =
      app.add_subcommand("files", "List a library's files as the beginning of its library.csv, reading no page");
  command->add_option("LIBRARY", options->library, "Folder of scans: a folder or a file in it for each set")
      ->required();
  CLI::Option* write =
      command->add_flag("--write", options->write, "Write the rows to library.csv in the library, unless there is one");
  command->add_flag("--json", options->json, "One JSON object a line")->excludes(write);
  command->footer(
      "library.csv tells maker, model, volume and title where names of files do not. As written, it says what is so\n"
      "without it: fill in and mend what you know better, then index again.\n\n"
      "Example:\n"
      "  benchleaf files ~/manuals\n"
      "  benchleaf files ~/manuals --write");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunFiles(*options, s); }; });
}

ExitCode RunFiles(const FilesOptions& options, const Streams& streams) {
  const auto library = ScanLibrary(options.library);
  if (!library) return Stop(streams, library.error());
  for (const Error& problem : library->problems) Say(streams, problem.ToString());
  const std::vector<LibraryRow> rows = LibraryRows(*library);
  if (options.write) {
    if (const auto written = WriteTable(options, LibraryCsv(rows)); !written) return Stop(streams, written.error());
    Say(streams,
        Counted(rows.size(), "row") + " written to '" + (fs::path(options.library) / kTableName).string() + "'");
  } else if (options.json) {
    streams.out << LibraryJson(rows)
                << Json::Object(
                       {{"type", "summary"}, {"command", "files"}, {"rows", static_cast<std::int64_t>(rows.size())}})
                       .Dump()
                << '\n';
  } else {
    WriteCsv(streams, LibraryCsv(rows));
  }
  return library->problems.empty() ? ExitCode::kOk : ExitCode::kPartly;
}

}  // namespace benchleaf
