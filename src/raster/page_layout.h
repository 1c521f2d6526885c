// Where a PDF page places its pictures, and the resolution that follows from it.

#ifndef BENCHLEAF_RASTER_PAGE_LAYOUT_H_
#define BENCHLEAF_RASTER_PAGE_LAYOUT_H_

#include "benchleaf/core/result.h"
#include "benchleaf/raster/page_source.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace benchleaf {

// A PDF matrix (ISO 32000-1, 8.3.4): (x, y) goes to (a x + c y + e, b x + d y + f).
struct Affine {
  double a = 1;
  double b = 0;
  double c = 0;
  double d = 1;
  double e = 0;
  double f = 0;

  friend bool operator==(const Affine&, const Affine&) = default;
};

// The matrix that does `first` and then `second`.
Affine Chained(const Affine& first, const Affine& second);

// A picture as a page draws it: `placement` takes the unit square, which the picture fills, to the page's user space,
// whose unit is 1/72 inch. Mirrored and turned placements are common.
struct PlacedPicture {
  int width = 0;   // px, of the picture or its mask, whichever is finer
  int height = 0;  // px
  Affine placement;

  friend bool operator==(const PlacedPicture&, const PlacedPicture&) = default;
};

struct PageLayout {
  // The visible part of the page in user space, before turning.
  double left = 0;
  double bottom = 0;
  double width = 0;
  double height = 0;
  int turn = 0;  // degrees clockwise by which the page is turned for showing: 0, 90, 180 or 270
  std::vector<PlacedPicture> pictures;
};

struct RenderResolution {
  double x_dpi = 0;  // along the rows of the page as shown
  double y_dpi = 0;
  // The picture whose own resolution this is, by its place in PageLayout::pictures; nothing when several make it up or
  // when it was limited.
  std::optional<std::size_t> picture;

  double dpi() const { return (x_dpi + y_dpi) / 2; }
};

// The resolution at which the page's pictures come out pixel by pixel: the highest of the resolutions whose pictures
// cover at least a quarter of the area under pictures, else that which covers most; 300 dpi when there are none. It is
// kept within 50 to 1200 dpi, then lowered until the page fits the limits. The axes differ by at most 2 % (a page box
// rounded to points); pictures with oblong pixels (fax, 204 x 98 dpi) get the higher resolution in both.
//
// The picture may claim too much or too little: a page box with as many points as the scan has pixels makes 72 dpi of
// any scan. That is left to those who see the lettering.
//
// Fails with kDamaged when the page has no area, and with kTooLarge when a picture is over the limits or the page
// would fit them below 50 dpi only; the errors name no file or page.
Result<RenderResolution> NativeResolution(const PageLayout& layout, const RasterLimits& limits);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PAGE_LAYOUT_H_
