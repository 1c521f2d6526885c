#include "cli/progress.h"

#include <gmock/gmock.h>

#include <sstream>

namespace benchleaf {
namespace {

using std::chrono::seconds;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;

// Progress on a stream of the test's own, by a clock that the test sets.
struct Watched {
  explicit Watched(bool terminal, Talk talk = Talk::kNormal)
      : streams{.out = out, .err = err, .err_is_terminal = terminal}, progress(streams, talk, [this] { return now; }) {}

  std::ostringstream out;
  std::ostringstream err;
  std::chrono::steady_clock::time_point now{seconds(1000)};
  Streams streams;
  Progress progress;
};

void ReadPages(Watched& watched, int pages, seconds each) {
  for (int page = 1; page <= pages; ++page) {
    watched.now += each;
    watched.progress.PageDone("a.pdf", page, false);
  }
}

TEST(Progress, OnATerminalRewritesOneLineWithRateAndTimeLeft) {
  Watched watched(true);
  watched.progress.Found(1, 2, 40, 3);
  ReadPages(watched, 10, seconds(2));
  EXPECT_THAT(watched.err.str(), EndsWith("\r10 of 40 pages, 0.5 pages/s, 1 min left\x1b[K"));
  EXPECT_THAT(watched.err.str(), HasSubstr("1 set, 2 manuals: 40 pages to read, 3 already in the index\n"));
  watched.progress.Finish();
  EXPECT_THAT(watched.err.str(), EndsWith("\r\x1b[K"));
  EXPECT_EQ(watched.out.str(), "");
}

TEST(Pace, CountsWhatIsToBeDone) {
  auto now = std::chrono::steady_clock::time_point(seconds(1000));
  Pace pace([&] { return now; }, "picture");
  pace.Start(12);
  pace.LeaveOut();
  pace.LeaveOut();
  now += seconds(8);
  for (int i = 0; i < 4; ++i) pace.PageDone(i == 0);
  EXPECT_EQ(pace.ToString(), "4 of 10 pictures, 1 not read, 0.5 pictures/s, 12 s left");
}

TEST(Progress, RewritesNoFasterThanAnEyeCanFollow) {
  Watched watched(true);
  watched.progress.Found(1, 1, 1000, 0);
  ReadPages(watched, 500, seconds(0));
  EXPECT_THAT(watched.err.str(), Not(HasSubstr("400 of 1000")));
}

TEST(Progress, TellsAProblemAboveTheRewrittenLine) {
  Watched watched(true);
  watched.progress.Found(1, 1, 5, 0);
  watched.progress.PageDone("a.pdf", 1, true);
  watched.progress.Problem({ErrorCode::kTimeout, "took too long", "a.pdf", 1});
  EXPECT_THAT(watched.err.str(),
              EndsWith("\r\x1b[Kbenchleaf: a.pdf, page 1: took too long\n\r1 of 5 pages, 1 not read\x1b[K"));
}

TEST(Progress, ElsewhereWritesPlainLines) {
  Watched watched(false);
  watched.progress.Found(1, 1, 5, 0);
  ReadPages(watched, 5, seconds(1));
  watched.progress.ManualStored("QUILLHAVEN 12", "chassis");
  watched.progress.Finish();
  EXPECT_EQ(watched.err.str(),
            "benchleaf: 1 set, 1 manual: 5 pages to read, 0 already in the index\n"
            "benchleaf: stored QUILLHAVEN 12, chassis (5 of 5 pages, 1.0 pages/s)\n");
}

TEST(Progress, TellsNoPaceWhereNoPageIsRead) {
  Watched watched(false);
  watched.progress.Found(1, 1, 0, 5);
  watched.progress.ManualStored("QUILLHAVEN 12", "chassis");
  EXPECT_THAT(watched.err.str(), EndsWith("benchleaf: stored QUILLHAVEN 12, chassis\n"));
}

TEST(Progress, QuietTellsProblemsAlone) {
  Watched watched(true, Talk::kQuiet);
  watched.progress.Found(1, 1, 1, 0);
  watched.progress.PageDone("a.pdf", 1, true);
  watched.progress.Problem({ErrorCode::kDamaged, "cut off", "a.pdf", 1});
  watched.progress.ManualStored("s", "m");
  EXPECT_EQ(watched.err.str(), "benchleaf: a.pdf, page 1: cut off\n");
}

TEST(Progress, VerboseTellsEachPage) {
  Watched watched(true, Talk::kVerbose);
  watched.progress.Found(1, 1, 2, 0);
  watched.progress.PageDone("a.pdf", 7, false);
  watched.progress.PageDone("b\x1b[2J.pdf", 1, true);
  EXPECT_THAT(watched.err.str(), HasSubstr("benchleaf: [1/2] a.pdf, page 7\n"));
  EXPECT_THAT(watched.err.str(), HasSubstr("benchleaf: [2/2] b\uFFFD[2J.pdf, page 1: not read\n"));
}

TEST(Spoken, SaysTimesAsPeopleDo) {
  EXPECT_EQ(Spoken(seconds(0)), "0 s");
  EXPECT_EQ(Spoken(seconds(59)), "59 s");
  EXPECT_EQ(Spoken(seconds(60)), "1 min");
  EXPECT_EQ(Spoken(seconds(59 * 60 + 29)), "59 min");
  EXPECT_EQ(Spoken(seconds(59 * 60 + 30)), "1 h 0 min");
  EXPECT_EQ(Spoken(seconds(3 * 3600 + 20 * 60)), "3 h 20 min");
}

}  // namespace
}  // namespace benchleaf
