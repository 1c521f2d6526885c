// Measures how well invented parts lists are read, layout by layout, at each grade of bad scan. Takes minutes, so it is
// no part of the tests.

#include "bench/contest.h"
#include "bench/list_pages.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {
namespace {

std::string Usage() {
  std::string usage =
      "bench_lists [OPTION VALUE]...\n"
      "Recall and precision of designators, part numbers, tubes and whole rows (assembly, designator and part "
      "number).\n"
      "  --half dev|practice|held-out      which parts and letterings; held-out is for final figures only (default "
      "dev)\n"
      "  --pages N                         so many practice pages of each layout (default 1)\n"
      "  --layout NAME                     may be given several times (default all)\n"
      "  --words printed                   do not read: take the words as they were printed, so that only rules can "
      "err\n"
      "  --readings DIR                    keep what is read in the folder, and take it from there the next time\n"
      "Layouts:";
  for (const std::string& name : ListLayoutNames()) {
    usage += " " + name;
  }
  return usage + "\n";
}

struct Options {
  ContestOptions contest;
  ListHalf half = ListHalf::kDevelopment;
  std::vector<std::string> layouts;
  int pages = 1;
};

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  options.contest.page_lines = true;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "practice" || value == "held-out")) {
      options.half = value == "dev"        ? ListHalf::kDevelopment
                     : value == "practice" ? ListHalf::kPractice
                                           : ListHalf::kHeldOut;
    } else if (name == "--pages") {
      options.pages = std::stoi(value);
    } else if (name == "--layout") {
      options.layouts.push_back(value);
    } else if (name == "--words" && value == "printed") {
      options.contest.printed = true;
      options.contest.bare = false;
      options.contest.grades = {scanmaker::Grade::kClean};
    } else if (name == "--readings") {
      options.contest.readings = value;
    } else {
      return Take(name, value, options.contest);
    }
    return true;
  });
  if (options.layouts.empty()) {
    options.layouts = ListLayoutNames();
  }
  return options;
}

void Run(const Options& options) {
  Contest contest(options.contest);
  for (const scanmaker::Grade grade : Grades(options.contest)) {
    for (const std::string& layout : options.layouts) {
      for (int number = 0; number < options.pages; ++number) {
        const ListPage page = MakeListPage(layout, options.half, number);
        contest.Add(page.made, page.name, grade, page.seed);
      }
    }
    contest.FinishGrade();
  }
  contest.Finish();
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(Usage(), argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
