// Terms found on a page, still in px of the level page, and what the page as a whole says about them.

#ifndef BENCHLEAF_SRC_EXTRACT_PAGE_TERMS_H_
#define BENCHLEAF_SRC_EXTRACT_PAGE_TERMS_H_

#include "extract/page_bands.h"
#include "extract/pieces.h"
#include "extract/rule_tables.h"
#include "extract/terms.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::extract {

// On drawings, scraps of symbols are read as designators, with little confidence. Below this, weighed by the numbers
// beside them, hardly any more are right than wrong, and what cannot be read is better said to be unread.
inline constexpr double kLeastSureOnDrawings = 0.25;
// In lists the other rows have already spoken for or against a designator.
inline constexpr double kLeastSureInLists = 0.2;
// Of 24 tube types that were read less surely than this on the pages of `bench_mixed`, 5 were right. In lists, whose
// rows tell that a tube is meant, nearly half are.
inline constexpr double kLeastSureTubeOnDrawings = 0.1;

struct PageTerm {
  Term term;
  std::string read;
  Box box;  // px of the level page
  int turn = 0;
  double confidence = 0;  // of reading and form, 0 to 1
  std::string assembly;
  bool mentioned = false;  // a list's words speak of it: SAME AS R4
};

// The boxes of one kind of thing on a page.
class Places {
 public:
  Places() : bands_(1, 1) {}
  // `bottom` of the page, px; `count` of boxes that will be added, about.
  Places(int bottom, std::size_t count) : bands_(bottom, count) {}

  void Add(const Box& box) {
    bands_.Add(boxes_.size(), box.y, box.bottom());
    boxes_.push_back(box);
  }

  // The position of the first box, in the order of adding, of which `test` is true; nothing when there is none. Only
  // boxes beside `around` are tried, and those that lie up to `reach` px above or below it.
  template <class Test>
  std::optional<std::size_t> First(const Box& around, double reach, const Test& test) const {
    for (const std::size_t i : bands_.Beside(around.y - reach, around.bottom() + reach)) {
      if (test(boxes_[i])) {
        return i;
      }
    }
    return std::nullopt;
  }

  // The first box that shares more than half of the smaller one's area.
  std::optional<std::size_t> FirstOn(const Box& box) const {
    return First(box, 0, [&](const Box& other) { return OverlapOfSmaller(other, box) > 0.5; });
  }

 private:
  std::vector<Box> boxes_;
  PageBands bands_;
};

// What the page tells before its words are looked at one by one.
struct PageSense {
  bool list = false;        // it holds a parts list
  bool alignment = false;   // it speaks of alignment: A1 to A10 are points, not assemblies
  bool rkm_in_use = false;  // values are written as 4K7
  std::string assembly;     // the one that the page shows, empty when none or several are named
  Places tube_designators;
  double cap = 1;  // capital height, px
};

// All but the assembly.
PageSense SenseOf(const std::vector<Piece>& pieces, bool list, double cap, const Rules::Tables& tables);

// The assembly that a drawing shows by what its upright lines say; empty when they name none or several.
std::string AssemblyNamedBy(const std::vector<Line>& lines, const Rules::Tables& tables);

// The terms of pieces that stand in lines, words joined that a reader or a draughtsman spaced apart.
std::vector<PageTerm> TermsOfLines(const std::vector<Line>& lines, const PageSense& sense, const Rules::Tables& tables);

// The terms of one piece by itself.
std::vector<PageTerm> TermsOfPiece(const Piece& piece, const PageSense& sense, const Rules::Tables& tables);

// What only the whole page can tell: a section letter B without its A is an 8; of terms seen twice in one place the
// surer one stays; terms that are too unsure go.
void SettleTerms(std::vector<PageTerm>& terms, const PageSense& sense, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PAGE_TERMS_H_
