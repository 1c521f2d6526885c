// A library cut into shards, each for a machine of its own: which sets belong to which.

#ifndef BENCHLEAF_LIBRARY_SHARD_H_
#define BENCHLEAF_LIBRARY_SHARD_H_

#include "benchleaf/core/result.h"
#include "benchleaf/library/library.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// One of so many shards.
struct ShardPlace {
  int number = 1;  // counts from 1
  int count = 1;

  friend bool operator==(const ShardPlace&, const ShardPlace&) = default;
};

// "3/8". Fails with kUsage, saying what would be understood; there are 100,000 shards at most.
Result<ShardPlace> ParseShardPlace(std::string_view text);
std::string ToString(const ShardPlace& place);

// The shard that a set belongs to, 1 to `count`: told by the content of all its files together, whatever they are
// called and in whatever order they are listed. All manuals of a set are in one shard, and so are two sets of the same
// content.
int ShardOf(const ScannedSet& set, int count);

// What a library holds, as 64 hexadecimal digits: equal for two scans of it exactly when these found the same sets,
// manuals, names, files and contents.
std::string LibraryDigest(const std::vector<ScannedSet>& sets);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_SHARD_H_
