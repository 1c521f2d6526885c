// Measures how many of the designators of schematics that others drew are found, at each grade of bad scan: benchleaf
// against bare Tesseract. Prints a table; takes some minutes, so it is no part of the tests.

#include "bench/bare_tesseract.h"
#include "bench/bench_run.h"
#include "bench/miss_list.h"
#include "bench/page_dump.h"
#include "bench/scorer.h"
#include "outside/outside_pages.h"
#include "scan-maker/degrade.h"
#include "scan-maker/made_page.h"

#include <cstdio>
#include <exception>
#include <fstream>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;

constexpr const char* kUsage =
    "bench_outside [--half dev|held-out|all] [--grade clean|mild|medium|severe]... [--only bare|benchleaf]\n"
    "              [--misses FILE] [--dump DIR]\n"
    "  --half    which sheets; held-out ones are for final figures only (default all)\n"
    "  --grade   which grades (default mild, medium and severe)\n"
    "  --only    one reader only\n"
    "  --misses  list every missed and false designator as TSV, with what was read there\n"
    "  --dump    write the degraded sheets as PNG, with truth.jsonl\n";

struct Options {
  std::optional<outside::Half> half;
  std::vector<Grade> grades;
  bool bare = true;
  bool benchleaf = true;
  std::string misses;
  std::string dump;
};

Grade GradeNamed(std::string_view name) {
  for (const Grade grade : {Grade::kClean, Grade::kMild, Grade::kMedium, Grade::kSevere}) {
    if (scanmaker::Name(grade) == name) {
      return grade;
    }
  }
  throw std::invalid_argument("no grade is called " + std::string(name));
}

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  for (std::size_t i = 0; i < arguments.size(); i += 2) {
    if (i + 1 == arguments.size()) {
      throw std::invalid_argument(arguments[i] + " cannot stand alone");
    }
    const std::string& name = arguments[i];
    const std::string& value = arguments[i + 1];
    if (name == "--half" && (value == "dev" || value == "held-out")) {
      options.half = value == "dev" ? outside::Half::kDevelopment : outside::Half::kHeldOut;
    } else if (name == "--grade") {
      options.grades.push_back(GradeNamed(value));
    } else if (name == "--only" && (value == "bare" || value == "benchleaf")) {
      options.bare = value == "bare";
      options.benchleaf = value == "benchleaf";
    } else if (name == "--misses") {
      options.misses = value;
    } else if (name == "--dump") {
      options.dump = value;
    } else if (name != "--half" || value != "all") {
      throw std::invalid_argument(name + " " + value + " is not understood");
    }
  }
  if (options.grades.empty()) {
    options.grades = {Grade::kMild, Grade::kMedium, Grade::kSevere};
  }
  return options;
}

void PrintHead() {
  std::printf("%-8s %-10s %9s %9s %9s %9s %6s %6s %9s\n", "grade", "reader", "recall", "precision", "upright", "turned",
              "false", "other", "sec/page");
}

void Print(std::string_view grade, const char* reader, const Tally& tally) {
  std::printf("%-8s %-10s %9.3f %9.3f %9.3f %9.3f %6d %6d %9.2f\n", std::string(grade).c_str(), reader, tally.Recall(),
              tally.Precision(), tally.UprightRecall(), tally.TurnedRecall(), tally.false_seen, tally.other_text,
              tally.SecondsPerPage());
}

PageSeen SeeBare(BareTesseract& bare, const scanmaker::ScannedPage& page) {
  const Stopwatch watch;
  PageSeen seen;
  seen.words = bare.Read(page.image, page.dpi);
  seen.designators = DesignatorsAmong(seen.words);
  seen.seconds = watch.Seconds();
  return seen;
}

// The readers that were asked for, with their sums over the pages of one grade.
class Contest {
 public:
  explicit Contest(const Options& options) : misses_(options.misses), dump_(options.dump) {
    if (options.bare) {
      bare_.emplace();
    }
    if (options.benchleaf) {
      benchleaf_.emplace();
    }
  }

  void Run(Grade grade, const std::vector<outside::OutsidePage>& sheets) {
    Tally bare;
    Tally benchleaf;
    const std::string name(scanmaker::Name(grade));
    for (const outside::OutsidePage& sheet : sheets) {
      scanmaker::ScannedPage page = scanmaker::DegradeMade(outside::Draw(sheet), grade, sheet.seed);
      page.truth.file = sheet.sheet;
      dump_.Add(name, page);
      if (bare_) {
        Judge(name, "bare", page, SeeBare(*bare_, page), bare);
      }
      if (benchleaf_) {
        Judge(name, "benchleaf", page, benchleaf_->See(page), benchleaf);
      }
    }
    if (bare_) {
      Print(name, "bare", bare);
    }
    if (benchleaf_) {
      Print(name, "benchleaf", benchleaf);
    }
    if (bare_ && benchleaf_) {
      std::printf("%-8s %-10s %9.2f %59s\n", name.c_str(), "ratio", benchleaf.Recall() / bare.Recall(),
                  ("time x " + std::to_string(benchleaf.SecondsPerPage() / bare.SecondsPerPage())).c_str());
    }
    std::fflush(stdout);
  }

 private:
  void Judge(const std::string& grade, const char* reader, const scanmaker::ScannedPage& page, const PageSeen& seen,
             Tally& tally) {
    const PageVerdict verdict = JudgeDesignators(page.truth, seen.designators);
    tally.Add(verdict, seen.seconds);
    misses_.Add({grade, reader, page.truth.file}, verdict, seen.words);
  }

  MissList misses_;
  PageDump dump_;
  std::optional<BareTesseract> bare_;
  std::optional<Benchleaf> benchleaf_;
};

void Run(const Options& options) {
  std::vector<outside::OutsidePage> sheets;
  int designators = 0;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (!options.half || sheet.half == *options.half) {
      sheets.push_back(sheet);
      designators += sheet.designators;
    }
  }
  std::printf("%zu sheets, %d designators\n", sheets.size(), designators);
  PrintHead();
  Contest contest(options);
  for (const Grade grade : options.grades) contest.Run(grade, sheets);
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  try {
    benchleaf::bench::KeepToOneThread(argv);
    benchleaf::bench::Run(benchleaf::bench::Parse({argv + 1, argv + argc}));
  } catch (const std::invalid_argument& problem) {
    std::fprintf(stderr, "bench_outside: %s\n%s", problem.what(), benchleaf::bench::kUsage);
    return 2;
  } catch (const std::exception& problem) {
    std::fprintf(stderr, "bench_outside: %s\n", problem.what());
    return 1;
  }
  return 0;
}
