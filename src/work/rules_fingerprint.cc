#include "work/rules_fingerprint.h"

#include "benchleaf/core/fnv.h"
#include "benchleaf/extract/own_rules.h"

#include <algorithm>
#include <system_error>
#include <vector>

namespace benchleaf {

Result<std::string> RulesFingerprint(const std::filesystem::path& config, const std::filesystem::path& own,
                                     const std::filesystem::path& program) {
  std::vector<std::filesystem::path> tables;
  std::error_code error;
  std::filesystem::directory_iterator entry(config, error);
  for (; !error && entry != std::filesystem::directory_iterator(); entry.increment(error)) {
    if (entry->path().extension() == ".tsv") {
      tables.push_back(entry->path());
    }
  }
  if (error) {
    return Fail(ErrorCode::kIo, "cannot be read", config.string());
  }
  std::sort(tables.begin(), tables.end());
  for (const std::string& name : RuleTableNames()) {
    std::error_code ignored;
    if (std::filesystem::exists(own / name, ignored)) {
      tables.push_back(own / name);
    }
  }
  Fnv hash;
  for (const std::filesystem::path& table : tables) {
    hash.AddWhole(table.filename().string());
    if (Result<void> added = hash.AddFile(table); !added) {
      return tl::unexpected(std::move(added.error()));
    }
  }
  if (Result<void> added = hash.AddFile(program); !added) {
    return tl::unexpected(std::move(added.error()));
  }
  return hash.Hex();
}

std::filesystem::path RunningProgram() { return "/proc/self/exe"; }

}  // namespace benchleaf
