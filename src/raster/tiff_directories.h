// What the directories of a TIFF announce, before any decoder has looked.

#ifndef BENCHLEAF_RASTER_TIFF_DIRECTORIES_H_
#define BENCHLEAF_RASTER_TIFF_DIRECTORIES_H_

#include <string_view>
#include <vector>

namespace benchleaf {

struct TiffDirectory {
  bool states_resolution = false;  // decoders make up a resolution where none is stated

  friend bool operator==(const TiffDirectory&, const TiffDirectory&) = default;
};

// The image file directories in the chain of a TIFF or BigTIFF, one a page, the one that cannot be read any more
// included: decoders stop before it in silence, and a file that was cut short would seem to have fewer pages. At most
// 65,536 are followed, and none twice. Empty when the bytes are no TIFF.
std::vector<TiffDirectory> ReadTiffDirectories(std::string_view bytes);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_TIFF_DIRECTORIES_H_
