// What a whole shard says of itself, so that only shards that belong together are merged.

#ifndef BENCHLEAF_STORE_SHARD_MANIFEST_H_
#define BENCHLEAF_STORE_SHARD_MANIFEST_H_

#include <string>

namespace benchleaf {

struct ShardManifest {
  int number = 1;       // which shard, from 1
  int count = 1;        // of how many
  std::string library;  // digest of the whole library as it was scanned
  std::string reading;  // names the reader and its method
  std::string rules;    // names the rules by which pages were searched, and with them the program

  friend bool operator==(const ShardManifest&, const ShardManifest&) = default;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_SHARD_MANIFEST_H_
