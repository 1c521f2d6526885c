#include "benchleaf/store/merge_shards.h"

#include "store/folder.h"
#include "store/schema.h"
#include "store/shard_manifest.h"
#include "store/stored.h"
#include "store/xapian_errors.h"

#include <xapian.h>

#include <cstddef>
#include <map>
#include <string>
#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr const char* kUnfinished = ".unfinished";

// "shards/3/" means "shards/3".
fs::path WithoutSlash(const fs::path& folder) {
  return folder.has_filename() || !folder.has_parent_path() ? folder : folder.parent_path();
}

// A folder's manifest, or why it is no shard to be merged.
Result<ShardManifest> WholeShard(const fs::path& folder) {
  constexpr const char* kFinish = "it is not whole: run its `benchleaf index` again until it ends";
  std::error_code ignored;
  if (WithoutSlash(folder).extension() == kUnfinished) {
    return Fail(ErrorCode::kBusy, kFinish, folder.string());
  }
  if (!fs::exists(folder, ignored)) {
    const bool begun = fs::exists(UnfinishedName(folder), ignored);
    return Fail(ErrorCode::kMissing, begun ? kFinish : "there is no shard here", folder.string());
  }
  Result<std::optional<ShardManifest>> manifest = ReadManifest(folder);
  if (!manifest) return tl::unexpected<Error>(std::move(manifest.error()));
  if (!*manifest) {
    return Fail(ErrorCode::kForeign, "this is no shard: make one with `benchleaf index LIBRARY --shard I/N`",
                folder.string());
  }
  return **std::move(manifest);
}

std::string Named(const ShardManifest& manifest, const fs::path& folder) {
  return "shard " + std::to_string(manifest.number) + "/" + std::to_string(manifest.count) + " in " + folder.string();
}

// How a shard does not belong to the first one; empty when it does.
std::string Difference(const ShardManifest& own, const ShardManifest& first) {
  if (own.count != first.count) return "is one of " + std::to_string(own.count) + " shards";
  if (own.library != first.library) return "is of another library, or of another state of it";
  if (own.reading != first.reading) return "was read by another version of the reader";
  if (own.rules != first.rules) return "was searched by other rules, or by another version of the program";
  return {};
}

using Place = std::pair<ShardManifest, fs::path>;

void AddMissing(const std::map<int, Place>& found, std::vector<Error>& faults) {
  const auto& [first, folder] = found.begin()->second;
  constexpr std::size_t kMostNamed = 20;
  std::string missing;
  std::size_t count = 0;
  for (int number = 1; number <= first.count; ++number) {
    if (found.contains(number)) continue;
    if (++count <= kMostNamed) missing += (missing.empty() ? "" : ", ") + std::to_string(number);
  }
  if (count == 0) return;
  if (count > kMostNamed) missing += " and " + std::to_string(count - kMostNamed) + " more";
  faults.push_back(
      {ErrorCode::kMissing, "of " + std::to_string(first.count) + " shards these are not named: " + missing, "", 0});
}

// Manuals that two shards hold, as after a file that could not be read has moved its set to another shard.
void AddHeldTwice(const std::map<int, Place>& found, std::vector<Error>& faults) {
  std::map<std::pair<std::string, std::string>, fs::path> holders;
  for (const auto& [number, place] : found) {
    try {
      for (const auto& name : store::ManualNames(Xapian::Database(place.second.string()))) {
        const auto [holder, fresh] = holders.try_emplace(name, place.second);
        if (fresh) continue;
        faults.push_back({ErrorCode::kForeign,
                          "it holds '" + name.second + "' of '" + name.first + "', as does " + holder->second.string() +
                              ": delete both and index these shards again",
                          place.second.string(), 0});
      }
    } catch (const Xapian::Error& error) {
      faults.push_back(store::FromXapian(error, place.second));
    }
  }
}

// Tells of Xapian's compaction, which merges one table of all shards after the other.
class ObservedCompactor : public Xapian::Compactor {
 public:
  ObservedCompactor(const std::vector<fs::path>& shards, const MergeObserver& observe)
      : shards_(shards), observe_(observe) {
    for (const fs::path& shard : shards_) {
      std::error_code ignored;
      for (const fs::directory_entry& file : fs::directory_iterator(shard, ignored)) all_ += BytesOf(file.path());
    }
    observe_(merged_, all_);
  }

  // Asked with an empty status when a table is begun, with what became of it at its end.
  void set_status(const std::string& table, const std::string& status) override {
    if (status.empty()) return;
    for (const fs::path& shard : shards_) merged_ += BytesOf(shard / (table + kTableFile));
    observe_(merged_, all_);
  }

