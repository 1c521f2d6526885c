// Measures what a manual's own list tells about its drawings: designators found on schematics and locators, each page
// by itself and with its whole manual. Takes minutes, so it is no part of the tests.

#include "bench/benchleaf_reader.h"
#include "bench/contest.h"
#include "bench/kept_readings.h"
#include "bench/made_manuals.h"
#include "bench/manual_readings.h"
#include "places/places.h"
#include "work/assemble_manual.h"

#include "benchleaf/extract/extract.h"

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdio>
#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr const char* kUsage =
    "bench_manuals [OPTION VALUE]...\n"
    "  --half dev|held-out               which manuals; held-out ones are for final figures only (default dev)\n"
    "  --keep DIR                        keep the pages' readings there, and use those that are kept\n";

struct Options {
  ContestOptions contest;
  ManualHalf half = ManualHalf::kDevelopment;
  std::string keep;
};

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "held-out")) {
      options.half = value == "dev" ? ManualHalf::kDevelopment : ManualHalf::kHeldOut;
      return true;
    }
    if (name == "--keep") {
      options.keep = value;
      return true;
    }
    return Take(name, value, options.contest);
  });
  return options;
}

// Kinds of term that a manual's list names.
constexpr std::array<const char*, 3> kKinds = {"designator", "tube", "semiconductor"};

std::vector<Seen> TermsOf(std::string_view kind, const std::vector<Sighting>& sightings) {
  std::vector<Seen> seen;
  for (const Sighting& sighting : sightings) {
    if (Name(sighting.kind) == kind) {
      seen.push_back({sighting.text, sighting.box, sighting.confidence});
    }
  }
  return seen;
}

// Sums by kind of page and of term, each page by itself and with its manual.
class Comparison {
 public:
  explicit Comparison(const Options& options) : readings_(options.keep), verdicts_(options.contest.verdicts) {}

  void Add(const MadeManual& made, scanmaker::Grade grade, const Rules& rules) {
    const std::string grade_name(scanmaker::Name(grade));
    const ReadManual read = ReadPages(made, grade, reader_, readings_);
    const std::vector<scanmaker::PageTruth>& truth = read.truth;
    const std::vector<PageRecord>& pages = read.pages;
    const std::atomic<bool> never{false};
    const auto manual = AssembleManual({}, pages, rules, never);
    for (std::size_t i = 0; i < pages.size(); ++i) {
      if (truth[i].kind == "schematic" || truth[i].kind == "parts locator") {
        Judge(truth[i], grade_name, "alone", ExtractSightings(pages[i].reading, rules), pages[i].reading);
        Judge(truth[i], grade_name, "manual", manual->pages[i].sightings, pages[i].reading);
      }
    }
  }

  // Prints the sums and starts new ones.
  void Finish(const char* origin, scanmaker::Grade grade) {
    for (const auto& [name, sums] : sums_) {
      const auto& [page, kind, way] = name;
      std::printf("%-7s %-8s %-13s %-13s %-6s %5d %7.3f %9.3f %6d %6.3f\n", std::string(scanmaker::Name(grade)).c_str(),
                  origin, page.c_str(), kind.c_str(), way.c_str(), sums.tally.on_pages(), sums.tally.Recall(),
                  sums.tally.Precision(), sums.tally.false_seen, sums.reliability.ExpectedCalibrationError());
    }
    static_cast<void>(std::fflush(stdout));
    sums_.clear();
  }

  // Prints how far the confidence of designators can be believed, over all pages.
  void FinishAll() const {
    for (const auto& [way, reliability] : reliability_) {
      std::printf("\n%s:\n%s", way.c_str(), ReliabilityLines(reliability).c_str());
    }
  }

 private:
  struct Sums {
    Tally tally;
    Reliability reliability;
  };

  void Judge(const scanmaker::PageTruth& truth, const std::string& grade, const std::string& way,
             const std::vector<Sighting>& sightings, const PageReading& reading) {
    std::vector<Seen> words;
    for (const Word& word : reading.words) {
      words.push_back({word.text, ToScan(reading.frame, word.box), word.confidence});
    }
    for (const std::string kind : kKinds) {
      const PageVerdict verdict = JudgeTerms(truth, kind, TermsOf(kind, sightings));
      verdicts_.Add({grade, way, truth.file, kind}, verdict, words);
      Sums& sums = sums_[{truth.kind, kind, way}];
      sums.tally.Add(verdict);
      sums.reliability.Add(verdict);
      if (kind == "designator") {
        reliability_[way].Add(verdict);
      }
    }
  }

  BenchleafReader reader_;
  KeptReadings readings_;
  VerdictList verdicts_;
  std::map<std::tuple<std::string, std::string, std::string>, Sums> sums_;  // by kind of page and term, and way
  std::map<std::string, Reliability> reliability_;                          // by way
};

void Run(const Options& options) {
  const Result<std::shared_ptr<const Rules>> rules = Rules::Load(SourceFolder() / "config");
  if (!rules) {
    throw std::runtime_error(rules.error().ToString());
  }
  std::printf("%-7s %-8s %-13s %-13s %-6s %5s %7s %9s %6s %6s\n", "grade", "manuals", "pages", "terms", "read", "there",
              "recall", "precision", "false", "ece");
  Comparison comparison(options);
  for (const auto& [origin, manuals] :
       {std::pair{"invented", InventedManuals(options.half)}, std::pair{"outside", OutsideManuals(options.half)}}) {
    for (const scanmaker::Grade grade : Grades(options.contest)) {
      for (const MadeManual& manual : manuals) {
        comparison.Add(manual, grade, **rules);
      }
      comparison.Finish(origin, grade);
    }
  }
  comparison.FinishAll();
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
