// JPEG strips of a page of a TIFF: the first byte tells how many rows of 16 pixels each of two strips has, which share
// the rest; zero gives one strip.

#include "fuzz/fuzz_input.h"
#include "pixels/jpeg_strips.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  if (size < 2) return 0;
  const std::string_view bytes = Bytes(data + 1, size - 1);
  TiffStrips page;
  page.coding = TiffStrips::Coding::kJpeg;
  page.width = 16;
  page.rows = data[0] == 0 ? 16 : data[0];
  page.height = data[0] == 0 ? 16 : 2 * page.rows;
  page.strips.emplace_back(bytes);
  if (data[0] != 0) page.strips = {std::string(bytes), std::string(bytes)};
  const auto joined = JoinedJpeg(page);
  // No more than the strips, a marker of colours, one of restarts, and one between strips.
  Promise(!joined || joined->size() <= page.strips.size() * bytes.size() + 32);
  return 0;
}
