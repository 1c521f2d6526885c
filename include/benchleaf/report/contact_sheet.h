// Many spots side by side on a sheet, each under its own name: a tube in every set that uses it.

#ifndef BENCHLEAF_REPORT_CONTACT_SHEET_H_
#define BENCHLEAF_REPORT_CONTACT_SHEET_H_

#include "benchleaf/core/image.h"
#include "benchleaf/report/pictured.h"

#include <string>
#include <vector>

namespace benchleaf {

struct SheetCell {
  SheetCaption caption;
  ColorImage picture;   // of the spot, ringed, no larger than ThumbSize tells; empty when there is none
  std::string failure;  // stands in place of the picture then
};

inline constexpr int kCellsPerRow = 3;
inline constexpr int kCellsPerSheet = 15;

// Px that a cell leaves for its picture on a sheet of that height; a full sheet has the shape of A4 paper.
struct ThumbSize {
  int width = 0;
  int height = 0;
};
ThumbSize ThumbOn(int sheet_height_px);

// A sheet with its title, and "sheet 1 of 3" where there are several; as high as its rows need.
// REQUIRES: one to kCellsPerSheet cells, sheet_height_px >= 400.
ColorImage ContactSheet(const std::string& title, const std::string& number, const std::vector<SheetCell>& cells,
                        int sheet_height_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_CONTACT_SHEET_H_
