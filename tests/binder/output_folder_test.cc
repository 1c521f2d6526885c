#include "binder/output_folder.h"

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
