// The pages of a manual as the searches for gaps see them: where they are, and how well they were read.

#ifndef BENCHLEAF_SRC_GAPS_SEARCHED_PAGES_H_
#define BENCHLEAF_SRC_GAPS_SEARCHED_PAGES_H_

#include "benchleaf/gaps/find_gaps.h"

#include <cstddef>
#include <initializer_list>
#include <vector>

namespace benchleaf::gaps {

// What is read less surely than this is no witness that something is there (see kSureText in DEVELOPERS.md).
inline constexpr double kSureText = 0.5;

class SearchedPages {
 public:
  explicit SearchedPages(const ManualRecord& manual);

  const ManualRecord& manual() const { return manual_; }
  const std::vector<PageQuality>& qualities() const { return qualities_; }
  bool IsBad(std::size_t page) const { return qualities_[page].badly_read; }
  const PagePlace& PlaceOf(std::size_t page) const { return qualities_[page].place; }
  GapPlace At(std::size_t page, std::optional<FractionBox> box, std::string read) const;

  // Badly read pages of these kinds, and those whose kind could not be told; of all kinds when none is given.
  std::vector<PagePlace> BadPages(std::initializer_list<PageKind> kinds = {}) const;

 private:
  const ManualRecord& manual_;
  std::vector<PageQuality> qualities_;
};

// kMissing, or kNotSeen with the badly read pages named.
void GradeAbsence(Gap& gap, std::vector<PagePlace> badly_read);

// "page 8-3" of a place, as a person names it: the printed number where there is one.
std::string PageName(const PagePlace& place);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_SEARCHED_PAGES_H_
