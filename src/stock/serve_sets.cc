#include "benchleaf/stock/serve_sets.h"

#include "stock/socket_matching.h"

#include "benchleaf/tubes/decode.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// How every type that sets want is served by every type on hand, each pair asked once.
class Standings {
 public:
  Standings(const StockList& list, const TubeTable& tubes) : list_(list), tubes_(tubes) {}

  // Every row with a type that has to do with the wanted one, in the order of the list.
  const std::vector<OnHand>& Of(const std::string& wanted) {
    const auto [known, is_new] = known_.try_emplace(wanted);
    if (!is_new) return known->second;
    const StandIns stand_ins(wanted, tubes_);
    std::map<std::string, std::optional<StandIn>> by_type;
    for (std::size_t row = 0; row < list_.rows.size(); ++row) {
      const std::string& type = list_.rows[row].type;
      const auto [found, first] = by_type.try_emplace(type);
      if (first) found->second = stand_ins.Find(type);
      if (found->second) known->second.push_back({row, *found->second});
    }
    return known->second;
  }

 private:
  const StockList& list_;
  const TubeTable& tubes_;
  std::map<std::string, std::vector<OnHand>> known_;
};

bool ServesAsItIs(const StandIn& stand_in) { return Serves(stand_in.standing) && !stand_in.heater_differs; }

int RankOf(const OnHand& on_hand, const StockList& list, const std::string& wanted) {
  if (list.rows[on_hand.row].type == wanted) return 0;
  return 1 + 2 * static_cast<int>(on_hand.stand_in.standing) + (on_hand.stand_in.by_suffix ? 1 : 0);
}

std::vector<OnHand> WorthALook(const std::vector<OnHand>& all, const StockList& list) {
  std::vector<OnHand> worth;
  for (const OnHand& one : all) {
    const bool counted = list.rows[one.row].counts() && ServesAsItIs(one.stand_in);
    if (!counted && list.rows[one.row].state != StockState::kBad) worth.push_back(one);
  }
  std::stable_sort(worth.begin(), worth.end(), [](const OnHand& a, const OnHand& b) {
    return std::tuple(a.stand_in.standing, a.stand_in.heater_differs) <
           std::tuple(b.stand_in.standing, b.stand_in.heater_differs);
  });
  return worth;
}

SetVerdict VerdictOn(const SetAnswer& answer) {
  if (answer.sockets.empty()) return answer.unplaced.empty() ? SetVerdict::kNoTubes : SetVerdict::kUnnumbered;
  if (answer.served() < answer.sockets.size()) return SetVerdict::kLacks;
  const bool same = std::all_of(answer.sockets.begin(), answer.sockets.end(), [](const SocketAnswer& socket) {
    return socket.served->stand_in.standing == Standing::kSame;
  });
  return same ? SetVerdict::kServed : SetVerdict::kWithStandIns;
}

SetAnswer Serve(const SetNeed& need, const StockList& list, const std::vector<int>& counts, Standings& standings) {
  SetAnswer answer;
  answer.set = need.set;
  answer.unplaced = need.tubes.unplaced;
  std::vector<TubeSocket> sockets;
  for (const TubeSocket& socket : need.tubes.sockets) {
    // Nothing but a type, perhaps misread: no socket to fill.
    if (socket.designator.empty()) {
      answer.unplaced.push_back(socket.seen.front());
    } else {
      sockets.push_back(socket);
    }
  }
  std::vector<std::vector<stock::Choice>> choices;
  for (const TubeSocket& socket : sockets) {
    std::vector<stock::Choice>& of_socket = choices.emplace_back();
    for (const OnHand& one : standings.Of(socket.type)) {
      if (ServesAsItIs(one.stand_in)) of_socket.push_back({one.row, RankOf(one, list, socket.type)});
    }
  }
  const auto rows = stock::MatchSockets(choices, counts);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    SocketAnswer& socket = answer.sockets.emplace_back();
    socket.socket = std::move(sockets[i]);
    const std::vector<OnHand>& all = standings.Of(socket.socket.type);
    if (rows[i]) {
      socket.served = *std::find_if(all.begin(), all.end(), [&](const OnHand& one) { return one.row == *rows[i]; });
    } else {
      socket.perhaps = WorthALook(all, list);
    }
  }
  answer.verdict = VerdictOn(answer);
  return answer;
}

void NoteWanted(const SetAnswer& answer, std::vector<RowAnswer>& rows, Standings& standings) {
  std::set<std::string> types;
  for (const SocketAnswer& socket : answer.sockets) types.insert(socket.socket.type);
  for (const SeenTube& seen : answer.unplaced) types.insert(seen.sighting.text);
  for (const std::string& type : types) {
    for (const OnHand& one : standings.Of(type)) {
      std::vector<std::string>& wanted_by = rows[one.row].wanted_by;
      if (!Serves(one.stand_in.standing) || (!wanted_by.empty() && wanted_by.back() == answer.set)) continue;
      wanted_by.push_back(answer.set);
    }
  }
}

std::vector<Contested> ContestedTypes(const StockList& list, const std::vector<SetAnswer>& sets) {
  std::map<std::string, Contested> types;
  for (const StockRow& row : list.rows) {
    if (row.counts()) types[row.type].on_hand += row.count;
  }
  for (const SetAnswer& set : sets) {
    for (const SocketAnswer& socket : set.sockets) {
      if (!socket.served) continue;
      auto& claims = types[list.rows[socket.served->row].type].claims;
      if (claims.empty() || claims.back().first != set.set) claims.emplace_back(set.set, 0);
      ++claims.back().second;
    }
  }
  std::vector<Contested> contested;
  for (auto& [type, one] : types) {
    one.type = type;
    const int claimed = std::accumulate(one.claims.begin(), one.claims.end(), 0,
                                        [](int sum, const auto& claim) { return sum + claim.second; });
    if (claimed > one.on_hand) contested.push_back(std::move(one));
  }
  return contested;
}

bool IsInTable(const std::string& type, const TubeTable& tubes) {
  const std::vector<std::string> names = TubeNames(type);
  return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
    const std::string plain = DecodeTubeType(name).type;
    return tubes.Find(plain) != nullptr || tubes.Find(TubeBase(plain)) != nullptr;
  });
}

}  // namespace

std::string_view Name(SetVerdict verdict) {
  constexpr std::array<std::string_view, 5> kVerdicts = {"served", "served with stand-ins", "lacks tubes",
                                                         "no designators known", "no tubes known"};
  return kVerdicts[static_cast<std::size_t>(verdict)];
}

std::size_t SetAnswer::served() const {
  return static_cast<std::size_t>(std::count_if(sockets.begin(), sockets.end(),
                                                [](const SocketAnswer& socket) { return socket.served.has_value(); }));
}

StockAnswer ServeSets(const StockList& list, const std::vector<SetNeed>& needs, const TubeTable& tubes) {
  StockAnswer answer;
  std::vector<int> counts;
  for (const StockRow& row : list.rows) {
    counts.push_back(row.counts() ? row.count : 0);
    answer.rows.emplace_back().known = IsInTable(row.type, tubes);
  }
  Standings standings(list, tubes);
  for (const SetNeed& need : needs) {
    answer.sets.push_back(Serve(need, list, counts, standings));
    NoteWanted(answer.sets.back(), answer.rows, standings);
  }
  answer.contested = ContestedTypes(list, answer.sets);
  return answer;
}

}  // namespace benchleaf
