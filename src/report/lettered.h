// Lettering put into colour pictures.

#ifndef BENCHLEAF_SRC_REPORT_LETTERED_H_
#define BENCHLEAF_SRC_REPORT_LETTERED_H_

#include "benchleaf/core/image.h"
#include "benchleaf/report/picture.h"

namespace benchleaf {

// Draws a label, in that colour, with its upper left corner at x, y; what lies beyond the picture is left out.
void DrawLettering(ColorImage& image, const GreyImage& label, int x, int y, const Rgb& color);

// Fills the box, as far as it lies in the picture: 1 covers all, 0 nothing.
void FillBox(ColorImage& image, const Box& box, const Rgb& color, double cover = 1);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_LETTERED_H_
