// The directories of a TIFF.

#include "fuzz/fuzz_input.h"
#include "raster/tiff_directories.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  Promise(ReadTiffDirectories(Bytes(data, size)).size() <= 65536);
  return 0;
}
