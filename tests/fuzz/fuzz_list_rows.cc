// The lines of a page, as a parts list and as any page.

#include "extract/page_text.h"
#include "fuzz/fuzz_input.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/paging/paging.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  const PageReading page = PageOf(Lines(Bytes(data, size)));
  ListState state;
  for (const Entry& entry : ExtractEntries(page, ShippedRules(), state)) {
    Promise(entry.box.x >= 0 && entry.box.y >= 0);
  }
  for (const Sighting& sighting : ExtractSightings(page, ShippedRules())) {
    Promise(!sighting.text.empty() && sighting.confidence >= 0 && sighting.confidence <= 1);
  }
  DescribePage(page, ShippedRules());
  return 0;
}
