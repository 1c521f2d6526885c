#include "bench/contest.h"

#include "bench/one_thread.h"

#include <cstdio>
#include <exception>
#include <iostream>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;

constexpr const char* kContestUsage =
    "  --grade clean|mild|medium|severe  may be given several times (default mild, medium and severe)\n"
    "  --only bare|benchleaf             one reader only\n"
    "  --verdicts FILE                   list every designator missed or seen, and what was read there, as TSV\n"
    "  --dump DIR                        write the degraded pages as PNG, with truth.jsonl\n";

Grade GradeNamed(std::string_view name) {
  for (const Grade grade : {Grade::kClean, Grade::kMild, Grade::kMedium, Grade::kSevere}) {
    if (scanmaker::Name(grade) == name) {
      return grade;
    }
  }
  throw std::invalid_argument("no grade is called " + std::string(name));
}

void PrintTally(const std::string& grade, const char* reader, const Tally& tally) {
  std::printf("%-8s %-10s %7.3f %9.3f %8.3f %7.3f %6d %6d %9.2f\n", grade.c_str(), reader, tally.Recall(),
              tally.Precision(), tally.UprightRecall(), tally.TurnedRecall(), tally.false_seen, tally.other_text,
              tally.SecondsPerPage());
}

}  // namespace

std::vector<Grade> Grades(const ContestOptions& options) {
  return options.grades.empty() ? std::vector<Grade>{Grade::kMild, Grade::kMedium, Grade::kSevere} : options.grades;
}

bool Take(std::string_view name, const std::string& value, ContestOptions& options) {
  if (name == "--grade") {
    options.grades.push_back(GradeNamed(value));
  } else if (name == "--only" && (value == "bare" || value == "benchleaf")) {
    options.bare = value == "bare";
    options.benchleaf = value == "benchleaf";
  } else if (name == "--verdicts") {
    options.verdicts = value;
  } else if (name == "--dump") {
    options.dump = value;
  } else {
    return false;
  }
  return true;
}

int RunBench(const std::string& usage, int argc, char** argv,
             const std::function<void(const std::vector<std::string>&)>& run) {
  const std::string name = usage.substr(0, usage.find(' '));
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (arguments == std::vector<std::string>{"--help"}) {
    std::printf("%s%s", usage.c_str(), kContestUsage);
    return 0;
  }
  try {
    KeepToOneThread(argv);
    run(arguments);
  } catch (const std::invalid_argument& problem) {
    std::cerr << name << ": " << problem.what() << "; --help tells what is\n";
    return 2;
  } catch (const std::exception& problem) {
    std::cerr << name << ": " << problem.what() << '\n';
    return 1;
  }
  return 0;
}

Contest::Contest(const ContestOptions& options) : verdicts_(options.verdicts), dump_(options.dump) {
  if (options.bare) {
    bare_.emplace();
  }
  if (options.benchleaf) {
    benchleaf_.emplace();
  }
  std::printf("%-8s %-10s %7s %9s %8s %7s %6s %6s %9s\n", "grade", "reader", "recall", "precision", "upright", "turned",
              "false", "other", "sec/page");
}

void Contest::Add(const scanmaker::MadePage& made, const std::string& name, Grade grade, std::uint64_t seed) {
  scanmaker::ScannedPage page = scanmaker::DegradeMade(made, grade, seed);
  page.truth.file = name;
  dump_.Add(std::string(scanmaker::Name(grade)), page);
  if (bare_) {
    const Stopwatch watch;
    PageSeen seen;
    seen.words = bare_->Read(page.image, page.dpi);
    seen.designators = DesignatorsAmong(seen.words);
    seen.seconds = watch.Seconds();
    Judge(scanmaker::Name(grade), "bare", page, seen, bare_tally_);
  }
  if (benchleaf_) {
    const PageSeen seen = benchleaf_->See(page);
    Judge(scanmaker::Name(grade), "benchleaf", page, seen, benchleaf_tally_);
    entries_.Add(page.truth.entries, seen.entries);
  }
}

void Contest::Judge(std::string_view grade, const char* reader, const scanmaker::ScannedPage& page,
                    const PageSeen& seen, Tally& tally) {
  const PageVerdict verdict = JudgeDesignators(page.truth, seen.designators);
  tally.Add(verdict, seen.seconds);
  verdicts_.Add({std::string(grade), reader, page.truth.file}, verdict, seen.words);
}

void Contest::Finish(Grade grade) {
  const std::string name(scanmaker::Name(grade));
  if (bare_) {
    PrintTally(name, "bare", bare_tally_);
  }
  if (benchleaf_) {
    PrintTally(name, "benchleaf", benchleaf_tally_);
  }
  if (bare_tally_.Recall() > 0 && benchleaf_tally_.pages > 0) {
    std::printf("%-8s %-10s %7.2f %57.2f\n", name.c_str(), "ratio", benchleaf_tally_.Recall() / bare_tally_.Recall(),
                benchleaf_tally_.SecondsPerPage() / bare_tally_.SecondsPerPage());
  }
  if (benchleaf_ && entries_.listed > 0) {
    std::printf(
        "%-8s rows: %d listed, %d read; designator and part number right %.3f of those listed, %.3f of those "
        "read; designator alone %.3f\n",
        name.c_str(), entries_.listed, entries_.read, entries_.Recall(), entries_.Precision(),
        entries_.DesignatorRecall());
  }
  static_cast<void>(std::fflush(stdout));
  bare_tally_ = {};
  benchleaf_tally_ = {};
  entries_ = {};
}

}  // namespace benchleaf::bench
