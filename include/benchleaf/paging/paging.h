// Tells what kind of page this is, from its words and its line statistics. Pure.

#ifndef BENCHLEAF_PAGING_PAGING_H_
#define BENCHLEAF_PAGING_PAGING_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/paging/page_facts.h"
#include "benchleaf/reading/page_reading.h"

namespace benchleaf {

// Words that tell a kind come from config/page-kinds.tsv. A page without words is kOther.
PageFacts DescribePage(const PageReading& reading, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_PAGING_PAGING_H_
