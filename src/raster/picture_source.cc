#include "raster/picture_source.h"

#include "raster/tiff_directories.h"

#include "benchleaf/pixels/image_file.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// Scanners state 50 to 2400 dpi; outside lie the 0 and 1 of programs that do not know.
bool IsBelievable(double dpi) {
  constexpr double kLowest = 50;
  constexpr double kHighest = 2400;
  return dpi >= kLowest && dpi <= kHighest;
}

class PictureSource : public PageSource {
 public:
  PictureSource(FileBytes bytes, int pictures, std::string name, const RasterLimits& limits)
      : bytes_(std::move(bytes)),
        pictures_(pictures),
        tiff_(ReadTiffDirectories(bytes_.view())),
        pages_(std::max(pictures, static_cast<int>(tiff_.size()))),
        name_(std::move(name)),
        limits_(limits) {}

  int page_count() const override { return pages_; }

  Result<RasterPage> Load(int page) override {
    return Header(page)
        .and_then([&](const PictureHeader& header) {
          Result<GreyImage> image = DecodeGrey(bytes_.view(), page);
          bytes_.Release();  // while the page is read, its file would count as much as another picture of it
          return std::move(image).map([&](GreyImage grey) { return RasterPage{std::move(grey), header.dpi, {}}; });
        })
        .map_error([&](const Error& error) { return Named(error, page); });
  }

  Result<ColorImage> LoadColor(int page, int max_side_px) override {
    return Header(page)
        .and_then([&](const PictureHeader&) { return DecodeColor(bytes_.view(), page); })
        .map([&](const ColorImage& image) { return ScaledToFit(image, max_side_px); })
        .map_error([&](const Error& error) { return Named(error, page); });
  }

 private:
  // The page's header, found to be within the limits; its resolution is 0 unless it is stated and believable.
  Result<PictureHeader> Header(int page) const {
    if (page < 1 || page > pages_) {
      return Fail(ErrorCode::kMissing, "there is no such page; the last one is " + std::to_string(pages_));
    }
    if (page > pictures_) {
      return Fail(ErrorCode::kDamaged, "the page cannot be found in the file, which is damaged or cut short");
    }
    Result<PictureHeader> header = ReadPictureHeader(bytes_.view(), page);
    if (header && (header->width > limits_.max_side_px || header->height > limits_.max_side_px ||
                   std::int64_t{header->width} * std::int64_t{header->height} > limits_.max_pixels)) {
      return Fail(ErrorCode::kTooLarge, "measures " + std::to_string(header->width) + " x " +
                                            std::to_string(header->height) + " px, which is over the limits");
    }
    const auto directory = static_cast<std::size_t>(page) - 1;
    if (header && (!IsBelievable(header->dpi) || (directory < tiff_.size() && !tiff_[directory].states_resolution))) {
      header->dpi = 0;
    }
    return header;
  }

  Error Named(Error error, int page) const {
    error.source = name_;
    error.page = page;
    return error;
  }

  FileBytes bytes_;
  int pictures_ = 1;
  std::vector<TiffDirectory> tiff_;  // empty for other formats
  int pages_ = 1;
  std::string name_;
  RasterLimits limits_;
};

}  // namespace

std::unique_ptr<PageSource> PicturePages(FileBytes bytes, int pictures, const std::string& name,
                                         const RasterLimits& limits) {
  return std::make_unique<PictureSource>(std::move(bytes), pictures, name, limits);
}

}  // namespace benchleaf
