// Decides what has to be done for each manual: nothing, search its pages again, or read some of them.
//
// Nothing that is in the index is lost by a bad day of the library:
// - A file that cannot be opened or read now keeps the pages that it gave before, under their old content keys, and is
//   recorded with its failure. Once it is whole again, its pages are known again, or are read if its content is new.
// - A page that fails under a new reader keeps the reading that the index has of the same content.
// - Only a file that is gone from a folder that could be listed takes its pages with it.

#ifndef BENCHLEAF_SRC_WORK_PLAN_H_
#define BENCHLEAF_SRC_WORK_PLAN_H_

#include "work/index_outline.h"

#include "benchleaf/core/result.h"
#include "benchleaf/library/library.h"
#include "benchleaf/record/manual_record.h"

#include <map>
#include <string>
#include <vector>

namespace benchleaf {

struct PlannedPage {
  std::string file;
  int page = 1;
  int volume = 1;
  std::string content_key;
  bool known = false;  // to be taken from the index; otherwise to be read

  friend bool operator==(const PlannedPage&, const PlannedPage&) = default;
};

enum class ManualWork {
  kNothing,   // the index has it as it stands
  kAssemble,  // search the pages, after reading those that are not known
  kRemove,    // none of its files is left
};

struct ManualPlan {
  ManualWork work = ManualWork::kNothing;
  ManualRecord head;               // as it is to be stored, with its files, without pages and links
  std::vector<PlannedPage> pages;  // in reading order
  // Some known pages are those of another manual of the index, as after a file has moved: to be done before that
  // manual is replaced or removed, or they must be read.
  bool takes_from_others = false;
  // Files that could not be opened now, and pages known to be unreadable.
  std::vector<Error> failures;
};

// What holds for the whole run.
struct PlanTerms {
  std::string reading_fingerprint;
  std::string rules_fingerprint;
  bool read_again = false;
};

using PageCounts = std::map<std::string, Result<int>>;  // by path

// The files whose pages the index cannot tell.
std::vector<const ScanFile*> FilesToCount(const ScannedLibrary& library, const IndexOutline& outline);

// One plan for each manual of the library, in its order, then one for each other manual of the index.
// REQUIRES: `counts` has every path that FilesToCount gives.
std::vector<ManualPlan> PlanManuals(const ScannedLibrary& library, const IndexOutline& outline,
                                    const PageCounts& counts, const PlanTerms& terms);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_PLAN_H_