 private:
  static constexpr const char* kTableFile = ".glass";

  // Of a table; 0 for other files, and one that is not there: an index has only the tables that it needs.
  static std::uintmax_t BytesOf(const fs::path& file) {
    std::error_code code;
    const std::uintmax_t bytes = file.extension() == kTableFile ? fs::file_size(file, code) : 0;
    return code ? 0 : bytes;
  }

  const std::vector<fs::path>& shards_;
  const MergeObserver& observe_;
  std::uintmax_t merged_ = 0;
  std::uintmax_t all_ = 0;
};

}  // namespace

fs::path UnfinishedName(const fs::path& folder) { return WithoutSlash(folder).string() + kUnfinished; }

Result<std::optional<ShardManifest>> ReadManifest(const fs::path& folder) {
  const Result<store::FolderState> state = store::LookAt(folder);
  if (!state) return tl::unexpected<Error>(state.error());
  if (*state == store::FolderState::kNothing) return std::nullopt;
  if (*state != store::FolderState::kDatabase) {
    return Fail(ErrorCode::kForeign, "the folder holds no index, and is left as it is", folder.string());
  }
  try {
    const Xapian::Database database(folder.string());
    const Result<store::SchemaState> schema = store::CheckSchema(database, folder);
    if (!schema) return tl::unexpected<Error>(schema.error());
    const std::string bytes = database.get_metadata(store::kShardKey);
    return bytes.empty() ? std::nullopt : std::optional(store::DecodeManifest(bytes));
  } catch (const Xapian::Error& error) {
    return tl::unexpected<Error>(store::FromXapian(error, folder));
  }
}

std::vector<Error> FaultsOfShards(const std::vector<fs::path>& shards) {
  std::vector<Error> faults;
  std::map<int, Place> found;
  std::optional<Place> first;
  for (const fs::path& folder : shards) {
    const Result<ShardManifest> manifest = WholeShard(folder);
    if (!manifest) {
      faults.push_back(manifest.error());
      continue;
    }
    if (!first) first = {*manifest, folder};
    if (const std::string difference = Difference(*manifest, first->first); !difference.empty()) {
      faults.push_back(
          {ErrorCode::kForeign, difference + ", other than " + Named(first->first, first->second), folder.string(), 0});
      continue;
    }
    const auto [place, fresh] = found.try_emplace(manifest->number, *manifest, folder);
    if (!fresh) {
      faults.push_back({ErrorCode::kForeign,
                        "this is shard " + std::to_string(manifest->number) + " once more, as " +
                            place->second.second.string() + " is; name each once",
                        folder.string(), 0});
    }
  }
  // Of shards with faults it would only be said again that they are missing.
  if (faults.empty() && !found.empty()) AddMissing(found, faults);
  if (faults.empty()) AddHeldTwice(found, faults);
  return faults;
}

Result<void> MergeShards(const fs::path& folder, const std::vector<fs::path>& shards, const MergeObserver& observe) {
  const fs::path unfinished = UnfinishedName(folder);
  for (const fs::path& place : {folder, unfinished}) {
    const Result<store::FolderState> state = store::LookAt(place);
    if (!state) return tl::unexpected<Error>(state.error());
    const bool leftover = place == unfinished && *state != store::FolderState::kOther;
    if (*state != store::FolderState::kNothing && !leftover) {
      return Fail(ErrorCode::kForeign, "something lies here already; name a new folder, or delete this one first",
                  place.string());
    }
  }
  std::error_code code;
  fs::remove_all(unfinished, code);
  if (!code && folder.has_parent_path()) fs::create_directories(folder.parent_path(), code);
  if (code) return Fail(ErrorCode::kIo, "the folder cannot be made: " + code.message(), unfinished.string());
  try {
    Xapian::Database all;
    for (const fs::path& shard : shards) all.add_database(Xapian::Database(shard.string()));
    ObservedCompactor compactor(shards, observe);
    all.compact(unfinished.string(), 0, 0, compactor);
    Xapian::WritableDatabase merged(unfinished.string(), Xapian::DB_OPEN);
    merged.set_metadata(store::kShardKey, "");
    merged.commit();
  } catch (const Xapian::Error& error) {
    return tl::unexpected<Error>(store::FromXapian(error, unfinished));
  }
  fs::rename(unfinished, WithoutSlash(folder), code);
  if (code) return Fail(ErrorCode::kIo, "the index cannot be given its name: " + code.message(), folder.string());
  return {};
}

}  // namespace benchleaf
