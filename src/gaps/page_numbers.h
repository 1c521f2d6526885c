// The numbers printed on a manual's pages, with misread ones taken out.

#ifndef BENCHLEAF_SRC_GAPS_PAGE_NUMBERS_H_
#define BENCHLEAF_SRC_GAPS_PAGE_NUMBERS_H_

#include "benchleaf/record/manual_record.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::gaps {

struct NumberedPage {
  std::size_t page = 0;  // position in the manual
  std::string prefix;    // "8-" of 8-17; empty for 42
  int number = 0;        // 17

  // 8; 0 where the numbers name no section.
  int Section() const;
};

// A printed number in its parts; nothing for what is none.
std::optional<NumberedPage> ParsePageNumber(const std::string& printed, std::size_t page);

// In reading order. Within a volume and prefix the numbers rise: of those that contradict each other the ones that go
// with most others and with the count of the pages stay.
std::vector<NumberedPage> NumberedPages(const ManualRecord& manual);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_PAGE_NUMBERS_H_
