// Tells what kind of page this is, from its words and its line statistics. Pure.

#ifndef BENCHLEAF_PAGING_PAGING_H_
#define BENCHLEAF_PAGING_PAGING_H_

#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/paging/page_facts.h"
#include "benchleaf/reading/page_reading.h"

namespace benchleaf {

// Words that tell a kind come from config/page-kinds.tsv. A page without words is kOther.
// `rows` are what ReadRows gives of the same page.
PageFacts DescribePage(const PageReading& reading, const PageRows& rows, const Rules& rules);
PageFacts DescribePage(const PageReading& reading, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_PAGING_PAGING_H_
