// From the readings of a manual's pages to everything that is known of it.

#ifndef BENCHLEAF_SRC_WORK_ASSEMBLE_MANUAL_H_
#define BENCHLEAF_SRC_WORK_ASSEMBLE_MANUAL_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"

#include <atomic>
#include <optional>
#include <vector>

namespace benchleaf {

// Describes and searches each page, carries the headings of parts lists from page to page, and links. Depends on its
// arguments only. `head` has no pages and links; `pages` come in reading order, each with a reading or a failure, and
// whatever else a page holds is made anew. Nothing when `cancel` was set in between.
std::optional<ManualRecord> AssembleManual(ManualRecord head, std::vector<PageRecord> pages, const Rules& rules,
                                           const std::atomic<bool>& cancel);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_ASSEMBLE_MANUAL_H_
