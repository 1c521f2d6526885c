#include "cli/places.h"

#include "benchleaf/extract/own_rules.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

void AddConfigOption(CLI::App& command, PlaceOptions& options) {
  command
      .add_option("--config", options.config, "Folder of benchleaf's data files (default: those it was installed with)")
      ->type_name("DIR")
      ->envname("BENCHLEAF_CONFIG");
}

}  // namespace

std::vector<fs::path> PlaceOptions::DatabaseFolders() const {
  if (databases.empty()) return {fs::path(library) / ".benchleaf"};
  return {databases.begin(), databases.end()};
}

fs::path PlaceOptions::ConfigFolder() const {
  return config.empty() ? FindConfigFolder(ProgramPath()) : fs::path(config);
}

void AddPlaceOptions(CLI::App& command, PlaceOptions& options) {
  command.add_option("--db", options.databases, "Folder of the index (default: .benchleaf in the library)")
      ->type_name("DIR")
      ->expected(1);
  AddConfigOption(command, options);
}

void AddIndexPlaceOptions(CLI::App& command, PlaceOptions& options) {
  command.add_option("--library", options.library, "Folder of scans (default: the current folder)")
      ->type_name("DIR")
      ->envname("BENCHLEAF_LIBRARY");
  command
      .add_option("--db", options.databases,
                  "Folder of the index (default: .benchleaf in the library), or remote:HOST:PORT; repeated, all are "
                  "asked as one")
      ->type_name("DIR")
      ->allow_extra_args(false);
  AddConfigOption(command, options);
}

fs::path FindConfigFolder(const fs::path& program) {
  fs::path installed = program.parent_path().parent_path() / "share" / "benchleaf";
  std::error_code ignored;
  if (!program.empty() && fs::is_directory(installed, ignored)) return installed;
  return BENCHLEAF_SOURCE_CONFIG;
}

fs::path ProgramPath() {
  std::error_code failed;
  fs::path program = fs::read_symlink("/proc/self/exe", failed);
  return failed ? fs::path() : program;
}

std::vector<fs::path> TablesNamed(const std::string& name, const PlaceOptions& options) {
  std::vector<fs::path> files = {options.ConfigFolder() / name};
  const fs::path own = fs::path(options.library) / name;
  std::error_code ignored;
  if (fs::exists(own, ignored)) files.push_back(own);
  return files;
}

Result<std::shared_ptr<const Rules>> LoadRules(const PlaceOptions& options) {
  return LoadRules(options.ConfigFolder(), options.library);
}

Result<void> CheckOutsideLibrary(const PlaceOptions& options, const fs::path& out) {
  std::error_code failed;
  const fs::path library = fs::weakly_canonical(options.library, failed);
  const fs::path place = fs::weakly_canonical(fs::absolute(out), failed);
  const auto [end, ignored] = std::mismatch(library.begin(), library.end(), place.begin(), place.end());
  if (failed || end != library.end()) return {};
  return Fail(ErrorCode::kUsage,
              "lies in the library, where it would be read as scans at the next `benchleaf index`; name a place "
              "elsewhere",
              out.string());
}

Result<std::unique_ptr<IndexReader>> OpenIndex(const PlaceOptions& options) {
  auto rules = LoadRules(options);
  if (!rules) return tl::unexpected(rules.error());
  return IndexReader::Open(options.DatabaseFolders(), std::move(*rules));
}

}  // namespace benchleaf
