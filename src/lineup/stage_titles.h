// The titles of a drawing's stages ("HORIZONTAL OUTPUT"), and the tubes that they stand at.

#ifndef BENCHLEAF_SRC_LINEUP_STAGE_TITLES_H_
#define BENCHLEAF_SRC_LINEUP_STAGE_TITLES_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/lineup/tube_functions.h"
#include "benchleaf/record/manual_record.h"

#include <string>
#include <vector>

namespace benchleaf::lineup {

// Words that name a function, at a tube.
struct StageTitle {
  std::string designator;  // of the tube, with its assembly: V2, V2A, A4V2
  std::string function;
  std::string read;       // as read
  FractionBox box;        // of the words, on the page as scanned
  double confidence = 0;  // 0 to 1, of the least surely read word
};

// Of drawings the titles near a tube's designator, each at the nearest one; of pages of text the words that stand in a
// row behind a tube's type. In the order of the page.
std::vector<StageTitle> StageTitlesOf(const PageRecord& page, const TubeFunctions& functions);

}  // namespace benchleaf::lineup

#endif  // BENCHLEAF_SRC_LINEUP_STAGE_TITLES_H_
