// Many shards of one library made into one index.

#ifndef BENCHLEAF_STORE_MERGE_SHARDS_H_
#define BENCHLEAF_STORE_MERGE_SHARDS_H_

#include "benchleaf/core/result.h"
#include "benchleaf/store/shard_manifest.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

namespace benchleaf {

// A folder's name while what is to lie there is not whole.
std::filesystem::path UnfinishedName(const std::filesystem::path& folder);

// The manifest of the index in the folder: nothing when there is no folder, and when the index is no whole shard. Fails
// with kForeign for a folder that holds anything but an index of this version, and with kIo.
Result<std::optional<ShardManifest>> ReadManifest(const std::filesystem::path& folder);

// Why the folders cannot be merged, each fault with the folder that has it; none when they are all the shards of one
// library, each once and whole, made by one version of the program with the same rules.
std::vector<Error> FaultsOfShards(const std::vector<std::filesystem::path>& shards);

// Told how many bytes of the shards are merged, and how many there are: at the beginning, and whenever one of an
// index's few tables is.
using MergeObserver = std::function<void(std::uintmax_t merged, std::uintmax_t all)>;

// Makes one index in `folder`, which must be missing or empty, by Xapian's own compaction; the shards stay as they are.
// It is made under its unfinished name, which a killed merge leaves behind and the next one clears away, and renamed
// when whole. Links need no work: none leads out of a manual, and no manual is in two shards. Fails with kForeign when
// the folder holds something, and with kIo. REQUIRES: FaultsOfShards(shards).empty()
Result<void> MergeShards(const std::filesystem::path& folder, const std::vector<std::filesystem::path>& shards,
                         const MergeObserver& observe);

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_MERGE_SHARDS_H_
