#include "work/worker_pool.h"

#include "work/programs.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <map>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;
using std::chrono::steady_clock;
using testing::HasSubstr;

const std::atomic<bool> kNeverCancel{false};

class ListFeed : public TaskFeed {
 public:
  void Count(const std::filesystem::path& path) { Add(Operation::kCountPages, path, 0); }
  void Read(const std::filesystem::path& path, int page) { Add(Operation::kReadPage, path, page); }

  Result<std::optional<Task>> Next() override {
    return next_ < tasks_.size() ? std::optional<Task>(tasks_[next_++]) : std::nullopt;
  }
  Result<void> Done(const Task& task, TaskOutcome outcome) override {
    EXPECT_TRUE(outcomes.emplace(task.id, std::move(outcome)).second) << "two outcomes of one task";
    return {};
  }

  const Error& ErrorOf(std::size_t id) { return std::get<Error>(outcomes.at(id).value); }
  std::string WordOf(std::size_t id) { return std::get<PageReading>(outcomes.at(id).value).words.at(0).text; }

  std::map<std::size_t, TaskOutcome> outcomes;

 private:
  void Add(Operation operation, const std::filesystem::path& path, int page) {
    tasks_.push_back({tasks_.size(), operation, page, 0, 0, path.string(), path.filename().string()});
  }

  std::vector<Task> tasks_;
  std::size_t next_ = 0;
};

class WorkerPoolTest : public testing::Test {
 protected:
  // Runs the tasks of `feed_` and expects the pool itself not to fail.
  void Run(const WorkerLimits& limits = {}, int workers = 1) {
    WorkerCommand command = Command(FakeWorker());
    command.limits = limits;
    WorkerPool pool(command, workers);
    const Result<void> done = pool.Run(feed_, kNeverCancel);
    ASSERT_TRUE(done) << done.error().ToString();
  }

  TemporaryFolder folder_;
  ListFeed feed_;
};

TEST_F(WorkerPoolTest, GivesAnOutcomeForEveryTask) {
  const auto path = folder_.WriteScan("a.pdf", "pages 40\nwords 1 R1\nwords 40 R40");
  feed_.Count(path);
  for (int page = 1; page <= 40; ++page) {
    feed_.Read(path, page);
  }
  Run({}, 4);
  ASSERT_EQ(feed_.outcomes.size(), 41U);
  EXPECT_EQ(std::get<PageCount>(feed_.outcomes.at(0).value).pages, 40);
  EXPECT_EQ(feed_.WordOf(1), "R1");
  EXPECT_EQ(feed_.WordOf(40), "R40");
}

TEST_F(WorkerPoolTest, TriesALostTaskOnceMoreInThePlainerMode) {
  struct Case {
    const char* act;
    ErrorCode code;
    const char* reason;
  };
  const std::vector<Case> cases = {
      {"crash", ErrorCode::kCrashed, "reader died (signal 11)"},
      {"abort", ErrorCode::kCrashed, "reader died (signal 6: the reason)"},
      {"exit 3", ErrorCode::kCrashed, "reader died (exit code 3: no more)"},
      {"exit 0", ErrorCode::kCrashed, "reader died (exit code 0)"},
      {"half", ErrorCode::kCrashed, "reader died (exit code 0)"},
      {"garbage", ErrorCode::kCrashed, "the reader sent what cannot be understood"},
      {"long", ErrorCode::kCrashed, "the reader sent what cannot be understood"},
      {"other-number", ErrorCode::kCrashed, "the reader sent what cannot be understood"},
      {"wrong-kind", ErrorCode::kCrashed, "the reader answered another question"},
      {"hang", ErrorCode::kTimeout, "took longer than 2 s"},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.act);
    feed_ = {};
    feed_.Read(folder_.WriteScan("a.pdf", "words 1 R1\non 1 full " + std::string(c.act)), 1);
    feed_.Read(folder_.WriteScan("b.pdf", "words 2 R2\non 2 any " + std::string(c.act)), 2);
    feed_.Read(folder_.WriteScan("c.pdf", "words 1 R3"), 1);
    WorkerLimits limits;
    limits.deadline = seconds(2);
    Run(limits);
    ASSERT_EQ(feed_.outcomes.size(), 3U);
    EXPECT_EQ(feed_.WordOf(0), "R1");
    EXPECT_EQ(feed_.outcomes.at(0).first_try, (Error{c.code, c.reason, "a.pdf", 1}));
    EXPECT_EQ(feed_.ErrorOf(1), (Error{c.code, c.reason, "b.pdf", 2}));
    EXPECT_EQ(feed_.WordOf(2), "R3");  // the next task has a worker again, and its full mode
    EXPECT_FALSE(feed_.outcomes.at(2).first_try);
  }
}

TEST_F(WorkerPoolTest, AnErrorThatTheWorkerTellsIsFinalAndNamesTheTask) {
  feed_.Read(folder_.WriteScan("a.pdf", "on 1 any damaged"), 1);
  feed_.Count(folder_.WriteScan("b.pdf", "on 0 any damaged"));
  Run();
  EXPECT_EQ(feed_.ErrorOf(0), (Error{ErrorCode::kDamaged, "is torn", "a.pdf", 1}));
  EXPECT_EQ(feed_.ErrorOf(1), (Error{ErrorCode::kDamaged, "is torn", "b.pdf", 0}));
}

