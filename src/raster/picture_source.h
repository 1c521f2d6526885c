// Pages of a TIFF, or the one page that a PNG or JPEG is.

#ifndef BENCHLEAF_RASTER_PICTURE_SOURCE_H_
#define BENCHLEAF_RASTER_PICTURE_SOURCE_H_

#include "raster/file_bytes.h"

#include "benchleaf/raster/page_source.h"

#include <memory>
#include <string>

namespace benchleaf {

// `pictures` is how many can be decoded, at least 1. A TIFF that announces more has as many pages; those behind the
// last that can be decoded are kDamaged. Sizes are checked against the limits before anything is decoded. A resolution
// under 50 or over 2400 dpi is taken as not known.
std::unique_ptr<PageSource> PicturePages(FileBytes bytes, int pictures, const std::string& name,
                                         const RasterLimits& limits);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PICTURE_SOURCE_H_
