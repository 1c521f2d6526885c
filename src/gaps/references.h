// Figures, sections, pages and volumes that a page's words name.

#ifndef BENCHLEAF_SRC_GAPS_REFERENCES_H_
#define BENCHLEAF_SRC_GAPS_REFERENCES_H_

#include "benchleaf/record/manual_record.h"

#include <string>
#include <vector>

namespace benchleaf::gaps {

enum class Named { kFigure, kSection, kPage, kVolume };

struct Reference {
  Named named = Named::kFigure;
  std::string number;       // "5-3", "4", "IV"
  bool is_caption = false;  // it stands where the thing itself is, not where it is spoken of
  std::string read;
  FractionBox box;        // of its words, on the page as scanned
  double confidence = 0;  // 0 to 1, of the least surely read word
};

// In reading order. A line that begins with a figure's or section's number is its caption, but on pages of contents; on
// drawings a figure's number is one wherever it stands. On pages of contents the number at a line's end is a page's.
std::vector<Reference> ReferencesOn(const PageRecord& page);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_REFERENCES_H_
