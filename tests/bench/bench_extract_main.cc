// Measures how long it takes to search pages that are read already, as `index` does after a change of the rules, and
// how that grows with what stands on a page. Seconds, on invented pages.

#include "bench/made_records.h"
#include "places/places.h"
#include "work/assemble_manual.h"

#include "benchleaf/core/fnv.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/record/codec.h"

#include <atomic>
#include <cstdio>
#include <ctime>
#include <exception>
#include <functional>
#include <iostream>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr const char* kUsage =
    "bench_extract [--manuals N] [--largest N]\n"
    "  --manuals N   manuals of 50 pages for the pages a second (default 20)\n"
    "  --largest N   rows of the largest list and parts of the largest drawing (default 4000)\n";

// Of the processor: others on the machine do not count.
double SecondsOf(const std::function<void()>& work) {
  const std::clock_t start = std::clock();
  work();
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

// Searches pages, and keeps a digest of all that it finds: while that stays, a change has cost no result.
class Searching {
 public:
  explicit Searching(const Rules& rules) : rules_(rules) {}

  double Seconds(std::vector<PageRecord> pages) {
    const std::atomic<bool> never{false};
    std::optional<ManualRecord> manual;
    const double seconds = SecondsOf([&] { manual = AssembleManual({}, std::move(pages), rules_, never); });
    found_.AddWhole(ExportLines(*manual));
    return seconds;
  }

  std::string Digest() const { return found_.Hex(); }

 private:
  const Rules& rules_;
  Fnv found_;
};

PageRecord Page(PageReading reading) {
  PageRecord page;
  page.reading = std::move(reading);
  return page;
}

void TellGrowth(int largest, Searching& search) {
  std::printf("%6s %12s %9s %15s %9s %15s %9s\n", "parts", "one list, s", "ms a row", "one drawing, s", "ms a part",
              "list+drawing, s", "ms a part");
  for (int parts = 250; parts <= largest; parts *= 2) {
    const double list = search.Seconds({Page(MakeListPage(1, parts))});
    const double drawing = search.Seconds({Page(MakeDrawing(1, parts))});
    const double both = search.Seconds({Page(MakeDrawing(1, parts)), Page(MakeListPage(1, parts))});
    std::printf("%6d %12.3f %9.3f %15.3f %9.3f %15.3f %9.3f\n", parts, list, 1e3 * list / parts, drawing,
                1e3 * drawing / parts, both, 1e3 * both / parts);
    static_cast<void>(std::fflush(stdout));
  }
}

void TellPagesASecond(int manuals, Searching& search) {
  constexpr int kPages = 50;
  double seconds = 0;
  for (int i = 0; i < manuals; ++i) {
    seconds += search.Seconds(MakeRecord(static_cast<std::uint64_t>(i), kPages).pages);
  }
  std::printf("\n%d manuals of %d pages: %.0f pages/s, one thread\n", manuals, kPages, manuals * kPages / seconds);
}

void Run(const std::vector<std::string>& arguments) {
  int manuals = 20;
  int largest = 4000;
  for (std::size_t i = 0; i < arguments.size(); i += 2) {
    if (i + 1 == arguments.size() || (arguments[i] != "--manuals" && arguments[i] != "--largest")) {
      throw std::invalid_argument(arguments[i] + " is not understood");
    }
    (arguments[i] == "--manuals" ? manuals : largest) = std::stoi(arguments[i + 1]);
  }
  const auto rules = Rules::Load(SourceFolder() / "config");
  if (!rules) {
    throw std::runtime_error(rules.error().ToString());
  }
  Searching search(**rules);
  TellGrowth(largest, search);
  TellPagesASecond(manuals, search);
  std::printf("digest of all that was found: %s\n", search.Digest().c_str());
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  try {
    benchleaf::bench::Run({argv + 1, argv + argc});
    return 0;
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n' << benchleaf::bench::kUsage;
    return 2;
  }
}
