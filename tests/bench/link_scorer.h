// Judges the links between a manual's parts list and its drawings.

#ifndef BENCHLEAF_TESTS_BENCH_LINK_SCORER_H_
#define BENCHLEAF_TESTS_BENCH_LINK_SCORER_H_

#include "scan-maker/truth.h"

#include "benchleaf/record/manual_record.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::bench {

// What really stands on one page of a manual, and the assembly whose parts it shows; empty when it shows no assembly of
// its own.
struct PageAsItIs {
  scanmaker::PageTruth truth;
  std::string assembly;
};

// A row of a list and a place where its part is drawn. Positions count in the pages, their entries and their terms.
struct TrueLink {
  std::size_t entry_page = 0;
  std::size_t entry = 0;
  std::size_t seen_page = 0;
  std::size_t term = 0;
};

struct JudgedLinks {
  std::vector<TrueLink> there;
  std::vector<bool> found;  // of each of `there`
  std::vector<bool> right;  // of each link of the manual
};

// All that should be linked: every row that names a designator or an item number, with each place of a drawing that
// bears it or, where the list has no row for the section itself, a section of it (C1A of C1). A drawing of one assembly
// belongs to the rows of that assembly alone.
std::vector<TrueLink> TrueLinks(const std::vector<PageAsItIs>& pages);

// A link is right when its row is one of the list (same designator and assembly, in the same place), its sighting is a
// designator or item of the drawing (same text but for a prefixed assembly, in the same place) and the two belong
// together. Each true link is found once; a second link to the same row and place is wrong. REQUIRES: `pages` are the
// manual's pages in their order.
JudgedLinks JudgeLinks(const std::vector<PageAsItIs>& pages, const ManualRecord& manual);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_LINK_SCORER_H_
