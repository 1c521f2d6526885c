// Documents of the index; the first byte says of which kind.

#include "fuzz/fuzz_input.h"
#include "store/page_tubes.h"
#include "store/stored.h"
#include "store/summary.h"

#include <xapian.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  std::string_view bytes = Bytes(data, size);
  if (bytes.empty()) {
    return 0;
  }
  const char kind = bytes.front();
  bytes.remove_prefix(1);
  try {
    if (kind == 'p') {
      for (const store::StoredSighting& sighting : store::ParsePage(bytes, store::WithEntries::kYes).sightings) {
        sighting.Decode();
      }
    } else if (kind == 't') {
      for (const store::PageTube& tube : store::ParsePageTubes(bytes).tubes) tube.sighting.Decode();
    } else if (kind == 'm') {
      constexpr Xapian::docid kId = 1000;
      constexpr Xapian::docid kStride = 2;
      store::LinksOf(store::ParseManual(bytes, kId, kStride));
    } else {
      store::DecodeSummary(bytes);
    }
  } catch (const Xapian::Error&) {
    // as stored.h says
  }
  return 0;
}
