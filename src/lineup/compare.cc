#include "benchleaf/lineup/compare.h"

#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

struct TypeGroup {
  std::string type;
  const TubeEntry* row = nullptr;
  std::vector<std::size_t> tubes;
};

std::vector<TypeGroup> TypesOf(const ManualLineup& lineup) {
  std::vector<TypeGroup> groups;
  for (std::size_t i = 0; i < lineup.tubes.size(); ++i) {
    const LineupTube& tube = lineup.tubes[i];
    const auto group =
        std::find_if(groups.begin(), groups.end(), [&](const TypeGroup& one) { return one.type == tube.socket.type; });
    if (group == groups.end()) {
      groups.push_back({tube.socket.type, tube.row, {i}});
    } else {
      group->tubes.push_back(i);
    }
  }
  return groups;
}

bool Names(const std::vector<std::string>& names, const TypeGroup& group) {
  return std::find(names.begin(), names.end(), group.row != nullptr ? group.row->type : group.type) != names.end();
}

// 12AU7/ECC82 and 12AU7 are one type.
bool ShareAName(const std::string& type, const std::string& other) {
  const std::vector<std::string> names = TubeNames(type);
  const std::vector<std::string> others = TubeNames(other);
  return std::find_first_of(names.begin(), names.end(), others.begin(), others.end()) != names.end();
}

std::optional<TubeRelation> Between(const TypeGroup& first, const TypeGroup& second) {
  if (ShareAName(first.type, second.type)) return TubeRelation::kSame;
  if (first.row == nullptr || second.row == nullptr) return std::nullopt;
  if (first.row == second.row) return TubeRelation::kForms;
  if (Names(first.row->equivalents, second)) return TubeRelation::kEquivalent;
  if (Names(first.row->serves_for, second)) return TubeRelation::kFirstServes;
  if (Names(first.row->served_by, second)) return TubeRelation::kSecondServes;
  if (Names(first.row->variants, second)) return TubeRelation::kHeaterOnly;
  return std::nullopt;
}

// Adds the nearest type of the other set for each type, and says which of the others was taken.
LineupComparison CompareTypes(const std::vector<TypeGroup>& firsts, const std::vector<TypeGroup>& seconds) {
  std::map<std::pair<std::size_t, std::size_t>, TubeRelation> pairs;
  const auto take_nearest = [&](bool of_first, std::size_t at) {
    std::optional<std::pair<TubeRelation, std::size_t>> best;
    const std::size_t others = of_first ? seconds.size() : firsts.size();
    for (std::size_t other = 0; other < others; ++other) {
      const auto relation = of_first ? Between(firsts[at], seconds[other]) : Between(firsts[other], seconds[at]);
      if (relation && (!best || *relation < best->first)) best = {*relation, other};
    }
    if (best) pairs[of_first ? std::pair(at, best->second) : std::pair(best->second, at)] = best->first;
    return best.has_value();
  };
  LineupComparison comparison;
  for (std::size_t i = 0; i < firsts.size(); ++i) {
    if (!take_nearest(true, i)) {
      comparison.types.push_back({TubeRelation::kOnlyFirst, firsts[i].type, {}, firsts[i].tubes, {}});
    }
  }
  for (std::size_t i = 0; i < seconds.size(); ++i) {
    if (!take_nearest(false, i)) {
      comparison.types.push_back({TubeRelation::kOnlySecond, {}, seconds[i].type, {}, seconds[i].tubes});
    }
  }
  for (const auto& [pair, relation] : pairs) {
    const TypeGroup& first = firsts[pair.first];
    const TypeGroup& second = seconds[pair.second];
    comparison.types.push_back({relation, first.type, second.type, first.tubes, second.tubes});
  }
  std::sort(comparison.types.begin(), comparison.types.end(), [](const ComparedTypes& a, const ComparedTypes& b) {
    return std::tie(a.relation, a.first_type, a.second_type) < std::tie(b.relation, b.first_type, b.second_type);
  });
  return comparison;
}

std::map<std::string, std::vector<std::size_t>> ByFunction(const ManualLineup& lineup) {
  std::map<std::string, std::vector<std::size_t>> functions;
  for (std::size_t i = 0; i < lineup.tubes.size(); ++i) {
    std::set<std::string> once;
    for (const TubeDuty& duty : lineup.tubes[i].duties) once.insert(duty.function);
    for (const std::string& function : once) {
      if (!function.empty()) functions[function].push_back(i);
    }
  }
  return functions;
}

}  // namespace

std::string_view Name(TubeRelation relation) {
  switch (relation) {
    case TubeRelation::kSame:
      return "same type";
    case TubeRelation::kForms:
      return "forms of one type";
    case TubeRelation::kEquivalent:
      return "equivalent";
    case TubeRelation::kFirstServes:
      return "first serves for second";
    case TubeRelation::kSecondServes:
      return "second serves for first";
    case TubeRelation::kHeaterOnly:
      return "only the heater differs";
    case TubeRelation::kOnlyFirst:
      return "only in the first";
    case TubeRelation::kOnlySecond:
      break;
  }
  return "only in the second";
}

LineupComparison Compare(const ManualLineup& first, const ManualLineup& second) {
  LineupComparison comparison = CompareTypes(TypesOf(first), TypesOf(second));
  const auto seconds = ByFunction(second);
  for (auto& [function, tubes] : ByFunction(first)) {
    const auto same = seconds.find(function);
    if (same != seconds.end()) comparison.functions.push_back({function, tubes, same->second});
  }
  return comparison;
}

}  // namespace benchleaf
