// Tubes on hand against the tubes of sets.

#ifndef BENCHLEAF_STOCK_SERVE_SETS_H_
#define BENCHLEAF_STOCK_SERVE_SETS_H_

#include "benchleaf/lineup/sockets.h"
#include "benchleaf/stock/stock_list.h"
#include "benchleaf/tubes/stand_ins.h"

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {

// What a set is made of.
struct SetNeed {
  std::string set;
  SetTubes tubes;
};

// A row of the list that may fill a socket.
struct OnHand {
  std::size_t row = 0;  // position in StockList::rows
  StandIn stand_in;

  friend bool operator==(const OnHand&, const OnHand&) = default;
};

struct SocketAnswer {
  TubeSocket socket;
  std::optional<OnHand> served;  // by a tube that counts, stands in without more, and serves no other socket of the set
  std::vector<OnHand> perhaps;   // for one not served: rows that a person may look at, the likeliest first. They do not
                                 // count, or stand to the type in a way that needs a thought
};

enum class SetVerdict {
  kServed,        // every socket by the same tube
  kWithStandIns,  // every socket, some by later or industrial types
  kLacks,
  kUnnumbered,  // types were read, but none beside a designator
  kNoTubes,     // none of the set's tubes is known
};
// "served", "served with stand-ins", "lacks tubes", "no designators known", "no tubes known".
std::string_view Name(SetVerdict verdict);

struct SetAnswer {
  std::string set;
  SetVerdict verdict = SetVerdict::kNoTubes;
  std::vector<SocketAnswer> sockets;
  // Names of tubes that may be further ones: SetTubes::unplaced, and a reading of each socket without designator. A
  // type that stands beside no designator is no socket to fill.
  std::vector<SeenTube> unplaced;

  std::size_t served() const;
};

// What becomes of a row of the list.
struct RowAnswer {
  // Sets with a socket that the type fills, or that name such a type without a designator, whether or not the row
  // counts.
  std::vector<std::string> wanted_by;
  bool known = false;  // a table knows the type, perhaps without its suffix
};

// A type of which all sets together take more tubes than are on hand.
struct Contested {
  std::string type;
  int on_hand = 0;                                  // that count
  std::vector<std::pair<std::string, int>> claims;  // tubes by set
};

struct StockAnswer {
  std::vector<SetAnswer> sets;  // in the order of the needs
  std::vector<RowAnswer> rows;  // of StockList::rows
  std::vector<Contested> contested;
};

// Each set is served on its own, from the whole list: as many sockets as can be, and among these first by the same
// tube, then by later types, then by industrial ones. A tube serves one socket of a set.
StockAnswer ServeSets(const StockList& list, const std::vector<SetNeed>& needs, const TubeTable& tubes);

}  // namespace benchleaf

#endif  // BENCHLEAF_STOCK_SERVE_SETS_H_
