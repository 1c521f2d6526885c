#include "work/shard_run.h"

#include "benchleaf/store/merge_shards.h"

#include <system_error>

namespace benchleaf {

namespace fs = std::filesystem;

void ShardRun::TakeSets(ScannedLibrary& library) {
  library_ = LibraryDigest(library.sets);
  std::erase_if(library.sets, [&](const ScannedSet& set) {
    const bool elsewhere = ShardOf(set, place_.count) != place_.number;
    for (const ScannedManual& manual : set.manuals) {
      if (elsewhere) elsewhere_.emplace(set.name, manual.name);
    }
    return elsewhere;
  });
}

bool ShardRun::IsElsewhere(const std::string& set, const std::string& manual) const {
  return elsewhere_.contains({set, manual});
}

Result<fs::path> ShardRun::Begin() const {
  const fs::path unfinished = UnfinishedName(database_);
  std::error_code ignored;
  if (!fs::exists(database_, ignored)) {
    return unfinished;
  }
  const Result<std::optional<ShardManifest>> manifest = ReadManifest(database_);
  if (!manifest) {
    return tl::unexpected(manifest.error());
  }
  if (!*manifest || (*manifest)->number != place_.number || (*manifest)->count != place_.count) {
    return Fail(
        ErrorCode::kForeign,
        "the folder is not that of shard " + ToString(place_) + ", and is left as it is; name another with --db",
        database_.string());
  }
  if (fs::exists(unfinished, ignored)) {
    return Fail(ErrorCode::kForeign, "this is there beside " + database_.string() + ": delete the older of the two",
                unfinished.string());
  }
  std::error_code error;
  fs::rename(database_, unfinished, error);
  if (error) {
    return Fail(ErrorCode::kIo, "the shard cannot be renamed: " + error.message(), database_.string());
  }
  return unfinished;
}

Result<void> ShardRun::Finish(std::unique_ptr<IndexWriter> writer, const std::string& reading,
                              const std::string& rules) const {
  const ShardManifest manifest{place_.number, place_.count, library_, reading, rules};
  if (Result<void> set = writer->SetManifest(manifest); !set) {
    return set;
  }
  writer.reset();
  std::error_code error;
  fs::rename(UnfinishedName(database_), database_, error);
  if (error) {
    return Fail(ErrorCode::kIo, "the whole shard cannot be given its name: " + error.message(), database_.string());
  }
  return {};
}

}  // namespace benchleaf
