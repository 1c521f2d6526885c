// Gives sockets to rows of tubes so that as many as can be have one.

#ifndef BENCHLEAF_SRC_STOCK_SOCKET_MATCHING_H_
#define BENCHLEAF_SRC_STOCK_SOCKET_MATCHING_H_

#include <cstddef>
#include <optional>
#include <vector>

namespace benchleaf::stock {

// A row that may fill a socket; a smaller rank is the better choice.
struct Choice {
  std::size_t row = 0;
  int rank = 0;  // from 0
};

// The row of each socket, or nothing. `choices` are those of each socket; `counts` say how many sockets each row can
// fill. The most sockets are filled that can be by choices of rank 0, then by those of rank 1 too, and so on; a socket
// once filled stays so, though perhaps by another row.
std::vector<std::optional<std::size_t>> MatchSockets(const std::vector<std::vector<Choice>>& choices,
                                                     const std::vector<int>& counts);

}  // namespace benchleaf::stock

#endif  // BENCHLEAF_SRC_STOCK_SOCKET_MATCHING_H_
