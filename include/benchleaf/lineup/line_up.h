// A set's tubes with what each does, what it is, and what the heaters draw.

#ifndef BENCHLEAF_LINEUP_LINE_UP_H_
#define BENCHLEAF_LINEUP_LINE_UP_H_

#include "benchleaf/lineup/heaters.h"
#include "benchleaf/lineup/sockets.h"
#include "benchleaf/lineup/tube_functions.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/tubes/tube_table.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf {

// What a tube, or a section of it, does in the set, and where the manual says so.
struct TubeDuty {
  std::string section;   // "A" of V2A; empty for the whole tube
  std::string function;  // as config/tube-functions.tsv names it; empty when the words fit no row there
  std::string read;      // the manual's words, as read
  PagePlace place;
  FractionBox box;
  double confidence = 0;  // 0 to 1, of the words' reading
};

struct LineupTube {
  TubeSocket socket;
  std::vector<TubeDuty> duties;  // by section; empty when the manual's words do not tell
  const TubeEntry* row =
      nullptr;          // its row of the tube table, else that of the type without its suffix; may be nullptr
  bool counted = true;  // in the sum of the heaters
};

struct ManualLineup {
  std::string set;
  std::string manual;
  std::vector<LineupTube> tubes;   // by designator; those without one last
  std::vector<SeenTube> unplaced;  // see SetTubes; and what stands at a V1 that may be that of several assemblies
  HeaterSums heaters;              // positions are those of `tubes`
  std::size_t pages = 0;           // that were read
  std::vector<Error> failures;     // of the pages that were not
};

// A tube without a designator is counted among the heaters only where the manual gives designators to none. What the
// parts list says of a tube's function goes before the titles of a drawing, and these before other pages' words.
// The lineup points into the table.
ManualLineup LineUp(const ManualRecord& manual, const TubeTable& table, const TubeFunctions& functions);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_LINE_UP_H_
