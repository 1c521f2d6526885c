// The compressed strips of a TIFF's pages, as they lie in the file. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_TIFF_STRIPS_H_
#define BENCHLEAF_SRC_PIXELS_TIFF_STRIPS_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

struct TiffStrips {
  enum class Coding {
    kGroup4,  // ITU-T T.6, the first pixel in a byte's highest bit
    kJpeg,    // each strip a JPEG stream, which may lack the tables that `tables` has
  };
  Coding coding = Coding::kGroup4;
  int width = 0;   // px
  int height = 0;  // px
  int rows = 0;    // px, of every strip but the last, which may have fewer
  int samples = 1;
  bool black_is_white = false;   // of kGroup4: what the code calls black is to be shown white
  bool luma_and_chroma = false;  // of kJpeg with three samples: YCbCr, else RGB
  std::string tables;            // of kJpeg: a stream of tables only; may be empty
  std::vector<std::string> strips;
};

// The strips of one page, which counts from 1. Nothing for other codings; for pages in tiles or planes, or that are to
// be turned or mirrored before they are shown; for depths other than 1 bit of black and white and 8 bits of grey or
// three colours; and where the strips do not lie in the file.
std::optional<TiffStrips> ReadTiffStrips(std::string_view tiff, int page);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_TIFF_STRIPS_H_
