#include "binder/document.h"
#include "binder/set_documents.h"
#include "report/place.h"

#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

namespace benchleaf::binder {
namespace {

// "sheet 8, upper left", leading there.
Markup PlaceLink(const Book& book, const SpotPlace& place) {
  const BookPage& page = book.pages[place.page];
  return LinkTo(SpotAddress(book, place), ShortPageName(page) + " " + std::string(Name(page.place.kind)) + ", " +
                                              RegionOnPage(page.spots[place.spot].box));
}

Markup Places(const Book& book, const BookPart& part) {
  if (part.drawn.empty()) {
    return NameOf(part.entry).empty() ? Markup() : Tag("span", {{"class", "faint"}}, "not seen on a drawing");
  }
  Markup list;
  for (const SpotPlace& place : part.drawn) list += Tag("li", PlaceLink(book, place));
  return Tag("ul", {{"class", "places"}}, list);
}

Markup Row(const Book& book, const BookPart& part) {
  const Entry& entry = part.entry;
  const std::string first = part.drawn.empty() ? SpotAddress(book, part.row) : SpotAddress(book, part.drawn.front());
  return Tag("tr", {{"id", part.id}, {"data-go", first}},
             Tag("th", {{"scope", "row"}, {"class", "designator"}},
                 Tag("a", {{"href", first}, {"class", "tag"}}, PartName(entry))) +
                 Tag("td", entry.description) + Tag("td", {{"class", "value"}}, entry.value) +
                 Tag("td", {{"class", "number"}}, entry.part_number) + Tag("td", {{"class", "count"}}, entry.quantity) +
                 Tag("td", Places(book, part)) +
                 Tag("td", LinkTo(SpotAddress(book, part.row), ShortPageName(book.pages[part.row.page]))) +
                 Tag("td", {{"class", "count"}}, Sureness(entry.confidence)));
}

Markup PartsTable(const Book& book) {
  Markup rows;
  for (const BookPart& part : book.parts) rows += Row(book, part);
  return DataTable("Parts of " + book.set, "parts",
                   {{"Part", ""},
                    {"Description", ""},
                    {"Value", "value"},
                    {"Part number", "number"},
                    {"Qty", "count"},
                    {"Drawn on", ""},
                    {"Listed on", ""},
                    {"Sure", "count"}},
                   rows);
}

Markup Unlisted(const Book& book) {
  if (book.unlisted.empty()) return {};
  Markup list;
  for (const SpotPlace& place : book.unlisted) {
    const BookPage& page = book.pages[place.page];
    list +=
        Tag("li", Tag("a", {{"href", SpotAddress(book, place)}, {"class", "tag"}}, page.spots[place.spot].text) + " " +
                      Tag("span", {{"class", "faint"}}, ShortPageName(page) + ", " + Sureness(place.confidence)));
  }
  const char* title = book.parts.empty() ? "Drawn" : "Drawn, and in no row that was read";
  return Tag("section", {{"class", "divider"}}, Tag("h2", title) + Tag("ul", {{"class", "tags"}}, list));
}

}  // namespace

std::string PartsHtml(const Book& book) {
  Markup main = SetHead(book, SetTab::kParts) + CautionLine();
  if (book.parts.empty()) {
    main += Tag("p", {{"class", "note"}},
                "No rows of a parts list were read in this set. What follows are the designators that were read on its "
                "drawings.");
  } else {
    main += Tag("p", {{"class", "hint"}},
                Counted(book.parts.size(), "part") +
                    ". A row leads to the place where its part is drawn, ringed; On paper gives this list with a "
                    "picture of each place, to be printed.") +
            PartsTable(book);
  }
  return WholeHtml({book.set + ": parts", "../../", "parts", main + Unlisted(book)});
}

}  // namespace benchleaf::binder
