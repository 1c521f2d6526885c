#include "binder/document.h"
#include "binder/set_documents.h"
#include "report/lineup_words.h"
#include "report/place.h"

#include "benchleaf/report/lineup.h"

#include <set>
#include <sstream>

namespace benchleaf::binder {
namespace {

Markup PlaceOf(const Book& book, const SeenTube& seen) {
  const std::string to = BoxAddress(book, seen.place, seen.sighting.box);
  const auto page = FindPage(book, seen.place);
  if (to.empty() || !page) return ShortPlace(seen.place);
  return LinkTo(to, ShortPageName(book.pages[*page]));
}

Markup OtherTypes(const Book& book, const TubeSocket& socket) {
  Markup others;
  std::set<std::string> once;
  for (const SeenTube& seen : socket.otherwise) {
    if (!once.insert(seen.sighting.text).second) continue;
    if (!others.empty()) others += ", ";
    others += seen.sighting.text + " (" + Sureness(seen.sighting.confidence) + ", ";
    others += PlaceOf(book, seen) + ")";
  }
  return others;
}

Markup Row(const Book& book, const LineupTube& tube, TubeFiles& tubes) {
  const TubeSocket& socket = tube.socket;
  return Tag(
      "tr",
      Tag("th", {{"scope", "row"}, {"class", "designator"}}, socket.designator.empty() ? "?" : socket.designator) +
          Tag("td", Tag("a", {{"href", "../../tubes/" + tubes.NameOf(socket.type)}, {"class", "tag"}}, socket.type)) +
          Tag("td", DutyWords(tube)) + Tag("td", tube.row == nullptr ? std::string() : tube.row->tube_class) +
          Tag("td", LineupHeater(tube)) + Tag("td", PlaceOf(book, socket.seen.front())) +
          Tag("td", {{"class", "count"}}, Sureness(socket.confidence)) +
          Tag("td", {{"class", "warn"}}, OtherTypes(book, socket)));
}

Markup Lines(const std::string& text) {
  Markup list;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    const std::size_t from = line.find_first_not_of(' ');
    if (from != std::string::npos) list += Tag("li", line.substr(from));
  }
  return Tag("ul", {{"class", "lines"}}, list);
}

Markup Unplaced(const Book& book, const ManualLineup& lineup, TubeFiles& tubes) {
  if (lineup.unplaced.empty()) return {};
  Markup list;
  for (const SeenTube& seen : lineup.unplaced) {
    const std::string& type = seen.sighting.text;
    list += Tag("li", Tag("a", {{"href", "../../tubes/" + tubes.NameOf(type)}, {"class", "tag"}}, type) + " " +
                          PlaceOf(book, seen) + " " +
                          Tag("span", {{"class", "faint"}}, Sureness(seen.sighting.confidence)));
  }
  return Tag("h3", "Named without a designator, and not counted") +
         Tag("p", {{"class", "hint"}}, "They may be further tubes, or the same ones named again.") +
         Tag("ul", {{"class", "tags"}}, list);
}

Markup OneManual(const Book& book, const ManualLineup& lineup, std::size_t number, TubeFiles& tubes) {
  Markup section = Tag("h2", book.lineups.size() > 1 ? lineup.manual : std::string("Tubes by designator"));
  if (lineup.tubes.empty()) {
    section += Tag("p", {{"class", "note"}}, "No tube was found on the pages that were read.");
  } else {
    Markup rows;
    for (const LineupTube& tube : lineup.tubes) rows += Row(book, tube, tubes);
    section += DataTable("Tubes of " + SetWords(lineup), "lineup-" + std::to_string(number),
                         {{"Tube", ""},
                          {"Type", ""},
                          {"Function", ""},
                          {"What it is", ""},
                          {"Heater", ""},
                          {"Surest place", ""},
                          {"Sure", "count"},
                          {"Also read", ""}},
                         rows) +
               Tag("h3", "Heaters") + Lines(HeaterLines(lineup));
  }
  return Tag("section", {{"class", "divider"}}, section + Unplaced(book, lineup, tubes));
}

}  // namespace

std::string LineupHtml(const Book& book, TubeFiles& tubes) {
  Markup main = SetHead(book, SetTab::kTubes) + CautionLine();
  for (std::size_t i = 0; i < book.lineups.size(); ++i) main += OneManual(book, book.lineups[i], i + 1, tubes);
  return WholeHtml({book.set + ": tubes", "../../", "lineup", main});
}

}  // namespace benchleaf::binder
