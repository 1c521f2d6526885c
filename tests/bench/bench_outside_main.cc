// Measures how many of the designators of schematics that others drew are found, at each grade of bad scan: benchleaf
// against bare Tesseract. Takes minutes, so it is no part of the tests.

#include "bench/contest.h"
#include "outside/outside_pages.h"

#include <cstdio>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr const char* kUsage =
    "bench_outside [OPTION VALUE]...\n"
    "  --half dev|held-out|practice|all  which sheets; held-out ones are for final figures only, and all are dev and\n"
    "                                    held-out (default all)\n";

struct Options {
  ContestOptions contest;
  std::optional<outside::Half> half;  // both counted halves when empty
};

std::optional<outside::Half> HalfNamed(std::string_view name) {
  if (name == "dev") {
    return outside::Half::kDevelopment;
  }
  if (name == "held-out") {
    return outside::Half::kHeldOut;
  }
  return name == "practice" ? std::optional(outside::Half::kPractice) : std::nullopt;
}

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "all" || HalfNamed(value))) {
      options.half = HalfNamed(value);
      return true;
    }
    return Take(name, value, options.contest);
  });
  return options;
}

void Run(const Options& options) {
  std::vector<outside::OutsidePage> sheets;
  int designators = 0;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (options.half ? sheet.half == *options.half : sheet.half != outside::Half::kPractice) {
      sheets.push_back(sheet);
      designators += sheet.designators;
    }
  }
  std::printf(
      "%zu sheets, %d designators; tube types are lettered in place of the types of integrated circuits and "
      "transistors\n",
      sheets.size(), designators);
  Contest contest(options.contest);
  for (const scanmaker::Grade grade : Grades(options.contest)) {
    for (const outside::OutsidePage& sheet : sheets) contest.Add(Draw(sheet), sheet.sheet, grade, sheet.seed);
    contest.FinishGrade();
  }
  contest.Finish();
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
