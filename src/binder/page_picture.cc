#include "benchleaf/binder/page_picture.h"

#include "benchleaf/pixels/image_file.h"
#include "benchleaf/report/picture.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::binder {
namespace {

constexpr double kDotsPerInch = 150;
constexpr double kCapitalsOfLevelPage = 24;  // px (PageFrame)
constexpr double kLeastCapitals = 14;        // px
constexpr int kLargestSide = 7000;           // px: pictures of 50 million px are more than a tablet's browser holds
constexpr int kUnknownSide = 2400;
constexpr int kThumbSide = 320;
// Chosen by eye on scans of drawings: below 60 grey rings round thin lettering show.
constexpr int kQuality = 68;
constexpr int kThumbQuality = 60;
// To be changed with whatever changes a picture.
constexpr const char* kMethod = "1";

}  // namespace

int LegibleSide(const PageFrame& frame) {
  const int longer = std::max(frame.scan_width, frame.scan_height);
  if (longer <= 0) return kUnknownSide;
  const double by_resolution = frame.dpi > 0 ? kDotsPerInch / frame.dpi : 0;
  const double by_lettering = frame.scale * kLeastCapitals / kCapitalsOfLevelPage;
  const double factor = std::clamp(std::max(by_resolution, by_lettering), 0.0, 1.0);
  return std::clamp(static_cast<int>(std::lround(longer * factor)), 1, kLargestSide);
}

std::string PictureKey(const PictureSource& source) {
  std::string key = source.scan_hash;
  for (const std::string& part :
       {std::to_string(source.scan_bytes), std::to_string(source.scan_changed_ns), std::to_string(source.page),
        std::to_string(source.orientation), std::to_string(source.side), std::string(kMethod)}) {
    key += ':' + part;
  }
  return key;
}

Result<PageFiles> PicturePage(const ColorImage& scan, int orientation, int side) {
  PageFiles files;
  const ColorImage page = UprightPage(scan, orientation, side);
  files.page = EncodeJpeg(page, kQuality);
  files.thumb = EncodeJpeg(ScaledToFit(page, kThumbSide), kThumbQuality);
  if (files.page.empty() || files.thumb.empty()) {
    return Fail(ErrorCode::kUnsupported, "a picture without pixels cannot be written");
  }
  files.size = {page.width, page.height, std::nullopt};
  return files;
}

}  // namespace benchleaf::binder
