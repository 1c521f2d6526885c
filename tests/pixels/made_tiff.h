// TIFF files as scanners and their programs write them, in any coding that libtiff has.

#ifndef BENCHLEAF_TESTS_PIXELS_MADE_TIFF_H_
#define BENCHLEAF_TESTS_PIXELS_MADE_TIFF_H_

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf {

struct MadeTiffPage {
  int width = 100;   // px
  int height = 100;  // px
  int rows = 0;      // px, of a strip; 0: the whole page
  int samples = 1;
  int bits = 1;                   // a sample
  std::uint16_t compression = 4;  // TIFF 6.0, and 7 for JPEG (TIFF technical note 2)
  std::uint16_t photometric = 0;
  std::uint16_t fill_order = 1;
  std::uint16_t orientation = 1;
};

// The page with what `change` sets in it.
template <class Change>
MadeTiffPage With(MadeTiffPage page, const Change& change) {
  change(page);
  return page;
}

// The pixels drawn on such a page: strokes of black, or slopes of grey; samples side by side, 8 bits each where `bits`
// is 8, else packed.
std::vector<std::uint8_t> RowOfMadeTiff(const MadeTiffPage& page, int row);

// The file's bytes.
std::string MadeTiff(const std::vector<MadeTiffPage>& pages);

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_PIXELS_MADE_TIFF_H_
