#include "work/programs.h"
#include "work/worker_pool.h"

#include "benchleaf/raster/page_source.h"

#include <gtest/gtest.h>

#include <atomic>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

const std::atomic<bool> kNeverCancel{false};

class OneTask : public TaskFeed {
 public:
  explicit OneTask(Task task) : task_(std::move(task)) {}
  Result<std::optional<Task>> Next() override { return std::exchange(task_, std::nullopt); }
  Result<void> Done(const Task& /*task*/, TaskOutcome outcome) override {
    value = std::move(outcome.value);
    return {};
  }

  TaskValue value;

 private:
  std::optional<Task> task_;
};

TaskValue Ask(Operation operation, const std::filesystem::path& path, int page) {
  OneTask feed({0, operation, page, 0, 0, path.string(), path.filename().string()});
  WorkerPool pool(Command(PageWorker()), 1);
  const Result<void> done = pool.Run(feed, kNeverCancel);
  EXPECT_TRUE(done) << done.error().ToString();
  return std::move(feed.value);
}

// A white page of 400 x 300 px.
std::filesystem::path WriteBlankPng(const TemporaryFolder& folder) {
  ColorImage image;
  image.width = 400;
  image.height = 300;
  image.pixels.assign(3U * 400 * 300, 255);
  const std::filesystem::path path = folder.path() / "blank.png";
  EXPECT_TRUE(WritePng(path, image));
  return path;
}

TEST(RunWorker, CountsAndReadsPages) {
  const TemporaryFolder folder;
  const auto path = WriteBlankPng(folder);
  const TaskValue count = Ask(Operation::kCountPages, path, 0);
  ASSERT_TRUE(std::holds_alternative<PageCount>(count));
  EXPECT_EQ(std::get<PageCount>(count).pages, 1);
  const TaskValue reading = Ask(Operation::kReadPage, path, 1);
  ASSERT_TRUE(std::holds_alternative<PageReading>(reading)) << std::get<Error>(reading).ToString();
  EXPECT_EQ(std::get<PageReading>(reading).frame.scan_width, 400);
  EXPECT_TRUE(std::get<PageReading>(reading).words.empty());
}

TEST(RunWorker, TellsWhatIsWrongWithAFileOrPage) {
  const TemporaryFolder folder;
  struct Case {
    std::filesystem::path path;
    int page;
    ErrorCode code;
  };
  const std::vector<Case> cases = {
      {folder.path() / "none.pdf", 0, ErrorCode::kMissing},
      {folder.Write("empty.pdf", ""), 0, ErrorCode::kEmpty},
      {folder.Write("text.pdf", "no scan at all"), 0, ErrorCode::kDamaged},
      {folder.Write("cut.pdf", "%PDF-1.4\n1 0 obj\n<<"), 0, ErrorCode::kDamaged},
      {folder.Write("cut.pdf", "%PDF-1.4\n1 0 obj\n<<"), 1, ErrorCode::kDamaged},
  };
  for (const Case& c : cases) {
    const TaskValue value = Ask(c.page == 0 ? Operation::kCountPages : Operation::kReadPage, c.path, c.page);
    ASSERT_TRUE(std::holds_alternative<Error>(value)) << c.path;
    EXPECT_EQ(std::get<Error>(value).code, c.code) << std::get<Error>(value).ToString();
    EXPECT_EQ(std::get<Error>(value).source, c.path.filename().string());
  }
}

}  // namespace
}  // namespace benchleaf
