// Small manuals of invented parts and of sheets that others drew: a drawing, its parts list, some with a locator. What
// a list tells about the drawings of its manual is measured on them.

#ifndef BENCHLEAF_TESTS_BENCH_MADE_MANUALS_H_
#define BENCHLEAF_TESTS_BENCH_MADE_MANUALS_H_

#include "scan-maker/made_page.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::bench {

struct MadeManual {
  std::string name;
  std::uint64_t seed = 0;                  // of its degrading
  std::vector<scanmaker::MadePage> pages;  // drawings first, then the list
  // Of each page, the assembly whose parts it shows, as its list names it; empty for all others. Pages beyond the end
  // show none.
  std::vector<std::string> assemblies = {};
};

// Practice manuals may be looked at, but set nothing alone: assembled ones, and outside sheets.
enum class ManualHalf { kDevelopment, kHeldOut, kPractice };

// Circuits of tube sets, drawn on a sheet, listed, and shown on a locator. The seeds of the held-out half count in no
// setting.
std::vector<MadeManual> InventedManuals(ManualHalf half);

// Sets of two and three assemblies or units in which the same designators stand for other parts: a drawing for each,
// one list with a heading for each.
std::vector<MadeManual> AssembledManuals(ManualHalf half);

// A locator that calls out item numbers, plainly, in rings or by leaders, with a list of these items.
std::vector<MadeManual> ItemManuals(ManualHalf half);

// The sheets of kicad-demos of that half, each with a list of the designators on it. They have no list of their own, so
// descriptions and part numbers are invented.
std::vector<MadeManual> OutsideManuals(ManualHalf half);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_MADE_MANUALS_H_
