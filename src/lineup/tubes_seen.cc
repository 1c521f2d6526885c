#include "benchleaf/core/ascii.h"
#include "benchleaf/lineup/sockets.h"
#include "benchleaf/linking/designator_beside.h"

#include <optional>

namespace benchleaf {
namespace {

// The tube's designator that a sighting stands beside: "" when none does; nothing when the row that holds it is another
// part's. A socket's row (XV3: ASME Y14.44, X before what is held) names the tube that it holds.
std::optional<std::string> TubeBeside(const TubeDesignators& designators, const Sighting& tube) {
  std::string beside = designators.Beside(tube);
  if (beside.empty() || NamesTube(beside)) return beside;
  const std::size_t socket = beside.find("XV");
  if (socket == std::string::npos) return std::nullopt;
  beside.erase(socket, 1);
  return NamesTube(beside) ? std::optional(beside) : std::nullopt;
}

}  // namespace

std::vector<SeenTube> TubesSeen(const ManualRecord& manual) {
  std::vector<SeenTube> seen;
  for (const PageRecord& page : manual.pages) {
    const TubeDesignators designators(page.entries, page.sightings, page.reading.frame);
    for (const Sighting& sighting : page.sightings) {
      if (sighting.kind != TermKind::kTube) continue;
      auto designator = TubeBeside(designators, sighting);
      if (!designator) continue;
      seen.push_back({{manual.set, manual.manual, page.file, page.page, page.facts.kind, page.facts.printed_number},
                      sighting,
                      std::move(*designator)});
    }
  }
  return seen;
}

}  // namespace benchleaf
