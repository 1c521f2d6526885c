// The index outlives whatever ends or fails the run that writes it. With BENCHLEAF_TRUST=full every single call is
// tried; else some of them, spread evenly.

#include "places/places.h"
#include "trust/scripted_library.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <xapian.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <iterator>
#include <set>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;
using testing::AnyOf;
using testing::HasSubstr;

std::set<std::string> LinesOf(const std::string& text) {
  std::set<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) {
    lines.insert(line);
  }
  return lines;
}

class Survival : public testing::Test {
 protected:
  void SetUp() override {
    library_.MakeBefore();
    ASSERT_EQ(library_.Index(old_).code, 0);
    before_ = Export(old_);
    library_.MakeAfter();
    const fs::path whole = Copy("whole");
    const ProcessEnd end = library_.Index(whole);
    ASSERT_EQ(end.code, 2) << end.err;
    after_ = Export(whole);
    ASSERT_NE(before_, after_);
    known_ = LinesOf(before_);
    known_.merge(LinesOf(after_));
  }

  std::string Export(const fs::path& database) const {
    const ProcessEnd end = library_.Ask(database, "export");
    EXPECT_EQ(end.code, 0) << end.err;
    return end.out;
  }

  // A copy of the index as it was before.
  fs::path Copy(const std::string& name) const {
    const fs::path copy = library_.folder() / name;
    fs::remove_all(copy);
    fs::copy(old_, copy);
    return copy;
  }

  static std::map<std::string, std::string> Fault(const fs::path& database, const std::string& fault) {
    return {{"LD_PRELOAD", BENCHLEAF_FAIL_CALLS},
            {"BENCHLEAF_FAULT", fault},
            {"BENCHLEAF_FAULT_BELOW", fs::canonical(database).string()},
            // The shim comes before the sanitizer's own library; it replaces nothing that this would need.
            {"ASAN_OPTIONS", "verify_asan_link_order=0:new_delete_type_mismatch=0"}};
  }

  // How many calls of the kind a whole run makes on the index.
  long CountCalls(const std::string& call) const {
    const fs::path database = Copy("counted");
    const fs::path count = library_.folder() / "count";
    fs::remove(count);
    auto environment = Fault(database, call + ":0:count");
    environment["BENCHLEAF_FAULT_COUNT"] = count.string();
    EXPECT_EQ(library_.Index(database, environment).code, 2);
    long calls = 0;
    std::ifstream(count) >> calls;
    return calls;
  }

  static std::vector<long> Chosen(long calls, long most) {
    const char* const trust = std::getenv("BENCHLEAF_TRUST");
    const bool all = trust != nullptr && std::string(trust) == "full";
    const long step = all ? 1 : std::max(1L, calls / most);
    std::vector<long> chosen;
    for (long number = calls; number > 0; number -= step) {
      chosen.push_back(number);
    }
    return chosen;
  }

  // The database is sound, holds whole manuals only, and the next run makes of it what an undisturbed one makes.
  void ExpectNothingLost(const fs::path& database) const {
    std::ostringstream told;
    EXPECT_EQ(Xapian::Database::check(database.string(), 0, &told), 0U) << told.str();
    const std::set<std::string> now = LinesOf(Export(database));
    EXPECT_TRUE(std::includes(known_.begin(), known_.end(), now.begin(), now.end())) << "a manual is there in part";
    EXPECT_EQ(library_.Index(database).code, 2);
    EXPECT_EQ(Export(database), after_);
  }

  ScriptedLibrary library_;
  fs::path old_ = library_.folder() / "old";
  std::string before_;
  std::string after_;
  std::set<std::string> known_;  // lines of both exports
};

TEST_F(Survival, AKillAtAnyCallLosesNothing) {
  for (const char* call : {"sync", "rename", "write", "open", "remove"}) {
    const long calls = CountCalls(call);
    EXPECT_GT(calls, 0) << call;
    for (const long number : Chosen(calls, 2)) {
      SCOPED_TRACE(std::string(call) + ' ' + std::to_string(number) + " of " + std::to_string(calls));
      const fs::path database = Copy("killed");
      const ProcessEnd end = library_.Index(database, Fault(database, call + (":" + std::to_string(number) + ":kill")));
      ASSERT_EQ(end.signal, SIGKILL) << end.err;
      ExpectNothingLost(database);
    }
  }
}

