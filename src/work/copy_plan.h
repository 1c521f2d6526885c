// What a searchable copy is made of, as a file that the parent writes and the worker reads: it is too long for a job.

#ifndef BENCHLEAF_SRC_WORK_COPY_PLAN_H_
#define BENCHLEAF_SRC_WORK_COPY_PLAN_H_

#include "benchleaf/core/result.h"
#include "benchleaf/raster/searchable_copy.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// Fields as in messages: number of pages and for each text path, text name, numbers page and dpi (in hundredths),
// number of words and for each text and six coordinates in millionths of the page, a million more than they are.
// Coordinates are cut to -1..2.
std::string EncodeCopyPlan(const std::vector<PageToCopy>& pages);

// Fails with kDamaged for bytes that do not fit.
Result<std::vector<PageToCopy>> DecodeCopyPlan(std::string_view bytes);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_COPY_PLAN_H_
