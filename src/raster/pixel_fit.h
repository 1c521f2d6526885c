// Keeps the renderer from stretching a scan by a pixel.

#ifndef BENCHLEAF_RASTER_PIXEL_FIT_H_
#define BENCHLEAF_RASTER_PIXEL_FIT_H_

#include "raster/page_layout.h"

namespace benchleaf {

// The renderer (poppler's Splash) draws a picture on every pixel that it touches: from floor(first edge) to
// floor(last edge) + 1. A picture of 1000 px that lies on 1000 px exactly, or a hair off, becomes 1001 px, and the
// smoothing that goes with it blurs the middle of the page by half a pixel. A resolution lower by less than two pixels
// in the picture's width avoids it.

// The matrix from the page's user space to the pixels of the page as shown, origin top left, as the renderer sets it
// up, with the same roundings.
Affine DeviceMatrix(const PageLayout& layout, double x_dpi, double y_dpi);

// By how much to multiply the two resolutions so that a picture keeps its pixels: each picture pixel becomes one pixel
// of the page; where that hangs on the last bit of a number, one row or column may fall together with its neighbour.
struct PixelFit {
  double x = 1;
  double y = 1;
};

// `device` is the picture as placed on the pixels of the page at the resolution to be multiplied.
PixelFit FitToPixels(const PlacedPicture& device);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PIXEL_FIT_H_
