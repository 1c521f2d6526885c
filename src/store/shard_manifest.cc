#include "store/shard_manifest.h"

#include "store/fields.h"

#include <cstdint>
#include <limits>

namespace benchleaf::store {

std::string EncodeManifest(const ShardManifest& manifest) {
  FieldWriter fields;
  fields.Number(static_cast<std::uint64_t>(manifest.number));
  fields.Number(static_cast<std::uint64_t>(manifest.count));
  fields.Text(manifest.library);
  fields.Text(manifest.reading);
  fields.Text(manifest.rules);
  return fields.Take();
}

ShardManifest DecodeManifest(std::string_view bytes) {
  constexpr std::uint64_t kMost = std::numeric_limits<int>::max();
  FieldReader fields(bytes);
  ShardManifest manifest;
  manifest.number = static_cast<int>(fields.Number(kMost));
  manifest.count = static_cast<int>(fields.Number(kMost));
  manifest.library = fields.Text();
  manifest.reading = fields.Text();
  manifest.rules = fields.Text();
  return manifest;
}

}  // namespace benchleaf::store
