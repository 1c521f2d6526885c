#include "binder/document.h"
#include "binder/page_drawing.h"
#include "binder/set_documents.h"
#include "library/natural_order.h"
#include "report/place.h"

#include "benchleaf/report/where.h"

#include <algorithm>

namespace benchleaf::binder {
namespace {

// A row leads to where its part is drawn, a designator to its entry, a tube to its type, anything else to itself.
std::string Target(const Book& book, const Spot& spot, TubeFiles& tubes) {
  if (spot.row && spot.part && !book.parts[*spot.part].drawn.empty()) {
    return SpotAddress(book, book.parts[*spot.part].drawn.front());
  }
  if (spot.part) return PartAddress(book.parts[*spot.part]);
  if (spot.kind == TermKind::kTube) return "../../tubes/" + tubes.NameOf(spot.text);
  return '#' + spot.id;
}

std::string Words(const Book& book, const Spot& spot) {
  if (spot.part && !spot.row) return PartWords(book.parts[*spot.part].entry);
  if (spot.part) return PartWords(book.parts[*spot.part].entry);
  if (spot.row) return "row of the list";
  return spot.kind == TermKind::kDesignator ? "in no row that was read" : std::string(Name(spot.kind));
}

// One line of the list beside the page: the spot's name rings it, the rest leads on.
Markup SpotLine(const Book& book, std::size_t page, const Spot& spot, TubeFiles& tubes) {
  Markup ways;
  if (spot.part) {
    const BookPart& part = book.parts[*spot.part];
    ways += LinkTo(PartAddress(part), "parts index");
    for (const SpotPlace& place : part.drawn) {
      if (place.page != page) ways += LinkTo(SpotAddress(book, place), ShortPageName(book.pages[place.page]));
    }
    if (part.row.page != page)
      ways += LinkTo(SpotAddress(book, part.row), "list, " + ShortPageName(book.pages[part.row.page]));
  } else if (spot.kind == TermKind::kTube && !spot.row) {
    ways += LinkTo("../../tubes/" + tubes.NameOf(spot.text), "every set with it");
  }
  const std::string name = spot.text.empty() ? "row" : spot.text;
  return Tag("li", {{"data-spot", spot.id}},
             Tag("a", {{"class", "tag"}, {"href", '#' + spot.id}}, name) +
                 Tag("span", {{"class", "what"}}, Words(book, spot)) + Tag("span", {{"class", "ways"}}, ways) +
                 Tag("span", {{"class", "faint"}}, RegionOnPage(spot.box) + ", " + Sureness(spot.confidence)));
}

Markup SpotList(const Book& book, std::size_t number, TubeFiles& tubes) {
  std::vector<const Spot*> spots;
  for (const Spot& spot : book.pages[number].spots) spots.push_back(&spot);
  std::stable_sort(spots.begin(), spots.end(), [](const Spot* a, const Spot* b) {
    if (a->row != b->row) return a->row;
    return !a->row && NaturalLess(a->text, b->text);
  });
  Markup list;
  for (const Spot* spot : spots) list += SpotLine(book, number, *spot, tubes);
  return list.empty() ? Tag("p", {{"class", "note"}}, "Nothing that can be ringed was read on this sheet.")
                      : Tag("ul", {{"class", "spots"}, {"id", "spots"}}, list);
}

// Ways to the sheet before and after.
Markup Turning(const Book& book, std::size_t number) {
  Markup ways;
  if (number > 0) {
    ways += Tag("a", {{"href", SheetFile(book.pages[number - 1])}, {"rel", "prev"}}, "Sheet before");
  }
  if (number + 1 < book.pages.size()) {
    ways += Tag("a", {{"href", SheetFile(book.pages[number + 1])}, {"rel", "next"}}, "Next sheet");
  }
  return Tag("nav", {{"class", "turning"}, {"aria-label", "Sheets"}}, ways);
}

Markup Tools() {
  Markup buttons;
  for (const auto& [id, name] : {std::pair("closer", "Closer"), std::pair("farther", "Farther"),
                                 std::pair("whole", "Whole sheet"), std::pair("turn-black", "White on black")}) {
    buttons += Tag("button", {{"type", "button"}, {"id", id}}, name);
  }
  return Tag("div", {{"class", "tools"}, {"hidden", ""}, {"role", "toolbar"}, {"aria-label", "View of the sheet"}},
             buttons);
}

Markup Drawing(const Book& book, std::size_t number, const PagePicture& picture, TubeFiles& tubes) {
  const BookPage& page = book.pages[number];
  if (!picture.is_there()) {
    return Tag("p", {{"class", "note"}},
               "There is no picture of this sheet: " +
                   (picture.failure ? picture.failure->message : std::string("the scan could not be drawn")) + ".");
  }
  std::vector<LinkedSpot> spots;
  for (const Spot& spot : page.spots) {
    spots.push_back({&spot, Target(book, spot, tubes), spot.text + ": " + Words(book, spot)});
  }
  return Tools() +
         Tag("div",
             {{"class", "sheet"},
              {"id", "sheet"},
              {"tabindex", "0"},
              {"role", "region"},
              {"aria-label", PageName(book, page) + ": picture of the scan"}},
             WholePage(page, picture, spots)) +
         Tag("div", {{"id", "slip"}, {"role", "status"}}, Markup());
}

}  // namespace

std::string SheetHtml(const Book& book, std::size_t number, const PagePicture& picture, TubeFiles& tubes) {
  const BookPage& page = book.pages[number];
  Markup titles;
  for (const std::string& title : page.facts.titles) titles += Tag("li", title);
  Markup about = Tag("h1", PageName(book, page)) +
                 Tag("p", {{"class", "counts"}},
                     std::string(Name(page.place.kind)) + " (told with " + Sureness(page.facts.kind_confidence) +
                         "), page " + std::to_string(page.place.page) + " of " + page.place.file);
  if (page.failure)
    about += Tag("p", {{"class", "note"}}, "This sheet could not be read: " + page.failure->message + ".");
  const Markup beside =
      Tag("aside", {{"class", "beside"}, {"aria-labelledby", "beside"}},
          Tag("h2", {{"id", "beside"}}, "On this sheet") +
              (titles.empty() ? Markup() : Tag("ul", {{"class", "lines"}}, titles)) + SpotList(book, number, tubes));
  const Markup main = SetHead(book, SetTab::kSheet) +
                      Tag("div", {{"class", "sheet-head"}}, Tag("div", about) + Turning(book, number)) +
                      Tag("div", {{"class", "sheet-and-list"}},
                          Tag("div", {{"class", "viewer"}}, Drawing(book, number, picture, tubes)) + beside);
  return WholeHtml({book.set + ": " + PageName(book, page), "../../", "leaf-open", main});
}

}  // namespace benchleaf::binder
