// Pages of invented manuals as records, without pictures: what an index of a million pages is measured on.

#ifndef BENCHLEAF_TESTS_BENCH_MADE_RECORDS_H_
#define BENCHLEAF_TESTS_BENCH_MADE_RECORDS_H_

#include "benchleaf/reading/page_reading.h"
#include "benchleaf/record/manual_record.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::bench {

// Terms that stand on the pages of a manual, to be asked for.
struct MadeTerms {
  std::string set;
  std::vector<std::string> designators;
  std::vector<std::string> tubes;
  std::vector<std::string> part_numbers;
};

// A manual of a tube set before it is searched: the head, and pages with readings. Of ten pages two are drawings, two
// parts lists, six text; drawings and lists name the same parts. One word in fifteen is misread, one in four has
// alternatives, as on scans of a middling grade; the words of text follow Zipf's law.
struct MadeRecord {
  ManualRecord head;
  std::vector<PageRecord> pages;
};

// The manual of that number with so many pages, always the same. Every maker, model and number in it is invented.
MadeRecord MakeRecord(std::uint64_t number, int pages);
// What stands on it.
MadeTerms MakeTerms(std::uint64_t number, int pages);

// A parts-list page of so many rows, whatever paper would hold, read as those are.
PageReading MakeListPage(std::uint64_t seed, int rows);

// A drawing with so many designators, each with its value beside it.
PageReading MakeDrawing(std::uint64_t seed, int parts);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_MADE_RECORDS_H_