TEST_F(Survival, AWriteTornInTheMiddleLosesNothing) {
  for (const long number : Chosen(CountCalls("write"), 4)) {
    SCOPED_TRACE(number);
    const fs::path database = Copy("torn");
    ASSERT_EQ(library_.Index(database, Fault(database, "write:" + std::to_string(number) + ":tear")).signal, SIGKILL);
    ExpectNothingLost(database);
  }
}

TEST_F(Survival, AKillWhileTheIndexIsMadeIsMadeGood) {
  const fs::path first = library_.folder() / "first";
  for (const long number : Chosen(40, 4)) {
    SCOPED_TRACE(number);
    fs::remove_all(first);
    fs::create_directories(first);
    library_.Index(first, Fault(first, "write:" + std::to_string(number) + ":kill"));
    EXPECT_EQ(library_.Index(first).code, 2);
    EXPECT_EQ(Export(first), after_);
  }
}

TEST_F(Survival, AFailingCallEndsTheRunWithAMessageAndTheOldIndexAnswers) {
  struct Case {
    const char* call;
    int error;
    bool stays;  // all later calls fail, too
    const char* said;
  };
  const Case cases[] = {
      {"write", ENOSPC, true, "the disk is full"},   {"write", EIO, false, "Input/output error"},
      {"sync", EIO, false, "Input/output error"},    {"sync", ENOSPC, true, "the disk is full"},
      {"open", EMFILE, false, "oo many open files"}, {"open", EACCES, true, "Permission denied"},
      {"rename", EIO, false, "Input/output error"},
  };
  for (const Case& c : cases) {
    int stopped = 0;
    for (const long number : Chosen(CountCalls(c.call), 1)) {
      const std::string fault =
          std::string(c.call) + ':' + std::to_string(number) + (c.stays ? ":" : ":once-") + std::to_string(c.error);
      SCOPED_TRACE(fault);
      const fs::path database = Copy("failed");
      const ProcessEnd end = library_.Index(database, Fault(database, fault));
      EXPECT_EQ(end.signal, 0);
      // Some calls are for things that the run can do without, such as the note that tells who writes.
      EXPECT_THAT(end.code, AnyOf(2, 4)) << end.err;
      if (end.code == 4) {
        ++stopped;
        EXPECT_THAT(end.err, HasSubstr(c.said));
        EXPECT_THAT(end.err, HasSubstr(database.string()));
      }
      ExpectNothingLost(database);
    }
    EXPECT_GT(stopped, 0) << c.call << ' ' << c.error;
  }
}

TEST_F(Survival, MemoryThatRunsOutEndsTheRunWithAMessageAndTheOldIndexAnswers) {
#ifdef __SANITIZE_ADDRESS__
  GTEST_SKIP() << "the sanitizer gives the memory itself";
#endif
  int stopped = 0;
  const long calls = CountCalls("allocate");
  EXPECT_GT(calls, 1000);
  for (const char* act : {":once-12", ":12"}) {
    for (const long number : Chosen(calls, 6)) {
      const std::string fault = "allocate:" + std::to_string(number) + act;
      SCOPED_TRACE(fault);
      const fs::path database = Copy("starved");
      const ProcessEnd end = library_.Index(database, Fault(database, fault));
      EXPECT_EQ(end.signal, 0) << end.err;
      EXPECT_THAT(end.code, AnyOf(2, 4)) << end.err;  // some memory can be done without
      if (end.code == 4) {
        ++stopped;
        EXPECT_THAT(end.err, HasSubstr("memory"));
      }
      ExpectNothingLost(database);
    }
  }
  EXPECT_GT(stopped, 0);
}

