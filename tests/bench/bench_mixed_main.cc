// Measures pages that have several faults of real scans at once, each in another mixture. Takes minutes, so it is no
// part of the tests.

#include "bench/contest.h"
#include "bench/list_pages.h"
#include "bench/made_locator.h"
#include "outside/outside_pages.h"
#include "scan-maker/mixed_traits.h"
#include "scan-maker/schematic_page.h"
#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;
using scanmaker::MadePage;

constexpr const char* kUsage =
    "bench_mixed [OPTION VALUE]...\n"
    "  --half dev|held-out               which pages, letterings and mixtures; held-out is for final figures only\n"
    "                                    (default dev)\n"
    "  --page sheet|drawing|list|locator may be given several times (default all)\n"
    "  --pages N                         so many pages of each (default 6)\n";

constexpr std::array kPages = {"sheet", "drawing", "list", "locator"};
// The letterings of drawings and locators. All but one of either half were never learnt from.
constexpr std::array kOnDevelopment = {Lettering::kBookPen, Lettering::kUnmetSans, Lettering::kUnmetEvenWidth,
                                       Lettering::kHand};
constexpr std::array kOnHeldOut = {Lettering::kDuplex, Lettering::kUnmetEvenWidth, Lettering::kUnmetSans,
                                   Lettering::kDrafting};

struct Options {
  ContestOptions contest;
  bool held_out = false;
  std::vector<std::string> pages;
  int count = 6;
};

scanmaker::PageForm FormOf(std::string_view page) {
  if (page == "list") return scanmaker::PageForm::kList;
  return page == "locator" ? scanmaker::PageForm::kLocator : scanmaker::PageForm::kDrawing;
}

MadePage MakeSheet(bool held_out, int number) {
  const outside::Half half = held_out ? outside::Half::kHeldOut : outside::Half::kDevelopment;
  std::vector<const outside::OutsidePage*> sheets;
  for (const outside::OutsidePage& one : outside::OutsidePages()) {
    if (one.half == half) sheets.push_back(&one);
  }
  return Draw(*sheets[static_cast<std::size_t>(number) % sheets.size()]);
}

MadePage MakeDrawing(Lettering lettering, std::uint64_t seed) {
  return MakeSchematicPage(scanmaker::RandomCircuit(5 + static_cast<int>(seed % 4), seed),
                           {11, 8.5, "SCHEMATIC DIAGRAM", "SAMPLE", "9", {}},
                           scanmaker::UsualDrawingStyle(lettering, seed), seed)
      .page;
}

MadePage MakeList(bool held_out, int number) {
  const std::vector<std::string> layouts = ListLayoutNames();
  // Neighbours are variants of one layout: five further on is another.
  return MakeListPage(layouts[static_cast<std::size_t>(5 * number) % layouts.size()],
                      held_out ? ListHalf::kHeldOut : ListHalf::kDevelopment)
      .made;
}

MadePage Make(std::string_view page, bool held_out, int number, std::uint64_t seed) {
  const auto& letterings = held_out ? kOnHeldOut : kOnDevelopment;
  const Lettering lettering = letterings[static_cast<std::size_t>(number) % letterings.size()];
  if (page == "sheet") return MakeSheet(held_out, number);
  if (page == "drawing") return MakeDrawing(lettering, seed);
  if (page == "list") return MakeList(held_out, number);
  return MadeLocator(lettering, seed);
}

void Run(const Options& options) {
  Contest contest(options.contest);
  for (const Grade grade : Grades(options.contest)) {
    for (const std::string& page : options.pages) {
      for (int number = 0; number < options.count; ++number) {
        const std::uint64_t seed = (options.held_out ? 9000 : 8000) + static_cast<std::uint64_t>(number);
        const std::uint64_t mixture = scanmaker::SeedOf(seed, page + std::string(scanmaker::Name(grade)));
        const std::vector<scanmaker::PageTrait> traits = scanmaker::MixedTraits(FormOf(page), mixture);
        std::string name = page + "-" + std::to_string(number);
        for (const scanmaker::PageTrait trait : traits) name += "+" + std::string(scanmaker::Name(trait));
        const MadePage made = Make(page, options.held_out, number, seed);
        contest.AddScan(made, ScanWithTraits(made, grade, traits, mixture), name, grade, seed);
      }
    }
    contest.FinishGrade();
  }
  contest.Finish();
}

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  options.contest.page_lines = true;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "held-out")) {
      options.held_out = value == "held-out";
    } else if (name == "--page" && std::find(kPages.begin(), kPages.end(), value) != kPages.end()) {
      options.pages.push_back(value);
    } else if (name == "--pages") {
      options.count = std::stoi(value);
    } else {
      return Take(name, value, options.contest);
    }
    return true;
  });
  if (options.pages.empty()) {
    options.pages.assign(kPages.begin(), kPages.end());
  }
  return options;
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
