// Measures how often a page's kind is told right. Takes minutes, so it is no part of the tests.

#include "bench/benchleaf_reader.h"
#include "bench/contest.h"
#include "bench/list_pages.h"
#include "outside/outside_pages.h"
#include "places/places.h"
#include "scan-maker/locator_page.h"
#include "scan-maker/sample_manual.h"
#include "scan-maker/schematic_page.h"

#include "benchleaf/paging/paging.h"

#include <cstdint>
#include <cstdio>
#include <map>
#include <memory>
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

constexpr const char* kUsage =
    "bench_kinds [OPTION VALUE]...\n"
    "Pages of every kind, made and from outside, and the kinds that they are taken for.\n"
    "  --half dev|held-out               which outside sheets and lists (default dev)\n";

struct Options {
  ContestOptions contest;
  bool held_out = false;
};

struct KindPage {
  std::string name;
  MadePage page;
  std::uint64_t seed = 0;
};

KindPage LocatorPage(std::uint64_t seed) {
  const scanmaker::PageFurniture furniture{"", "", 5, scanmaker::UsualTextStyle(Lettering::kDrafting)};
  return {"locator-" + std::to_string(seed),
          MakeLocatorPage("TOP OF CHASSIS", ListedParts(scanmaker::RandomCircuit(6, seed)), furniture, seed), seed};
}

KindPage DrawnPage(std::uint64_t seed) {
  return {"drawing-" + std::to_string(seed),
          MakeSchematicPage(scanmaker::RandomCircuit(5, seed), {11, 8.5, "", "SAMPLE", "9", {}},
                            scanmaker::UsualDrawingStyle(Lettering::kHand, seed), seed)
              .page,
          seed};
}

void AppendManual(const std::string& name, std::vector<scanmaker::SampleFile> files, std::vector<KindPage>& pages) {
  int number = 0;
  for (scanmaker::SampleFile& file : files) {
    for (scanmaker::SamplePage& page : file.pages) {
      ++number;
      pages.push_back({name + "-" + std::to_string(number), std::move(page.page), static_cast<std::uint64_t>(number)});
    }
  }
}

std::vector<KindPage> Pages(bool held_out) {
  std::vector<KindPage> pages;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (sheet.half == (held_out ? outside::Half::kHeldOut : outside::Half::kDevelopment)) {
      pages.push_back({sheet.sheet, Draw(sheet), sheet.seed});
    }
  }
  for (const std::string& layout : ListLayoutNames()) {
    ListPage list = MakeListPage(layout, held_out ? ListHalf::kHeldOut : ListHalf::kDevelopment);
    pages.push_back({"list-" + layout, std::move(list.made), list.seed});
  }
  const std::uint64_t first = held_out ? 520 : 500;
  for (std::uint64_t seed = first; seed < first + 4; ++seed) {
    pages.push_back(LocatorPage(seed));
    pages.push_back(DrawnPage(seed));
  }
  AppendManual("larkfield", scanmaker::LarkfieldFiles(), pages);
  AppendManual("osterwick", scanmaker::OsterwickFiles(), pages);
  AppendManual("quillmark", scanmaker::QuillmarkFiles(), pages);
  AppendManual("dunmarrow", scanmaker::DunmarrowFiles(), pages);
  return pages;
}

// Of one kind of pages: how often each kind was told.
using Told = std::map<std::string, int>;

void Print(Grade grade, const std::map<std::string, Told>& all) {
  const std::string name(scanmaker::Name(grade));
  int pages = 0;
  int right = 0;
  for (const auto& [kind, told] : all) {
    int own = 0;
    std::string others;
    for (const auto& [as, count] : told) {
      own += count;
      if (as != kind) {
        others += "  " + as + " " + std::to_string(count);
      }
    }
    const int own_right = told.contains(kind) ? told.at(kind) : 0;
    std::printf("%-8s %-16s %3d of %3d %s\n", name.c_str(), kind.c_str(), own_right, own, others.c_str());
    pages += own;
    right += own_right;
  }
  std::printf("%-8s %-16s %3d of %3d  %.3f\n", name.c_str(), "all", right, pages, pages == 0 ? 0 : 1.0 * right / pages);
  static_cast<void>(std::fflush(stdout));
}

void Run(const Options& options) {
  BenchleafReader reader(options.contest.steps);
  PageDump dump(options.contest.dump);
  const auto rules = Rules::Load(SourceFolder() / "config");
  if (!rules) {
    throw std::runtime_error(rules.error().ToString());
  }
  const std::vector<KindPage> pages = Pages(options.held_out);
  for (const Grade grade : Grades(options.contest)) {
    std::map<std::string, Told> all;
    for (const KindPage& page : pages) {
      scanmaker::ScannedPage scan = DegradeMade(page.page, grade, page.seed);
      scan.truth.file = page.name;
      dump.Add(std::string(scanmaker::Name(grade)), scan);
      const PageFacts facts = DescribePage(reader.Read(scan), **rules);
      const std::string told(Name(facts.kind));
      ++all[page.page.kind][told];
      if (told != page.page.kind) {
        std::printf("%-8s %s is %s, told %s (%.2f)\n", std::string(scanmaker::Name(grade)).c_str(), page.name.c_str(),
                    page.page.kind.c_str(), told.c_str(), facts.kind_confidence);
      }
    }
    Print(grade, all);
  }
}

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "held-out")) {
      options.held_out = value == "held-out";
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
