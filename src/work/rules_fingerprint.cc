#include "work/rules_fingerprint.h"

#include "benchleaf/core/fnv.h"

#include <algorithm>
#include <cstdint>
#include <fstream>
#include <string_view>
#include <system_error>
#include <vector>

namespace benchleaf {
namespace {

// Ends a name or content with its size, so that bytes cannot wander from one to the next unnoticed.
void End(Fnv& hash, std::uint64_t size) {
  hash.Add("/");
  hash.Add(std::to_string(size));
  hash.Add("/");
}

tl::unexpected<Error> Unreadable(const std::filesystem::path& path) {
  return Fail(ErrorCode::kIo, "cannot be read", path.string());
}

Result<void> AddFile(Fnv& hash, const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::vector<char> chunk(1U << 16U);
  std::uint64_t size = 0;
  while (file.read(chunk.data(), static_cast<std::streamsize>(chunk.size())) || file.gcount() > 0) {
    hash.Add({chunk.data(), static_cast<std::size_t>(file.gcount())});
    size += static_cast<std::uint64_t>(file.gcount());
  }
  if (!file.eof()) {
    return Unreadable(path);
  }
  End(hash, size);
  return {};
}

}  // namespace

Result<std::string> RulesFingerprint(const std::filesystem::path& config, const std::filesystem::path& program) {
  std::vector<std::filesystem::path> tables;
  std::error_code error;
  std::filesystem::directory_iterator entry(config, error);
  for (; !error && entry != std::filesystem::directory_iterator(); entry.increment(error)) {
    if (entry->path().extension() == ".tsv") {
      tables.push_back(entry->path());
    }
  }
  if (error) {
    return Unreadable(config);
  }
  std::sort(tables.begin(), tables.end());
  Fnv hash;
  for (const std::filesystem::path& table : tables) {
    const std::string name = table.filename().string();
    hash.Add(name);
    End(hash, name.size());
    if (Result<void> added = AddFile(hash, table); !added) {
      return tl::unexpected(std::move(added.error()));
    }
  }
  if (Result<void> added = AddFile(hash, program); !added) {
    return tl::unexpected(std::move(added.error()));
  }
  return hash.Hex();
}

std::filesystem::path RunningProgram() { return "/proc/self/exe"; }

}  // namespace benchleaf
