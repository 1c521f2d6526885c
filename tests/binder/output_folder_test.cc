#include "binder/output_folder.h"

#include "binder/unfinished_folder.h"

#include <gmock/gmock.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

class OutputFolderTest : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("benchleaf-out-" + std::to_string(getpid()) + "-" +
                                           testing::UnitTest::GetInstance()->current_test_info()->name());
    fs::remove_all(folder_);
    fs::create_directories(folder_);
    out_ = folder_ / "binder";
  }
  void TearDown() override { fs::remove_all(folder_); }

  // Writes a binder of one page with that text.
  Result<void> WriteOne(const std::string& text) const {
    auto folder = OutputFolder::Begin(out_);
    if (!folder) return tl::unexpected(folder.error());
    auto written = (*folder)->Write("index.html", text);
    return written ? (*folder)->TakePlace() : written;
  }
  std::string Index() const {
    std::ifstream stream(out_ / "index.html");
    std::string line;
    std::getline(stream, line);
    return line;
  }
  std::size_t Count() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

  fs::path folder_;
  fs::path out_;
};

TEST_F(OutputFolderTest, ReplacesABinderOfOursWhole) {
  ASSERT_TRUE(WriteOne("first"));
  ASSERT_TRUE(WriteOne("second"));
  EXPECT_EQ(Index(), "second");
  EXPECT_EQ(Count(), 1U) << "nothing is left beside it";
}

TEST_F(OutputFolderTest, TakesAnEmptyFolder) {
  fs::create_directories(out_);
  EXPECT_TRUE(WriteOne("text"));
  EXPECT_EQ(Index(), "text");
}

TEST_F(OutputFolderTest, LeavesAnythingElseAlone) {
  struct Case {
    const char* why;
    const char* file;
    bool binder_first;
    const char* said;
  };
  for (const Case& c : {Case{"someone's folder", "letters.txt", false, "holds something else"},
                        Case{"a page of someone else", "index.html", false, "holds something else"},
                        Case{"notes put into a binder", "notes.txt", true, "notes.txt"}}) {
    fs::remove_all(out_);
    if (c.binder_first) {
      ASSERT_TRUE(WriteOne("text")) << c.why;
    }
    fs::create_directories(out_);
    std::ofstream(out_ / c.file) << "mine";
    const auto refused = WriteOne("other");
    ASSERT_FALSE(refused) << c.why;
    EXPECT_EQ(refused.error().code, ErrorCode::kForeign) << c.why;
    EXPECT_THAT(refused.error().message, testing::HasSubstr(c.said)) << c.why;
    EXPECT_EQ(fs::file_size(out_ / c.file), 4U) << c.why;
  }
  fs::remove_all(out_);
  std::ofstream(out_) << "a file";
  EXPECT_FALSE(WriteOne("other"));
}

TEST_F(OutputFolderTest, NothingStaysOfAFolderThatIsGivenUp) {
  {
    const auto folder = OutputFolder::Begin(out_);
    ASSERT_TRUE(folder);
    ASSERT_TRUE((*folder)->Write("sets/one/index.html", "half"));
    EXPECT_FALSE(fs::exists(out_));
  }
  EXPECT_EQ(Count(), 0U);
}

TEST_F(OutputFolderTest, WhatAKilledRunLeftIsRemovedByTheNext) {
  ASSERT_TRUE(WriteOne("first"));
  const pid_t child = fork();
  if (child == 0) {
    const auto folder = OutputFolder::Begin(out_);
    if (!folder || !(*folder)->Write("sets/one/index.html", "half")) _exit(1);
    kill(getpid(), SIGKILL);
  }
  int status = 0;
  waitpid(child, &status, 0);
  ASSERT_TRUE(WIFSIGNALED(status));
  ASSERT_TRUE(fs::exists(PartOf(out_, child))) << "nobody was there to remove it";
  EXPECT_EQ(Index(), "first");
  ASSERT_TRUE(WriteOne("second"));
  EXPECT_EQ(Index(), "second");
  EXPECT_EQ(Count(), 1U);
}

TEST_F(OutputFolderTest, AnOldBinderHalfRemovedIsRemovedByTheNextRun) {
  // As a run leaves it that is killed just behind the exchange.
  fs::create_directories(PartOf(out_, 77) / "sets" / "one");
  MarkUnfinished(PartOf(out_, 77));
  ASSERT_TRUE(WriteOne("text"));
  EXPECT_EQ(Count(), 1U);
  EXPECT_FALSE(fs::exists(out_ / kUnfinished));
}

TEST_F(OutputFolderTest, ARunThatLivesAndFoldersOfOthersAreLeftAlone) {
  const auto living = OutputFolder::Begin(out_);
  ASSERT_TRUE(living);
  ASSERT_TRUE((*living)->Write("index.html", "of the run that lives"));
  // Someone's folder with such a name, a binder of that name, what another binder left, a file, and a link.
  const fs::path someones = PartOf(out_, 1);
  fs::create_directories(someones / "letters");
  const fs::path binder = PartOf(out_, 2);
  fs::create_directories(binder);
  std::ofstream(binder / "benchleaf-binder.txt") << "A binder written by benchleaf.\n";
  const fs::path of_another = PartOf(folder_ / "binder2", 3);
  const fs::path named_otherwise = folder_ / "binder.4a.part";
  for (const fs::path& folder : {of_another, named_otherwise}) {
    fs::create_directories(folder);
    MarkUnfinished(folder);
  }
  std::ofstream(PartOf(out_, 5)) << "a file";
  fs::create_directory_symlink(of_another, PartOf(out_, 6));

  RemoveDeadBeside(out_);
  EXPECT_TRUE(fs::exists(someones / "letters"));
  EXPECT_TRUE(fs::exists(binder / "benchleaf-binder.txt"));
  EXPECT_TRUE(fs::exists(of_another));
  EXPECT_TRUE(fs::exists(named_otherwise));
  EXPECT_TRUE(fs::exists(PartOf(out_, 5)));
  EXPECT_TRUE(fs::is_symlink(PartOf(out_, 6)));
  ASSERT_TRUE((*living)->TakePlace());
  EXPECT_EQ(Index(), "of the run that lives");
}

TEST_F(OutputFolderTest, AFullDiskLeavesTheOldBinderAndNoHalfOne) {
  ASSERT_TRUE(WriteOne("first"));
  // A limit on the size of files stands in for a full disk, in a process of its own.
  const pid_t child = fork();
  if (child == 0) {
    signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{4096, 4096};
    setrlimit(RLIMIT_FSIZE, &limit);
    const auto written = WriteOne(std::string(100000, 'x'));
    const bool told = !written && written.error().message.find("disk is full") != std::string::npos;
    _exit(told ? 0 : 1);
  }
  int status = -1;
  waitpid(child, &status, 0);
  EXPECT_EQ(status, 0);
  EXPECT_EQ(Index(), "first");
  EXPECT_EQ(Count(), 1U);
}

}  // namespace
}  // namespace benchleaf::binder
