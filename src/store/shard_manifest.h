// The manifest as it lies in the metadata of a shard's database.

#ifndef BENCHLEAF_SRC_STORE_SHARD_MANIFEST_H_
#define BENCHLEAF_SRC_STORE_SHARD_MANIFEST_H_

#include "benchleaf/store/shard_manifest.h"

#include <string>
#include <string_view>

namespace benchleaf::store {

std::string EncodeManifest(const ShardManifest& manifest);
// Throws Xapian::DatabaseCorruptError for bytes that are none.
ShardManifest DecodeManifest(std::string_view bytes);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_SRC_STORE_SHARD_MANIFEST_H_
