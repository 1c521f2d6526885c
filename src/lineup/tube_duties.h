// What the manual's words say of a tube's function.

#ifndef BENCHLEAF_SRC_LINEUP_TUBE_DUTIES_H_
#define BENCHLEAF_SRC_LINEUP_TUBE_DUTIES_H_

#include "lineup/stage_titles.h"

#include "benchleaf/lineup/line_up.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::lineup {

// Finds the duties of one manual's tubes. Borrows what it is made of.
class TubeDuties {
 public:
  TubeDuties(const ManualRecord& manual, const TubeFunctions& functions, const std::vector<TubeSocket>& sockets);

  std::vector<TubeDuty> Of(const TubeSocket& socket) const;

 private:
  // The section of the tube that a printed designator names: "" for the whole, "A" for V2A; nothing when it names
  // another tube. A drawing may leave the assembly out (V2 for A4V2); where several assemblies have a V2 it then says
  // nothing.
  std::optional<std::string> SectionOf(const std::string& printed, const TubeSocket& socket) const;
  std::vector<TubeDuty> Listed(const TubeSocket& socket) const;
  std::vector<TubeDuty> Titled(const TubeSocket& socket, bool on_drawings) const;

  const ManualRecord& manual_;
  const TubeFunctions& functions_;
  std::vector<std::vector<StageTitle>> titles_;  // by page
  std::map<std::string, int> tubes_of_;          // how many tubes have this designator in any assembly
};

}  // namespace benchleaf::lineup

#endif  // BENCHLEAF_SRC_LINEUP_TUBE_DUTIES_H_
