// Operations on whole pictures, each from value to value. Sizes are in px. Operations that take a picture by value work
// in its place: a fold-out in grey is over 100 MB.

#ifndef BENCHLEAF_PIXELS_OPERATIONS_H_
#define BENCHLEAF_PIXELS_OPERATIONS_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// The picture `factor` times as large: linear, and by area under 0.7 times.
GreyImage Scaled(GreyImage image, double factor);

// The picture `factor` times as large, by area; `factor` is at most 1.
GreyImage Shrunk(const GreyImage& image, double factor);

// The picture `factor` times as large, smoothly (bicubic). Slower than Scaled, and truer to thin strokes.
GreyImage Enlarged(const GreyImage& image, double factor);

// The picture turned clockwise about its centre by a small angle, keeping its size; what comes in is white.
GreyImage Leveled(GreyImage image, double degrees);

// Each pixel the mean of those up to `radius` px away in either direction.
GreyImage Blurred(GreyImage image, int radius);

// The page divided by its own ground, so that paper is near white everywhere, whatever the lamp and the stains did.
// `ground_px` is the width of the largest stroke or patch that still counts as ink. In deep shade (a binding, a curled
// edge, a photograph) ink stays paler than elsewhere and noise stays noise.
GreyImage WithEvenGround(GreyImage image, int ground_px);

// Ink that is darker than one level.
InkImage Thresholded(const GreyImage& image, std::uint8_t ink_below);

// The picture turned clockwise by 90 degrees.
InkImage OnItsSide(const InkImage& image);

// Ink by Sauvola's local threshold, t = m (1 - k (1 - s / 128)), over windows of 2 * `half_window` + 1 px
// (J. Sauvola, M. Pietikainen, Adaptive document image binarization, Pattern Recognition 33 (2000) 225-236).
InkImage Binarized(const GreyImage& image, int half_window, double k);

// Ink that stays when a brick of width x height px must fit into it; ink with gaps closed that such a brick bridges.
InkImage Opened(const InkImage& image, int width, int height);
InkImage Closed(const InkImage& image, int width, int height);

// Ink, and what such a brick covers whose middle lies on ink.
InkImage Dilated(const InkImage& image, int width, int height);

struct Skew {
  double degrees = 0;     // clockwise turn that makes the page level
  double confidence = 0;  // ratio of the best to the worst row profile; 1 for none, 3 and more for a sure one
};

// The skew by the sharpest row profile, within `range_degrees` to either side. Rows of text and horizontal rules both
// tell it.
Skew FindSkew(const InkImage& image, double range_degrees);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_OPERATIONS_H_
