#include "benchleaf/lineup/line_up.h"

#include "lineup/tube_duties.h"

#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <utility>

namespace benchleaf {
namespace {

// V1 of a drawing whose assembly is not known, where several assemblies have a V1, is one of these, and nobody knows
// which: its readings count as no tube.
void LeaveOutWhatMayBeSeveral(SetTubes& tubes) {
  const auto is_own_of = [](const TubeSocket& socket, const std::string& designator) {
    return socket.designator != designator && DesignatorForms(socket.designator).back() == designator;
  };
  std::vector<TubeSocket> kept;
  for (const TubeSocket& socket : tubes.sockets) {
    const auto may_be = std::count_if(tubes.sockets.begin(), tubes.sockets.end(), [&](const TubeSocket& other) {
      return !socket.designator.empty() && !other.designator.empty() && is_own_of(other, socket.designator);
    });
    if (may_be < 2) {
      kept.push_back(socket);
      continue;
    }
    for (const auto* readings : {&socket.seen, &socket.otherwise}) {
      tubes.unplaced.insert(tubes.unplaced.end(), readings->begin(), readings->end());
    }
  }
  tubes.sockets = std::move(kept);
}

}  // namespace

ManualLineup LineUp(const ManualRecord& manual, const TubeTable& table, const TubeFunctions& functions) {
  ManualLineup result;
  result.set = manual.set;
  result.manual = manual.manual;
  for (const PageRecord& page : manual.pages) {
    if (page.failure) {
      result.failures.push_back(*page.failure);
    } else {
      ++result.pages;
    }
  }
  SetTubes tubes = SocketsOf(TubesSeen(manual));
  LeaveOutWhatMayBeSeveral(tubes);
  result.unplaced = std::move(tubes.unplaced);
  const bool designated = std::any_of(tubes.sockets.begin(), tubes.sockets.end(),
                                      [](const TubeSocket& socket) { return !socket.designator.empty(); });
  const lineup::TubeDuties duties(manual, functions, tubes.sockets);
  std::vector<const TubeEntry*> counted;
  for (TubeSocket& socket : tubes.sockets) {
    LineupTube tube;
    tube.duties = duties.Of(socket);
    tube.row = table.FindNearest(socket.type);
    tube.counted = !designated || !socket.designator.empty();
    tube.socket = std::move(socket);
    // Those that are not counted stand last, so that positions fit.
    if (tube.counted) counted.push_back(tube.row);
    result.tubes.push_back(std::move(tube));
  }
  result.heaters = SumHeaters(counted);
  return result;
}

}  // namespace benchleaf
