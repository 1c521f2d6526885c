// The tubes of a set: which type stands in which socket, and where its manuals say so.

#ifndef BENCHLEAF_LINEUP_SOCKETS_H_
#define BENCHLEAF_LINEUP_SOCKETS_H_

#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// A place where a manual names a tube type.
struct SeenTube {
  PagePlace place;
  Sighting sighting;
  std::string designator;  // that it belongs to, as printed: V3A for a section; empty when none stands beside it
};

// Every tube type on the manual's pages, in their order.
std::vector<SeenTube> TubesSeen(const ManualRecord& manual);

// One tube of a set.
struct TubeSocket {
  std::string designator;           // without the letter of a section: V3, A4V3; empty where no manual gives one
  std::string type;                 // as most surely read, canonical
  double confidence = 0;            // 0 to 1, of the surest reading of that type
  std::vector<SeenTube> seen;       // readings of the type and of its forms, surest first; never empty
  std::vector<SeenTube> otherwise;  // other types read at the same designator, surest first
};

struct SetTubes {
  std::vector<TubeSocket> sockets;  // by designator as a person counts, those without one last
  // Names of tubes that no socket accounts for, surest first: a drawing or list shows the type once more than sockets
  // were found, or only running text names it. They may be further tubes of the set.
  std::vector<SeenTube> unplaced;
};

// From all that one set's manuals say. Within a manual a designator is one socket, whose type is the one that its
// readings agree on best; of two manuals' sockets with one designator and one type there is one. A type that stands
// nowhere beside a designator has as many sockets as the drawing or list with the most of it shows, two halves ("1/2
// 12AX7") making one tube. Running text makes no socket.
SetTubes SocketsOf(const std::vector<SeenTube>& seen);

// Whether two names may be one tube in different forms: 6CB6 and 6CB6A, 12AX7/ECC83 and ECC83.
bool ShareAForm(const std::string& type, const std::string& other);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_SOCKETS_H_
