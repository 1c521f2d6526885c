#include "binder/document.h"
#include "binder/library_documents.h"
#include "library/natural_order.h"
#include "report/place.h"

#include "benchleaf/lineup/sockets.h"
#include "benchleaf/report/text.h"

#include <algorithm>

namespace benchleaf::binder {
namespace {

std::vector<std::string> TypesInOrder(const TubeUses& uses) {
  std::vector<std::string> types;
  for (const auto& [type, sets] : uses) types.push_back(type);
  std::sort(types.begin(), types.end(), NaturalLess);
  return types;
}

double Surest(const std::vector<TubeUse>& sets) {
  double surest = 0;
  for (const TubeUse& use : sets) {
    for (const TubeUse::Place& place : use.places) surest = std::max(surest, place.confidence);
  }
  return surest;
}

Markup SetLinks(const std::vector<TubeUse>& sets) {
  constexpr std::size_t kMost = 6;
  Markup list;
  for (std::size_t i = 0; i < std::min(kMost, sets.size()); ++i) {
    list += Tag("li", LinkTo(std::string(kSetsFolder) + '/' + sets[i].folder + "/tubes.html", sets[i].set));
  }
  if (sets.size() > kMost) list += Tag("li", "and " + std::to_string(sets.size() - kMost) + " more");
  return Tag("ul", {{"class", "places"}}, list);
}

Markup TypeRow(const std::string& type, const std::vector<TubeUse>& sets, const TubeTable& table, TubeFiles& files) {
  const TubeEntry* row = table.FindNearest(type);
  const std::string to = std::string(kTubesFolder) + '/' + files.NameOf(type);
  return Tag("tr", {{"data-go", to}},
             Tag("th", {{"scope", "row"}, {"class", "designator"}}, Tag("a", {{"href", to}, {"class", "tag"}}, type)) +
                 Tag("td", row == nullptr ? "no row in the tables of tube types" : row->tube_class) +
                 Tag("td", {{"class", "count"}}, std::to_string(sets.size())) + Tag("td", SetLinks(sets)) +
                 Tag("td", {{"class", "count"}}, Sureness(Surest(sets))));
}

Markup Known(const std::string& type, const TubeTable& table) {
  Markup blocks;
  for (const TubeKnowledge& tube : KnowTube(type, table)) {
    Markup lines;
    for (const KnownLine& line : KnownLines(tube, table)) {
      lines += Tag("div", Tag("dt", line.label.empty() ? "but" : line.label) + Tag("dd", line.words));
    }
    blocks += Tag("h2", tube.decoded.type + ": " + KnownClass(tube)) + Tag("dl", lines);
  }
  return Tag("section", {{"class", "divider"}},
             blocks + Tag("p", {{"class", "hint"}}, "Check a heater's figures before you power a set."));
}

Markup UseRow(const TubeUse& use) {
  constexpr std::size_t kMostPlaces = 8;
  Markup places;
  for (std::size_t i = 0; i < std::min(kMostPlaces, use.places.size()); ++i) {
    places += Tag("li", LinkTo("../" + use.places[i].address, use.places[i].words) + " " +
                            Tag("span", {{"class", "faint"}}, Sureness(use.places[i].confidence)));
  }
  if (use.places.size() > kMostPlaces)
    places += Tag("li", "and " + std::to_string(use.places.size() - kMostPlaces) + " more");
  const std::string folder = "../" + std::string(kSetsFolder) + '/' + use.folder + "/";
  return Tag("tr", Tag("th", {{"scope", "row"}}, LinkTo(folder + "tubes.html", use.set)) + Tag("td", use.designators) +
                       Tag("td", use.functions) + Tag("td", Tag("ul", {{"class", "places"}}, places)));
}

}  // namespace

std::string TubesHtml(const TubeUses& uses, const TubeTable& table, TubeFiles& files) {
  Markup rows;
  for (const std::string& type : TypesInOrder(uses)) rows += TypeRow(type, uses.at(type), table, files);
  Markup main = Tag("h1", "Tubes of the library");
  if (uses.empty()) {
    main += Tag("p", {{"class", "note"}}, "No tube type was read on any sheet of these sets.");
  } else {
    main += Tag("p", {{"class", "hint"}},
                Counted(uses.size(), "type") +
                    " as read, with every set. A type that was read once "
                    "and unsurely may be another one misread.") +
            DataTable("Tubes of the library", "tubes",
                      {{"Type", ""}, {"What it is", ""}, {"Sets", "count"}, {"In", ""}, {"Sure", "count"}}, rows);
  }
  return WholeHtml({"Binder: tubes", "", "tubes", main});
}

std::string TubeHtml(const std::string& type, const TubeUses& uses, const TubeTable& table, TubeFiles& files) {
  Markup rows;
  for (const TubeUse& use : uses.at(type)) rows += UseRow(use);
  Markup forms;
  for (const std::string& other : TypesInOrder(uses)) {
    if (other == type || !ShareAForm(type, other)) continue;
    forms += Tag("li", Tag("a", {{"href", files.NameOf(other)}, {"class", "tag"}}, other) + " " +
                           Tag("span", {{"class", "faint"}}, Counted(uses.at(other).size(), "set")));
  }
  Markup main =
      Tag("h1", type) + CautionLine() +
      DataTable("Sets with " + type, "uses", {{"Set", ""}, {"Tube", ""}, {"Function", ""}, {"Where", ""}}, rows);
  if (!forms.empty()) {
    main += Tag("section", {{"class", "divider"}},
                Tag("h2", "Other forms of it in this binder") + Tag("ul", {{"class", "tags"}}, forms));
  }
  return WholeHtml({"Binder: " + type, "../", "tube", main + Known(type, table)});
}

}  // namespace benchleaf::binder
