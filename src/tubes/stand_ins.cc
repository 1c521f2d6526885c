#include "benchleaf/tubes/stand_ins.h"

#include "benchleaf/tubes/decode.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace benchleaf {
namespace {

using Standings = std::map<std::string, Standing, std::less<>>;
using Names = std::vector<std::string>;

// The type as the table names it: without marks in front, and by its row where it is a service number.
std::string TableName(std::string_view name, const TubeTable& table) {
  const std::string type = DecodeTubeType(name).type;
  const TubeEntry* entry = table.Find(type);
  return entry != nullptr ? entry->type : type;
}

Names TableNames(std::string_view type, const TubeTable& table) {
  Names names;
  for (const std::string& name : TubeNames(type)) names.push_back(TableName(name, table));
  return names;
}

// Gives the standing to the names and to all that `relation` leads to from them; those that have one keep it.
void Spread(Standings& standings, Names names, Standing standing, Names TubeEntry::*relation, const TubeTable& table) {
  while (!names.empty()) {
    const std::string name = names.back();
    names.pop_back();
    if (!standings.emplace(name, standing).second) continue;
    const TubeEntry* entry = table.Find(name);
    if (entry == nullptr) continue;
    for (const auto* list : {&(entry->*relation), &entry->equivalents}) {
      names.insert(names.end(), list->begin(), list->end());
    }
  }
}

// What the relation names from every type that stands at `least` or better.
Names Related(const Standings& standings, Standing least, Names TubeEntry::*relation, const TubeTable& table) {
  Names names;
  for (const auto& [name, standing] : standings) {
    const TubeEntry* entry = table.Find(name);
    if (entry == nullptr || standing > least) continue;
    names.insert(names.end(), (entry->*relation).begin(), (entry->*relation).end());
  }
  return names;
}

Standings StandingsOf(const Names& wanted, const TubeTable& table) {
  Standings standings;
  Spread(standings, wanted, Standing::kSame, &TubeEntry::equivalents, table);
  const struct {
    Standing standing;
    Standing least;
    Names TubeEntry::*relation;
    Names TubeEntry::*onward;
  } kSteps[] = {
      {Standing::kServes, Standing::kSame, &TubeEntry::served_by, &TubeEntry::served_by},
      {Standing::kIndustrial, Standing::kServes, &TubeEntry::industrial, &TubeEntry::equivalents},
      {Standing::kEarlier, Standing::kSame, &TubeEntry::serves_for, &TubeEntry::serves_for},
      {Standing::kEarlier, Standing::kSame, &TubeEntry::version_of, &TubeEntry::equivalents},
      {Standing::kOtherHeater, Standing::kEarlier, &TubeEntry::variants, &TubeEntry::equivalents},
  };
  for (const auto& step : kSteps) {
    Spread(standings, Related(standings, step.least, step.relation, table), step.standing, step.onward, table);
  }
  return standings;
}

bool HeaterDiffers(const std::string& wanted, const std::string& type, const TubeTable& table) {
  const TubeEntry* a = table.Find(wanted);
  const TubeEntry* b = table.Find(type);
  if (a == nullptr || b == nullptr) return false;
  const auto known = [](const HeaterSupply& supply) { return supply.volts && supply.amps; };
  const bool both_known = !a->heater.empty() && !b->heater.empty() &&
                          std::all_of(a->heater.begin(), a->heater.end(), known) &&
                          std::all_of(b->heater.begin(), b->heater.end(), known);
  return both_known &&
         std::find_first_of(a->heater.begin(), a->heater.end(), b->heater.begin(), b->heater.end()) == a->heater.end();
}

// A suffix of receiving types taken apart: WGTB is W and B, GTB is B.
struct Suffix {
  bool rugged = false;
  char revision = '\0';
};

std::optional<Suffix> SuffixOf(std::string_view type, std::string_view base) {
  std::string_view text = type.substr(base.size());
  if (!IsReceivingSuffix(text)) return std::nullopt;
  Suffix suffix;
  suffix.rugged = text.substr(0, 1) == "W";
  constexpr std::string_view kRevisions = "ABCDEF";
  // The letters F and E name no bulb, so a last letter of these is a revision.
  if (!text.empty() && kRevisions.find(text.back()) != std::string_view::npos) suffix.revision = text.back();
  return suffix;
}

std::optional<Standing> BySuffix(const std::string& wanted, const std::string& type) {
  const std::string base = TubeBase(wanted);
  if (base != TubeBase(type) || !SplitNumberFirst(base)) return std::nullopt;
  const auto of_wanted = SuffixOf(wanted, base);
  const auto of_type = SuffixOf(type, base);
  if (!of_wanted || !of_type) return std::nullopt;
  if (of_type->revision < of_wanted->revision || (of_wanted->rugged && !of_type->rugged)) return Standing::kEarlier;
  if (of_type->rugged && !of_wanted->rugged) return Standing::kIndustrial;
  return of_type->revision > of_wanted->revision ? Standing::kServes : Standing::kSame;
}

}  // namespace

std::string_view Name(Standing standing) {
  constexpr std::array<std::string_view, 5> kNames = {
      "same tube", "later or better type", "industrial or military version", "earlier or plainer form", "other heater"};
  return kNames[static_cast<std::size_t>(standing)];
}

StandIns::StandIns(std::string_view wanted, const TubeTable& table)
    : table_(table), wanted_(TableNames(wanted, table)), standings_(StandingsOf(wanted_, table)) {}

std::optional<StandIn> StandIns::Find(std::string_view type) const {
  std::optional<StandIn> best;
  const auto offer = [&](const StandIn& one) {
    if (!best || one.standing < best->standing) best = one;
  };
  for (const std::string& name : TableNames(type, table_)) {
    if (const auto found = standings_.find(name); found != standings_.end()) {
      offer({found->second, false, HeaterDiffers(wanted_.front(), name, table_)});
      continue;
    }
    for (const std::string& other : wanted_) {
      if (table_.Find(other) != nullptr && table_.Find(name) != nullptr) continue;
      if (const auto told = BySuffix(other, name)) offer({*told, true, false});
    }
  }
  return best;
}

}  // namespace benchleaf
