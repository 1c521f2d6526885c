// The generated parts lists that are measured: one layout for each trait that real lists have.

#ifndef BENCHLEAF_TESTS_BENCH_LIST_PAGES_H_
#define BENCHLEAF_TESTS_BENCH_LIST_PAGES_H_

#include "scan-maker/made_page.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {

// Rules and settings are chosen on the development half and on practice pages, which have the same layouts with other
// parts, in other letterings; the held-out half has others again, and is for final figures only.
enum class ListHalf { kDevelopment, kPractice, kHeldOut };

struct ListPage {
  std::string name;  // of the layout
  std::uint64_t seed = 0;
  scanmaker::MadePage made;
};

// The names of all layouts.
std::vector<std::string> ListLayoutNames();

// The page of one layout. Throws std::invalid_argument for a name that no layout has.
// Of practice pages there are as many as one asks for, by `number`.
ListPage MakeListPage(std::string_view layout, ListHalf half, int number = 0);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_LIST_PAGES_H_
