#include "stock/socket_matching.h"

#include <algorithm>

namespace benchleaf::stock {
namespace {

// Augmenting paths (Kuhn's algorithm), a row being as many places as it has tubes.
class Matching {
 public:
  Matching(const std::vector<std::vector<Choice>>& choices, const std::vector<int>& counts)
      : choices_(choices), counts_(counts), row_of_(choices.size()), sockets_of_(counts.size()) {}

  // Finds a row for the socket among choices up to the rank, moving other sockets where that helps.
  bool Fill(std::size_t socket, int most) {
    tried_.assign(counts_.size(), false);
    return Augment(socket, most);
  }

  bool IsFilled(std::size_t socket) const { return row_of_[socket].has_value(); }
  const std::vector<std::optional<std::size_t>>& rows() const { return row_of_; }

 private:
  bool Augment(std::size_t socket, int most) {
    for (const Choice& choice : choices_[socket]) {
      if (choice.rank > most || tried_[choice.row]) continue;
      tried_[choice.row] = true;
      std::vector<std::size_t>& sockets = sockets_of_[choice.row];
      if (sockets.size() < static_cast<std::size_t>(std::max(0, counts_[choice.row]))) {
        Give(socket, choice.row);
        return true;
      }
      // By value: moving a socket changes the list.
      for (const std::size_t other : std::vector<std::size_t>(sockets)) {
        if (!Augment(other, most)) continue;
        Give(socket, choice.row);
        return true;
      }
    }
    return false;
  }

  void Give(std::size_t socket, std::size_t row) {
    if (row_of_[socket]) std::erase(sockets_of_[*row_of_[socket]], socket);
    row_of_[socket] = row;
    sockets_of_[row].push_back(socket);
  }

  const std::vector<std::vector<Choice>>& choices_;
  const std::vector<int>& counts_;
  std::vector<std::optional<std::size_t>> row_of_;    // by socket
  std::vector<std::vector<std::size_t>> sockets_of_;  // by row
  std::vector<bool> tried_;                           // rows, in the search for one socket
};

}  // namespace

std::vector<std::optional<std::size_t>> MatchSockets(const std::vector<std::vector<Choice>>& choices,
                                                     const std::vector<int>& counts) {
  std::vector<std::vector<Choice>> sorted = choices;
  int worst = 0;
  for (std::vector<Choice>& of_socket : sorted) {
    std::stable_sort(of_socket.begin(), of_socket.end(),
                     [](const Choice& a, const Choice& b) { return a.rank < b.rank; });
    if (!of_socket.empty()) worst = std::max(worst, of_socket.back().rank);
  }
  Matching matching(sorted, counts);
  for (int most = 0; most <= worst; ++most) {
    for (std::size_t socket = 0; socket < sorted.size(); ++socket) {
      if (!matching.IsFilled(socket)) matching.Fill(socket, most);
    }
  }
  return matching.rows();
}

}  // namespace benchleaf::stock
