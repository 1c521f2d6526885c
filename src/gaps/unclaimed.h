// What stands on drawings and in lists without a readable designator, and so may be a part that seems to be missing.

#ifndef BENCHLEAF_SRC_GAPS_UNCLAIMED_H_
#define BENCHLEAF_SRC_GAPS_UNCLAIMED_H_

#include "gaps/part_index.h"
#include "gaps/searched_pages.h"

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::gaps {

// Values on schematics that stand beside no designator.
class UnclaimedValues {
 public:
  explicit UnclaimedValues(const SearchedPages& pages);

  // One that is as large as the list's value of a part of this class.
  std::optional<GapPlace> Find(const std::string& listed, const std::string& letters) const;

 private:
  const SearchedPages& pages_;
  std::vector<PartPlace> values_;
};

// Rows of parts lists without a designator whose description begins like those of a class: "Tube" of V1 and V2.
class UnclaimedRows {
 public:
  UnclaimedRows(const SearchedPages& pages, const PartIndex& parts);

  // The pages that have such rows.
  std::vector<PagePlace> PagesWith(const std::string& letters) const;

 private:
  const SearchedPages& pages_;
  std::map<std::string, std::set<std::size_t>> pages_of_;  // class letters to pages
};

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_UNCLAIMED_H_
