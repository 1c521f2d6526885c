#include "benchleaf/report/hits.h"

#include "report/place.h"

#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <map>
#include <set>

namespace benchleaf {
namespace {

// Sightings below this are marked: half of them may be misread.
constexpr double kUnsure = 0.5;

bool OneKind(const std::vector<FoundSighting>& hits) {
  return std::all_of(hits.begin(), hits.end(),
                     [&](const FoundSighting& hit) { return hit.sighting.kind == hits.front().sighting.kind; });
}

// True when a set answers from more than one of its manuals: they may number their parts differently.
bool SeveralManuals(const std::vector<FoundSighting>& hits) {
  std::map<std::string, std::set<std::string>> manuals;
  for (const FoundSighting& hit : hits) manuals[hit.place.set].insert(hit.place.manual);
  return std::any_of(manuals.begin(), manuals.end(), [](const auto& entry) { return entry.second.size() > 1; });
}

std::string Joined(const std::vector<std::string>& parts, const std::string& separator) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : separator) + part;
  return text;
}

// Names, set by set, the assemblies or units in which the term stands: the same designator is another part in each.
std::string SeveralAssemblies(const TermHits& found) {
  std::map<std::string, std::set<std::string>> assemblies;
  for (const FoundSighting& hit : found.hits) {
    const bool meant = hit.match == Match::kExact || hit.match == Match::kForm;
    if (meant && !hit.sighting.assembly.empty()) assemblies[hit.place.set].insert(hit.sighting.assembly);
  }
  std::string text;
  for (const auto& [set, names] : assemblies) {
    if (names.size() < 2) continue;
    text += CleanText(found.term) + " is a part of its own in each of these assemblies of " + CleanText(set) + ": " +
            CleanText(Joined({names.begin(), names.end()}, ", ")) + "\n";
  }
  return text;
}

}  // namespace

std::string HitsText(const TermHits& found, const Look& look) {
  std::set<std::string> sets;
  for (const FoundSighting& hit : found.hits) sets.insert(hit.place.set);
  std::string text = CleanText(found.term) + ": " + Counted(found.hits.size(), "place") + " in " +
                     Counted(sets.size(), "set") + (found.more ? ", and more (--limit shows more)" : "") + "\n";

  const bool one_kind = OneKind(found.hits);
  const bool several_manuals = SeveralManuals(found.hits);
  const std::string assemblies = SeveralAssemblies(found);
  Table table({{"#", Column::Align::kRight},
               {"set", Column::Align::kLeft, Column::Fit::kWrap},
               {"manual", Column::Align::kLeft, Column::Fit::kWrap},
               {"file", Column::Align::kLeft, Column::Fit::kWrap},
               {"page"},
               {"kind"},
               {"where on the page", Column::Align::kLeft, Column::Fit::kWrap},
               {"assembly"},
               {"seen as"},
               {"reads", Column::Align::kLeft, Column::Fit::kWrap},
               {"sure", Column::Align::kRight},
               {"match"}});
  int number = 0;
  for (const FoundSighting& hit : found.hits) {
    const Sighting& sighting = hit.sighting;
    // A look-alike or another form is read as something else than what was asked for.
    const std::string reads = hit.match == Match::kExact ? ReadAs(sighting) : sighting.read;
    table.Add({std::to_string(++number), hit.place.set, several_manuals ? hit.place.manual : "", hit.place.file,
               PageWords(hit.place), std::string(Name(hit.place.kind)), WhereOnPage(sighting.box),
               assemblies.empty() ? "" : sighting.assembly, one_kind ? "" : std::string(Name(sighting.kind)), reads,
               Cell(Sureness(sighting.confidence), sighting.confidence < kUnsure ? Paint::kWarning : Paint::kPlain),
               Cell(std::string(Name(hit.match)), hit.match == Match::kLookAlike ? Paint::kWarning : Paint::kPlain)});
  }
  return text + table.Render(look) + assemblies;
}

std::string NothingFoundText(const TermHits& found) {
  std::string text = CleanText(found.term) + ": nothing found";
  if (!found.searched.empty()) text.append(" ").append(CleanText(Joined(found.searched, " ")));
  text += "; searched for the term itself, its other forms, what looks alike in print, and the text of the pages";
  if (!found.near.empty()) text.append("; near to it in the index: ").append(CleanText(Joined(found.near, ", ")));
  return text;
}

std::string HitsJson(const TermHits& found) {
  if (found.hits.empty()) {
    Json near = Json::Array();
    for (const std::string& term : found.near) near.Add(term);
    return Json::Object({{"type", "nothing"}, {"term", found.term}, {"near", near}}).Dump() + "\n";
  }
  std::string lines;
  int number = 0;
  for (const FoundSighting& hit : found.hits) {
    Json object = Json::Object({{"type", "hit"}, {"term", found.term}, {"number", ++number}});
    SetPlace(object, hit.place);
    SetSighting(object, hit.sighting);
    object.Set("match", std::string(Name(hit.match)));
    lines += object.Dump() + "\n";
  }
  return lines;
}

}  // namespace benchleaf
