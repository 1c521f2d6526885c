#include "benchleaf/library/shard.h"

#include "library/content_hash.h"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <system_error>

namespace benchleaf {
namespace {

constexpr int kMostShards = 100000;

// 0 for what is no number.
int Number(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() ? number : 0;
}

// Takes texts one after the other, each with its length, so that none can wander from one to the next.
class TextDigest {
 public:
  void Add(std::string_view text) {
    AddBytes(std::to_string(text.size()) + ":");
    AddBytes(text);
  }
  void Add(std::size_t number) { AddBytes(std::to_string(number) + ";"); }
  std::string Take() { return hash_.Take(); }

 private:
  void AddBytes(std::string_view text) {
    const std::vector<std::uint8_t> bytes(text.begin(), text.end());
    hash_.Add(bytes);
  }

  ContentHash hash_;
};

}  // namespace

Result<ShardPlace> ParseShardPlace(std::string_view text) {
  const std::size_t slash = std::min(text.find('/'), text.size());
  const int number = Number(text.substr(0, slash));
  const int count = slash < text.size() ? Number(text.substr(slash + 1)) : 0;
  if (number < 1 || number > count || count > kMostShards) {
    return Fail(ErrorCode::kUsage,
                "'" + std::string(text) + "' is no shard: write 1/8 for the first of eight, up to 8/8");
  }
  return ShardPlace{number, count};
}

std::string ToString(const ShardPlace& place) {
  return std::to_string(place.number) + "/" + std::to_string(place.count);
}

int ShardOf(const ScannedSet& set, int count) {
  std::vector<std::string_view> contents;
  for (const ScannedManual& manual : set.manuals) {
    for (const ScanFile& file : manual.files) {
      contents.push_back(file.hash);
    }
  }
  std::sort(contents.begin(), contents.end());
  TextDigest digest;
  for (const std::string_view content : contents) {
    digest.Add(content);
  }
  constexpr std::size_t kDigits = 15;  // 60 bits
  const std::string hex = digest.Take().substr(0, kDigits);
  std::uint64_t number = 0;
  std::from_chars(hex.data(), hex.data() + hex.size(), number, 16);
  return static_cast<int>(number % static_cast<std::uint64_t>(count)) + 1;
}

std::string LibraryDigest(const std::vector<ScannedSet>& sets) {
  TextDigest digest;
  digest.Add(sets.size());
  for (const ScannedSet& set : sets) {
    digest.Add(set.name);
    digest.Add(set.maker);
    digest.Add(set.model);
    digest.Add(set.manuals.size());
    for (const ScannedManual& manual : set.manuals) {
      digest.Add(manual.name);
      digest.Add(manual.title);
      digest.Add(manual.files.size());
      for (const ScanFile& file : manual.files) {
        digest.Add(file.path);
        digest.Add(file.hash);
        digest.Add(static_cast<std::size_t>(file.volume));
      }
    }
  }
  return digest.Take();
}

}  // namespace benchleaf
