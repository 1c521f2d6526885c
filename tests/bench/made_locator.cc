#include "bench/made_locator.h"

#include "scan-maker/circuit.h"
#include "scan-maker/locator_page.h"

namespace benchleaf::bench {

scanmaker::MadePage MadeLocator(scanmaker::Lettering lettering, std::uint64_t seed) {
  const scanmaker::PageFurniture furniture{"PARTS LOCATION", "", 5, scanmaker::UsualTextStyle(lettering)};
  return MakeLocatorPage("BOTTOM OF CHASSIS", ListedParts(scanmaker::RandomCircuit(7, seed)), furniture, seed);
}

}  // namespace benchleaf::bench
