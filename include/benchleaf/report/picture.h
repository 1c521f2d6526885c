// Pictures of a spot on a page, ringed, for a person at the bench.

#ifndef BENCHLEAF_REPORT_PICTURE_H_
#define BENCHLEAF_REPORT_PICTURE_H_

#include "benchleaf/core/image.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf {

// A ring: a closed band at an even distance round a box, so that it never covers what it points at, with a light
// halo on both sides that keeps it visible on grey, black and coloured ground. What lies under it shines through.
struct Ring {
  double gap_px = 0;    // clear space between the box and the halo
  double width_px = 0;  // of the band; the halo takes half of this on either side
};

// The colour of the band: a magenta that no ink of a printed manual or repairman's pencil is likely to have.
struct Rgb {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
};
inline constexpr Rgb kRingColor{0xC4, 0x14, 0x8E};

// Draws the ring into the picture, smooth-edged; parts of it beyond the picture are left out.
// REQUIRES: the box is not empty.
void DrawRing(ColorImage& image, const Box& box, const Ring& ring);

// The pixels that hold the fractions, at least one, within a picture of that size.
// REQUIRES: the picture is not empty.
Box PixelBox(int width_px, int height_px, const FractionBox& box);

// A spot to be ringed.
struct Mark {
  FractionBox box;
  std::string label;  // stands beside the ring; empty: none
};

// What to show of a page for the spots on it.
struct SpotView {
  Box part;                 // px of the page: the spots with some twenty letters to either side
  std::vector<Mark> marks;  // their boxes within `part`
};
// REQUIRES: there is a mark.
SpotView ViewOfSpots(int page_width, int page_height, const std::vector<Mark>& marks);

// The spots with their surroundings, ringed. `part` is cut from the page as scanned, at any scale, and the marks lie on
// it; the picture is turned clockwise by `orientation` (0, 90, 180 or 270 degrees) so that the page stands upright.
// `side_px` is how long its longer side becomes, as far as an enlargement by 4 reaches; 0 leaves it as scanned, and
// enlarges only where the scan is so coarse that its lettering would be small.
ColorImage RingedSpots(const ColorImage& part, const std::vector<Mark>& marks, int orientation, int side_px);

// The whole page, upright and at most `max_side_px` a side, with the spots ringed wide enough to be seen at once.
ColorImage RingedPage(const ColorImage& page, const std::vector<Mark>& marks, int orientation, int max_side_px);

// The spot ringed in a picture of at most that size, for a sheet of many.
ColorImage RingedThumb(const ColorImage& part, const FractionBox& spot, int orientation, int max_width_px,
                       int max_height_px);

// The whole page, upright and at most `max_side_px` a side, without a ring.
ColorImage UprightPage(const ColorImage& page, int orientation, int max_side_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_PICTURE_H_
