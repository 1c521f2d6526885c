// Measures how many rows of invented parts lists are read rightly, at each grade of bad scan. Takes minutes, so it is
// no part of the tests.

#include "bench/contest.h"
#include "scan-maker/parts_list_page.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {
namespace {

using scanmaker::Grouping;
using scanmaker::Lettering;
using scanmaker::ListForm;
using scanmaker::ListLayout;

struct ListPage {
  const char* name;
  ListLayout layout;
  Lettering lettering;
  std::uint64_t seed;
};

// Two of each form; odd seeds without assemblies, even ones with.
const std::vector<ListPage>& ListPages() {
  static const std::vector<ListPage> kPages = {
      {"columns", {ListForm::kColumns, 1, Grouping::kNone}, Lettering::kTypewriter, 301},
      {"columns, two abreast", {ListForm::kColumns, 2, Grouping::kNone}, Lettering::kTypewriter, 302},
      {"columns, quantities", {ListForm::kColumns, 1, Grouping::kThrough, true}, Lettering::kBook, 303},
      {"leaders", {ListForm::kLeaders, 1, Grouping::kNone}, Lettering::kTypewriter, 304},
      {"leaders, grouped", {ListForm::kLeaders, 1, Grouping::kDashes}, Lettering::kBook, 305},
      {"ruled", {ListForm::kRuled, 1, Grouping::kNone, true}, Lettering::kTypewriter, 306},
      {"ruled, grouped", {ListForm::kRuled, 1, Grouping::kDashes}, Lettering::kDrafting, 307},
      {"designator last", {ListForm::kDesignatorLast, 1, Grouping::kNone}, Lettering::kTypewriter, 308},
  };
  return kPages;
}

void Run(const ContestOptions& options) {
  Contest contest(options);
  for (const scanmaker::Grade grade : Grades(options)) {
    for (const ListPage& page : ListPages()) {
      contest.Add(scanmaker::MakeRandomPartsListPage(page.layout, page.lettering, page.seed), page.name, grade,
                  page.seed);
    }
    contest.FinishGrade();
  }
  contest.Finish();
}

ContestOptions Parse(const std::vector<std::string>& arguments) {
  ContestOptions options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) { return Take(name, value, options); });
  return options;
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench("bench_lists [OPTION VALUE]...\n", argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}
