#include "cli/output_options.h"

#include <CLI/CLI.hpp>

#include <system_error>

namespace benchleaf {

namespace fs = std::filesystem;

void AddOutputOptions(CLI::App& command, const std::string& about_out, OutputOptions& options) {
  command.add_option("-o,--out", options.out, about_out)->type_name("FILE");
  command.add_flag("--force", options.force, "Write over files that are there");
  AddTalkOptions(command, options.talk);
  command.add_flag("--json", options.json, "One JSON object a line");
}

Result<void> CheckMayWrite(const OutputOptions& options, const std::vector<fs::path>& files) {
  if (options.force) return {};
  for (const fs::path& file : files) {
    std::error_code ignored;
    if (fs::exists(fs::symlink_status(file, ignored))) {
      return Fail(ErrorCode::kIo, "is there already; --force writes over it, -o gives another name", file.string());
    }
  }
  return {};
}

}  // namespace benchleaf
