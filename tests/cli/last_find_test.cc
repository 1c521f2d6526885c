#include "cli/last_find.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

class LastFindFile : public testing::Test {
 protected:
  void SetUp() override { fs::remove_all(folder_); }
  void TearDown() override { fs::remove_all(folder_); }

  const LastFind find_{"/library/.benchleaf", "horizontal hold", "QUILLHAVEN 12", "parts list", 200, "0123"};
  const fs::path folder_ = fs::temp_directory_path() / ("benchleaf-last-find-" + std::to_string(getpid()));
};

TEST_F(LastFindFile, IsRecalledAsItWasRemembered) {
  RememberFind(folder_ / "new", find_);
  const auto recalled = RecallFind(folder_ / "new");
  ASSERT_TRUE(recalled) << recalled.error().ToString();
  EXPECT_EQ(*recalled, find_);
  LastFind next = find_;
  next.term = "C1";
  RememberFind(folder_ / "new", next);
  EXPECT_EQ(RecallFind(folder_ / "new")->term, "C1");
}

TEST_F(LastFindFile, ThatIsMissingOrSpoiltIsNoAnswer) {
  EXPECT_FALSE(RecallFind(folder_));
  EXPECT_FALSE(RecallFind({}));
  fs::create_directories(folder_);
  std::ofstream(folder_ / "last-find") << "something else\n";
  EXPECT_FALSE(RecallFind(folder_));
}

TEST_F(LastFindFile, OfAFolderThatCannotBeMadeIsNotRememberedAndNoFault) {
  std::ofstream(folder_) << "a file";
  RememberFind(folder_ / "state", find_);
  EXPECT_FALSE(RecallFind(folder_ / "state"));
}

TEST_F(LastFindFile, WithALineBreakIsNotRemembered) {
  LastFind broken = find_;
  broken.term = "two\nlines";
  RememberFind(folder_, broken);
  EXPECT_FALSE(RecallFind(folder_));
}

}  // namespace
}  // namespace benchleaf