// In a file system of its own, which a user may mount in a name space of his own where the system lets him.
TEST_F(Survival, AFullDiskIsToldAndTheOldIndexAnswers) {
  const fs::path disk = library_.folder() / "disk";
  fs::create_directories(disk);
  const std::string index = std::string(BENCHLEAF_SCRIPTED) + " index '" + library_.library().string() + "' --db '" +
                            disk.string() + "/db' --config '" + (SourceFolder() / "config").string() + "'";
  const std::string script = "mount -t tmpfs -o size=4m none '" + disk.string() + "' && cp -r '" + old_.string() +
                             "' '" + disk.string() + "/db' && dd if=/dev/zero of='" + disk.string() +
                             "/rest' bs=4096 2>/dev/null; " + "test -d '" + disk.string() + "/db' || exit 99; " +
                             index + "; echo code $? >&2; " + BENCHLEAF_SCRIPTED + " export --db '" + disk.string() +
                             "/db' --config '" + (SourceFolder() / "config").string() + "'";
  const ProcessEnd end = RunProcess({.arguments = {"/usr/bin/unshare", "-rm", "/bin/sh", "-c", script}});
  if (end.code == 1 || end.code == 99 || end.code == 127) {
    GTEST_SKIP() << "no disk of its own can be mounted here: " << end.err;
  }
  EXPECT_EQ(end.code, 0);
  EXPECT_THAT(end.err, HasSubstr("the disk is full"));
  EXPECT_THAT(end.err, HasSubstr("code 4"));
  EXPECT_EQ(end.out, before_);
}

TEST_F(Survival, AFileOfLimitedSizeIsToldAndTheOldIndexAnswers) {
  const fs::path database = Copy("limited");
  const std::string index = "ulimit -f 40; exec " + std::string(BENCHLEAF_SCRIPTED) + " index '" +
                            library_.library().string() + "' --db '" + database.string() + "' --config '" +
                            (SourceFolder() / "config").string() + "'";
  const ProcessEnd end = RunProcess({.arguments = {"/bin/sh", "-c", index}});
  EXPECT_EQ(end.code, 4) << end.signal << end.err;
  EXPECT_THAT(end.err, HasSubstr("File too large"));
  ExpectNothingLost(database);
}

TEST_F(Survival, ASecondWriterIsToldWhoWritesAndReadersGetTheOldStateMeanwhile) {
  const fs::path database = Copy("shared");
  library_.WriteScan("alder.pdf", "pages 1\nwords 1 C1\non 1 any slow 4000\n");
  ProcessEnd first;
  std::thread writer([&] { first = library_.Index(database); });
  while (!fs::exists(database / "writer")) {
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
  }
  const ProcessEnd second = library_.Index(database);
  EXPECT_EQ(second.code, 4);
  EXPECT_THAT(second.err, HasSubstr("is being written by process "));
  const std::set<std::string> now = LinesOf(Export(database));
  EXPECT_TRUE(std::includes(known_.begin(), known_.end(), now.begin(), now.end()));
  writer.join();
  EXPECT_EQ(first.code, 2) << first.err;
}

TEST_F(Survival, CtrlCSaysHowToGoOnAndTheSameCommandDoes) {
  const fs::path database = Copy("interrupted");
  library_.WriteScan("birch.pdf", "pages 2\nwords 1 C1 C77\nwords 2 C2\n");
  library_.WriteScan("hazel.pdf", "pages 2\nwords 1 C1\non 2 any slow 20000\n");
  const std::string command = "benchleaf index '" + library_.library().string() + "' --db '" + database.string() + "'";
  const ProcessEnd end =
      RunProcess({.arguments = {BENCHLEAF_SCRIPTED, "index", library_.library().string(), "--db", database.string(),
                                "--config", (SourceFolder() / "config").string(), "--workers", "1"},
                  .kill_after = std::chrono::seconds(4),
                  .kill_by = SIGINT});
  EXPECT_EQ(end.code, 130) << end.err;
  EXPECT_THAT(end.err, testing::AllOf(HasSubstr("stopped; the manuals finished so far are in the index"),
                                      HasSubstr("goes on with the rest: " + command)));
  library_.WriteScan("hazel.pdf", "pages 2\nwords 1 C1\nwords 2 C2\n");
  const ProcessEnd next = library_.Index(database);
  EXPECT_THAT(next.err, HasSubstr("9 pages of 4 manuals of 4 sets"));
}

}  // namespace
}  // namespace benchleaf
