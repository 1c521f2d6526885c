// Pages of one scanned file, as pictures at the resolution at which they were scanned.

#ifndef BENCHLEAF_RASTER_PAGE_SOURCE_H_
#define BENCHLEAF_RASTER_PAGE_SOURCE_H_

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

// A word of the hidden text layer that some scanning programs put behind a page.
struct LayerWord {
  std::string text;  // UTF-8
  FractionBox box;   // of the page as scanned
  int turn = 0;      // degrees clockwise that the word stands turned from upright: 0, 90, 180 or 270

  friend bool operator==(const LayerWord&, const LayerWord&) = default;
};

// A page as scanned.
struct RasterPage {
  GreyImage image;
  double dpi = 0;                // of `image`; 0 when the file does not say
  std::vector<LayerWord> layer;  // empty when the file has none
};

// Sizes over which a page is refused rather than decoded, against decompression bombs.
struct RasterLimits {
  int max_side_px = 32000;                // Tesseract refuses 32,768
  std::int64_t max_pixels = 400'000'000;  // 20,000 x 20,000
  std::int64_t max_file_bytes = 4'000'000'000;
};

// An open scan. Not safe for use by several threads.
class PageSource {
 public:
  virtual ~PageSource() = default;

  // At least 1.
  virtual int page_count() const = 0;

  // The page in grey; `page` counts from 1. A PDF page is rendered at the resolution of its largest embedded picture,
  // so that layers of other resolutions survive; a page that holds none (drawn, not scanned) at 300 dpi.
  // Fails with kDamaged, kTooLarge or kUnsupported; the error names the file and page.
  virtual Result<RasterPage> Load(int page) = 0;

  // The page in its own colours, with its longer side at most `max_side_px` px, for pictures that a person looks at.
  virtual Result<ColorImage> LoadColor(int page, int max_side_px) = 0;
};

// Opens a PDF, TIFF, PNG or JPEG by its content, not its name. `path` is where the file lies, `name` what errors call
// it. Fails with kMissing, kEmpty (zero bytes), kDamaged (also a file that is no scan at all), kLocked (a PDF that
// wants a password), kUnsupported or kTooLarge.
Result<std::unique_ptr<PageSource>> OpenScan(const std::filesystem::path& path, const std::string& name,
                                             const RasterLimits& limits = {});

// Writes a picture as PNG, beside the target first and then renamed, so that no half file is left.
Result<void> WritePng(const std::filesystem::path& path, const ColorImage& image);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PAGE_SOURCE_H_
