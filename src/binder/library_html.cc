#include "binder/document.h"
#include "binder/library_documents.h"

#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>

namespace benchleaf::binder {
namespace {

Markup Card(const SetCard& card) {
  const std::string folder = std::string(kSetsFolder) + '/' + card.folder + '/';
  Markup thumb = Tag("span", {{"class", "no-picture"}}, "no picture");
  if (!card.thumb.empty()) thumb = Empty("img", {{"src", folder + card.thumb}, {"alt", ""}, {"loading", "lazy"}});
  const std::string drawn = card.parts == 0
                                ? "no parts list read"
                                : Counted(card.parts, "part") + ", " + std::to_string(card.drawn) + " found drawn";
  return Tag(
      "li", {{"class", "card"}},
      Tag("a", {{"class", "leaf"}, {"href", folder + "index.html"}},
          thumb + Tag("span", {{"class", "leaf-name"}}, card.set)) +
          Tag("p", {{"class", "counts"}}, Counted(card.pages, "sheet") + ", " + drawn) +
          Tag("p", {{"class", "ways"}},
              LinkTo(folder + "parts.html", "Parts") + LinkTo(folder + "tubes.html", Counted(card.tubes, "tube")) +
                  LinkTo(folder + "gaps.html", "Gaps") + LinkTo(folder + "paper.html", "On paper")));
}

Markup Definition(const std::string& term, const std::string& words) {
  return Tag("div", Tag("dt", term) + Tag("dd", words));
}

}  // namespace

SetCard CardOf(const Book& book, const std::vector<PagePicture>& pictures) {
  SetCard card{book.set, book.maker, book.model, book.folder, book.pages.size(), book.parts.size(), 0, 0, {}};
  card.drawn = static_cast<std::size_t>(
      std::count_if(book.parts.begin(), book.parts.end(), [](const BookPart& part) { return !part.drawn.empty(); }));
  for (const ManualLineup& lineup : book.lineups) card.tubes += lineup.tubes.size();
  for (std::size_t i = 0; i < book.pages.size(); ++i) {
    if (!pictures[i].is_there()) continue;
    const bool schematic = book.pages[i].place.kind == PageKind::kSchematic;
    if (schematic || card.thumb.empty()) card.thumb = ThumbFile(book.pages[i]);
    if (schematic) break;
  }
  return card;
}

std::string SetsHtml(const std::vector<SetCard>& sets) {
  Markup cards;
  for (const SetCard& card : sets) cards += Card(card);
  const Markup main = Tag("h1", "Sets in this binder") + Tag("p", {{"class", "counts"}}, Counted(sets.size(), "set")) +
                      Tag("ul", {{"class", "cards"}, {"id", "cards"}}, cards) + Cautions();
  return WholeHtml({"Binder: sets", "", "sets", main});
}

std::string HelpHtml() {
  constexpr std::array<std::pair<const char*, const char*>, 12> kKeys = {{
      {"/", "to the search; arrows choose, Enter opens, Esc leaves"},
      {"?", "this help, or back from it"},
      {"g then s", "the sets; g then t: the tubes"},
      {"g then p", "in a set: its parts; g then i: its pages"},
      {"f", "to the field that narrows a table; Esc empties it"},
      {"up, down", "in a table: from row to row; Enter opens the row's place"},
      {"[ and ]", "the sheet before, the next one"},
      {"n and N", "on a sheet: ring the next spot, the one before"},
      {"e", "on a sheet: from the ringed spot to its entry"},
      {"+ and -", "closer, farther; 0: the whole sheet"},
      {"arrows", "on a sheet: move it, once it has the focus"},
      {"b", "on a sheet: white on black"},
  }};
  Markup keys;
  for (const auto& [key, what] : kKeys)
    keys += Tag("tr", Tag("th", {{"scope", "row"}}, Tag("kbd", key)) + Tag("td", what));
  const Markup main =
      Tag("h1", "Help") +
      Tag("section",
          Tag("h2", "What is in the binder") +
              Tag("dl",
                  Definition("Sets", "every set with its sheets, its parts index, its tubes and its gaps") +
                      Definition("Parts",
                                 "a row leads to the place where its part is drawn, ringed; a ringed "
                                 "designator on a sheet leads back to its row") +
                      Definition("Tubes", "each type, what it is, and every set with it") +
                      Definition("Find",
                                 "designators, descriptions, part numbers, tube types, sets and titles of "
                                 "all sets at once; a running text is found by benchleaf find") +
                      Definition("Sure", "how likely what was read is right; under half, look twice") +
                      Definition("On paper", "the parts index with a ringed picture of each place, to be printed")) +
              Tag("p",
                  "The address of a ringed spot can be kept or sent on: it opens the sheet with the spot ringed.")) +
      Tag("section", Tag("h2", {{"id", "keyboard"}}, "Keys") +
                         DataTable("Keys of the binder", "key-table", {{"Key", ""}, {"What it does", ""}}, keys) +
                         Tag("p", {{"class", "hint"}},
                             "The button Keys on turns the keys of one letter off, for those who dictate. "
                             "Dark changes between light and dark. Both need JavaScript, as search "
                             "and sorting do; all else works without it.")) +
      Cautions();
  return WholeHtml({"Binder: help", "", "help", main});
}

}  // namespace benchleaf::binder
