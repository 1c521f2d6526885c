// Grey pages of TIFFs, in as little memory as they take. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_TIFF_GREY_H_
#define BENCHLEAF_SRC_PIXELS_TIFF_GREY_H_

#include "benchleaf/core/image.h"

#include <optional>
#include <string_view>

namespace benchleaf {

// The page, which counts from 1, row by row from the file into the picture: a fold-out takes 100 MB, and there is room
// for two such. Nothing for pages that are not of 8 bits of grey, that lie in tiles or are to be turned, or that are
// damaged.
std::optional<GreyImage> ReadGreyTiff(std::string_view tiff, int page);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_TIFF_GREY_H_
