// Measures what each fault of real scans costs: the same few pages without it and with it. Takes minutes, so it is no
// part of the tests.

#include "bench/benchleaf_reader.h"
#include "bench/contest.h"
#include "bench/made_locator.h"
#include "bench/scorer.h"
#include "outside/outside_pages.h"
#include "scan-maker/page_surroundings.h"
#include "scan-maker/page_trait.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/schematic_page.h"

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;
using scanmaker::MadePage;
using scanmaker::PageTrait;

constexpr const char* kUsage =
    "bench_traits [OPTION VALUE]...\n"
    "  --trait NAME                      may be given several times (default all): none, laid-90, upside-down, ...,\n"
    "                                    two-up, halves\n"
    "  --page sheet|drawing|list|locator may be given several times (default all)\n";

constexpr std::string_view kTwoUp = "two-up";
constexpr std::string_view kHalves = "halves";
constexpr double kOverlap = 0.08;
constexpr const char* kKind = "designator";

struct Options {
  ContestOptions contest;
  std::vector<std::string> traits;
  std::vector<std::string> pages;
};

struct TraitPage {
  std::string name;
  MadePage page;
  std::uint64_t seed = 0;
};

MadePage MadeDrawing(std::uint64_t seed) {
  return MakeSchematicPage(scanmaker::RandomCircuit(5, seed), {11, 8.5, "SCHEMATIC DIAGRAM", "SAMPLE", "9", {}},
                           scanmaker::UsualDrawingStyle(Lettering::kHand, seed), seed)
      .page;
}

MadePage MadeList(std::uint64_t seed) {
  return MakeRandomPartsListPage({scanmaker::ListForm::kColumns, 1, scanmaker::Grouping::kNone}, Lettering::kTypewriter,
                                 seed);
}

// A schematic that others drew (of the development half), an own one in hand lettering, a typed list, a locator.
std::vector<TraitPage> Pages(const Options& options) {
  constexpr std::string_view kSheet = "video/modul.kicad_sch";
  const std::vector<outside::OutsidePage>& sheets = outside::OutsidePages();
  const auto sheet =
      std::find_if(sheets.begin(), sheets.end(), [&](const outside::OutsidePage& one) { return one.sheet == kSheet; });
  std::vector<TraitPage> pages = {{"sheet", Draw(*sheet), sheet->seed},
                                  {"drawing", MadeDrawing(402), 402},
                                  {"list", MadeList(403), 403},
                                  {"locator", MadeLocator(Lettering::kDrafting, 404), 404}};
  std::erase_if(pages, [&](const TraitPage& page) {
    return !options.pages.empty() &&
           std::find(options.pages.begin(), options.pages.end(), page.name) == options.pages.end();
  });
  return pages;
}

// The scans that a trait makes of a page. A list becomes a spread with another list beside it.
std::vector<scanmaker::ScannedPage> Scans(const TraitPage& page, std::string_view trait, Grade grade) {
  if (trait == kTwoUp) {
    const MadePage other =
        page.name == "list" ? MadeList(page.seed + 10) : MadeLocator(Lettering::kDrafting, page.seed + 10);
    return {ScanSpread(page.page, other, grade, page.seed)};
  }
  if (trait == kHalves) {
    const auto [left, right] = scanmaker::Halves(page.page, kOverlap);
    return {DegradeMade(left, grade, page.seed), DegradeMade(right, grade, page.seed + 1)};
  }
  const auto traits = scanmaker::AllPageTraits();
  const auto named = std::find_if(traits.begin(), traits.end(), [&](PageTrait one) { return Name(one) == trait; });
  if (named == traits.end()) {
    throw std::invalid_argument("no trait is called " + std::string(trait));
  }
  return {ScanWithTrait(page.page, grade, *named, page.seed)};
}

std::vector<std::string> Traits(const Options& options) {
  if (!options.traits.empty()) {
    return options.traits;
  }
  std::vector<std::string> traits;
  for (const PageTrait trait : scanmaker::AllPageTraits()) traits.emplace_back(Name(trait));
  traits.insert(traits.end(), {std::string(kTwoUp), std::string(kHalves)});
  return traits;
}

void Run(const Options& options) {
  BenchleafReader reader;
  VerdictList verdicts(options.contest.verdicts);
  PageDump dump(options.contest.dump);
  const std::vector<TraitPage> pages = Pages(options);
  std::printf("%-8s %-16s %7s %9s %6s %9s ", "grade", "trait", "recall", "precision", "false", "sec/page");
  for (const TraitPage& page : pages) std::printf(" %11s", page.name.c_str());
  std::printf("\n");
  const std::vector<Grade> grades =
      options.contest.grades.empty() ? std::vector{Grade::kMedium} : options.contest.grades;
  for (const Grade grade : grades) {
    const std::string grade_name(scanmaker::Name(grade));
    for (const std::string& trait : Traits(options)) {
      Tally all;
      double seconds = 0;
      int scans = 0;
      std::string by_page;
      for (const TraitPage& page : pages) {
        Tally own;
        int part = 0;
        for (scanmaker::ScannedPage& scan : Scans(page, trait, grade)) {
          scan.truth.file = trait + "-" + page.name + (part++ == 0 ? "" : "-2");
          dump.Add(grade_name, scan);
          PageSeen seen = reader.See(scan);
          const PageVerdict verdict = JudgeTerms(scan.truth, kKind, seen.terms[kKind]);
          verdicts.Add({grade_name, "benchleaf", scan.truth.file, kKind}, verdict, seen.words);
          own.Add(verdict);
          all.Add(verdict);
          seconds += seen.seconds;
          ++scans;
        }
        char cell[32];
        std::snprintf(cell, sizeof cell, "  %.3f/%.3f", own.Recall(), own.Precision());
        by_page += cell;
      }
      std::printf("%-8s %-16s %7.3f %9.3f %6d %9.2f %s\n", grade_name.c_str(), trait.c_str(), all.Recall(),
                  all.Precision(), all.false_seen, seconds / std::max(1, scans), by_page.c_str());
      static_cast<void>(std::fflush(stdout));
    }
  }
}

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--trait") {
      options.traits.push_back(value);
      return true;
    }
    if (name == "--page") {
      options.pages.push_back(value);
      return true;
    }
    return Take(name, value, options.contest);
  });
  return options;
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
