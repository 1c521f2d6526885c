// Values and ratings, a line each.

#include "extract/value.h"
#include "fuzz/fuzz_input.h"

#include "benchleaf/orders/old_rating.h"

#include <cmath>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  for (const std::string& line : Lines(Bytes(data, size))) {
    for (const char* letters : {"R", "C", "L", "Q"}) {
      const auto value = extract::ParsePartValue(line, letters);
      Promise(!value || (std::isfinite(value->magnitude) && !value->canonical.empty()));
      for (const CapacitorSection& section : ReadRating(line, line, letters).sections) {
        Promise(std::isfinite(section.farads));
      }
    }
  }
  return 0;
}
