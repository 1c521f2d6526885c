#include "benchleaf/library/shard.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

ScannedSet Set(const std::string& name, const std::vector<std::string>& contents) {
  ScannedSet set;
  set.name = name;
  for (const std::string& content : contents) {
    ScanFile file;
    file.path = name + "/" + content + ".pdf";
    file.hash = std::string(64, '0') + content;
    set.manuals.push_back({content, "", {file}});
  }
  return set;
}

TEST(ParseShardPlace, TakesOneOfSoMany) {
  EXPECT_EQ(ParseShardPlace("3/8"), (ShardPlace{3, 8}));
  EXPECT_EQ(ParseShardPlace("1/1"), (ShardPlace{1, 1}));
  EXPECT_EQ(ToString({3, 8}), "3/8");
  for (const char* wrong : {"", "3", "/8", "3/", "0/8", "9/8", "-1/8", "3/8/2", "a/b", "1.5/8", " 1/8", "1/100001"}) {
    const auto place = ParseShardPlace(wrong);
    ASSERT_FALSE(place) << wrong;
    EXPECT_EQ(place.error().code, ErrorCode::kUsage);
  }
}

TEST(ShardOf, GoesByTheContentAlone) {
  const int shard = ShardOf(Set("alder", {"a", "b", "c"}), 1000);
  EXPECT_EQ(ShardOf(Set("another name", {"a", "b", "c"}), 1000), shard);
  EXPECT_EQ(ShardOf(Set("alder", {"c", "a", "b"}), 1000), shard) << "in whatever order the files are listed";
  EXPECT_NE(ShardOf(Set("alder", {"a", "b"}), 1000), shard);
  EXPECT_EQ(ShardOf(Set("alder", {"a", "b", "c"}), 1), 1);
}

TEST(ShardOf, SpreadsSetsEvenly) {
  constexpr int kSets = 4000;
  constexpr int kShards = 8;
  std::map<int, int> sizes;
  for (int i = 0; i < kSets; ++i) {
    ++sizes[ShardOf(Set("set", {std::to_string(i)}), kShards)];
  }
  EXPECT_EQ(sizes.begin()->first, 1);
  EXPECT_EQ(sizes.rbegin()->first, kShards);
  for (const auto& [shard, size] : sizes) {
    EXPECT_NEAR(size, kSets / kShards, 100) << shard;  // five standard deviations
  }
}

TEST(LibraryDigest, ChangesWithWhateverAnIndexWouldShow) {
  const std::vector<ScannedSet> sets = {Set("alder", {"a"}), Set("birch", {"b", "c"})};
  std::set<std::string> digests = {LibraryDigest(sets)};
  const auto expect_other = [&](const char* what, auto change) {
    std::vector<ScannedSet> changed = sets;
    change(changed);
    EXPECT_TRUE(digests.insert(LibraryDigest(changed)).second) << what;
  };
  expect_other("a set less", [](auto& s) { s.pop_back(); });
  expect_other("a set's name", [](auto& s) { s[0].name = "elder"; });
  expect_other("a maker", [](auto& s) { s[0].maker = "Alder"; });
  expect_other("a title", [](auto& s) { s[0].manuals[0].title = "Notes"; });
  expect_other("a content", [](auto& s) { s[0].manuals[0].files[0].hash.back() = 'z'; });
  expect_other("a path", [](auto& s) { s[0].manuals[0].files[0].path += 'x'; });
  expect_other("a volume", [](auto& s) { s[0].manuals[0].files[0].volume = 2; });
  expect_other("a manual in another set", [](auto& s) {
    s[0].manuals.push_back(s[1].manuals.back());
    s[1].manuals.pop_back();
  });
  EXPECT_EQ(LibraryDigest(sets), *digests.find(LibraryDigest(sets)));
}

}  // namespace
}  // namespace benchleaf
