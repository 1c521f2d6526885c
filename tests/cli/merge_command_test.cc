#include "cli/merge_command.h"

#include "store/test_index.h"

#include "benchleaf/store/merge_shards.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdint>
#include <sstream>
#include <vector>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

// One shard that is a whole library.
class MergeCommand : public IndexTest {
 protected:
  void SetUp() override {
    const std::unique_ptr<IndexWriter> writer = Writer();
    ASSERT_TRUE(writer->ReplaceManual(MakeManual()));
    ASSERT_TRUE(writer->SetManifest(ShardManifest{}));
  }

  // What the run says to a person.
  std::string Merge(bool on_a_terminal) const {
    std::ostringstream out;
    std::ostringstream err;
    const Streams streams{.out = out, .err = err, .err_is_terminal = on_a_terminal};
    EXPECT_EQ(RunMerge({.database = (root() / "merged").string(), .shards = {folder().string()}}, streams),
              ExitCode::kOk);
    EXPECT_EQ(out.str(), "");
    return err.str();
  }
};

TEST_F(MergeCommand, ShowsOnATerminalHowFarItIs) {
  EXPECT_THAT(Merge(true),
              AllOf(HasSubstr("\rmerged 0 of "), HasSubstr(" MB\x1b[K"), HasSubstr("one index of 1 shard")));
}

TEST_F(MergeCommand, SaysElsewhereOnlyThatItIsDone) {
  EXPECT_THAT(Merge(false), AllOf(Not(HasSubstr("merged ")), HasSubstr("one index of 1 shard is in ")));
}

TEST_F(MergeCommand, TellsOfAllBytesInTheEnd) {
  std::vector<std::uintmax_t> told;
  std::uintmax_t last = 0;
  ASSERT_TRUE(MergeShards(root() / "merged", {folder()}, [&](std::uintmax_t merged, std::uintmax_t all) {
    told.push_back(merged);
    last = all;
  }));
  ASSERT_GE(told.size(), 2U);
  EXPECT_EQ(told.front(), 0U);
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
  EXPECT_EQ(told.back(), last);
  EXPECT_GT(last, 0U);
}

}  // namespace
}  // namespace benchleaf