TEST_F(WorkerPoolTest, ASecondAnswerToOneJobIsNotTakenForTheNextOne) {
  feed_.Read(folder_.WriteScan("a.pdf", "words 1 R1\non 1 any twice"), 1);
  feed_.Read(folder_.WriteScan("b.pdf", "words 1 R2"), 1);
  Run();
  EXPECT_EQ(feed_.WordOf(0), "R1");
  EXPECT_EQ(feed_.WordOf(1), "R2");
}

TEST_F(WorkerPoolTest, ChatterDoesNotHoldUpAWorker) {
  feed_.Read(folder_.WriteScan("a.pdf", "words 1 R1\non 1 any chatter"), 1);
  Run();
  EXPECT_EQ(feed_.WordOf(0), "R1");
  EXPECT_FALSE(feed_.outcomes.at(0).first_try);
}

TEST_F(WorkerPoolTest, ProcessorTimeIsLimited) {
  feed_.Read(folder_.WriteScan("a.pdf", "on 1 any spin"), 1);
  WorkerLimits limits;
  limits.cpu = seconds(1);
  Run(limits);
  EXPECT_EQ(feed_.ErrorOf(0), (Error{ErrorCode::kTimeout, "used more than 1 s of processor time", "a.pdf", 1}));
}

TEST_F(WorkerPoolTest, MemoryIsLimited) {
#ifdef __SANITIZE_ADDRESS__
  GTEST_SKIP() << "a sanitized program cannot run under a limit of address space";
#endif
  feed_.Read(folder_.WriteScan("a.pdf", "on 1 any memory"), 1);  // 4 GiB
  WorkerLimits limits;
  limits.address_space_mib = 256;
  Run(limits);
  EXPECT_EQ(feed_.ErrorOf(0).code, ErrorCode::kCrashed);
  EXPECT_THAT(feed_.ErrorOf(0).message, HasSubstr("bad_alloc"));
}

TEST_F(WorkerPoolTest, WorkersWorkSideBySide) {
  for (int i = 0; i < 4; ++i) {
    feed_.Read(folder_.WriteScan(std::to_string(i) + ".pdf", "on 1 any slow 1000"), 1);
  }
  const auto start = steady_clock::now();
  Run({}, 4);
  EXPECT_LT(steady_clock::now() - start, milliseconds(3500));  // one after the other it takes 4 s
}

TEST_F(WorkerPoolTest, CancelKillsWorkersSoon) {
  feed_.Read(folder_.WriteScan("a.pdf", "on 1 any hang"), 1);
  feed_.Read(folder_.WriteScan("b.pdf", "on 1 any spin"), 1);
  WorkerPool pool(Command(FakeWorker()), 2);
  std::atomic<bool> cancel{false};
  steady_clock::time_point set;
  std::thread canceller([&] {
    std::this_thread::sleep_for(milliseconds(300));
    set = steady_clock::now();
    cancel = true;
  });
  const Result<void> done = pool.Run(feed_, cancel);
  const auto returned = steady_clock::now();
  canceller.join();
  ASSERT_FALSE(done);
  EXPECT_EQ(done.error().code, ErrorCode::kCancelled);
  EXPECT_LT(returned - set, milliseconds(500));
  EXPECT_TRUE(feed_.outcomes.empty());
}

TEST_F(WorkerPoolTest, FailsWhenWorkersCannotWork) {
  const auto path = folder_.WriteScan("a.pdf", "on 1 any unfit");
  struct Case {
    std::string program;
    ErrorCode code;
    const char* message;
  };
  const std::vector<Case> cases = {
      {"/no/such/program", ErrorCode::kMissing, "cannot be started: No such file or directory"},
      {"/etc/passwd", ErrorCode::kIo, "cannot be started: Permission denied"},
      {"/bin/true", ErrorCode::kCrashed, "does not start (exit code 0)"},
      {"/bin/false", ErrorCode::kCrashed, "does not start (exit code 1)"},
      {"/bin/echo", ErrorCode::kUsage, "is no reader of this version"},
      {FakeWorker(), ErrorCode::kMissing, "no language data"},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.program);
    ListFeed feed;
    feed.Read(path, 1);
    WorkerPool pool(Command(c.program), 1);
    const Result<void> done = pool.Run(feed, kNeverCancel);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, c.code);
    EXPECT_THAT(done.error().message, HasSubstr(c.message));
    EXPECT_TRUE(feed.outcomes.empty());  // no page is to blame
  }
}

TEST_F(WorkerPoolTest, TimeInWhichNobodyListensIsNotTheWorkers) {
  // The first outcome keeps the feed busy for longer than the deadline of the second task, whose answer is too long for
  // the socket's buffer: the worker has to wait for it to be taken in.
  class BusyFeed : public ListFeed {
    Result<void> Done(const Task& task, TaskOutcome outcome) override {
      if (task.id == 0) {
        std::this_thread::sleep_for(milliseconds(1500));
      }
      return ListFeed::Done(task, std::move(outcome));
    }
  };
  std::string words;
  for (int i = 0; i < 20000; ++i) {
    words += " R" + std::to_string(i);
  }
  BusyFeed feed;
  feed.Read(folder_.WriteScan("a.pdf", "words 1 R1"), 1);
  feed.Read(folder_.WriteScan("b.pdf", "on 1 any slow 200\nwords 1" + words), 1);
  WorkerCommand command = Command(FakeWorker());
  command.limits.deadline = seconds(1);
  WorkerPool pool(command, 2);
  ASSERT_TRUE(pool.Run(feed, kNeverCancel));
  EXPECT_FALSE(feed.outcomes.at(1).first_try);
  EXPECT_EQ(std::get<PageReading>(feed.outcomes.at(1).value).words.size(), 20000U);
}

}  // namespace
}  // namespace benchleaf
