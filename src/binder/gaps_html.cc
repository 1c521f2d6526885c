#include "binder/document.h"
#include "binder/set_documents.h"
#include "report/place.h"

#include "benchleaf/report/gaps.h"
#include "benchleaf/report/where.h"

namespace benchleaf::binder {
namespace {

Markup PageLink(const Book& book, const PagePlace& place) {
  const auto page = FindPage(book, place);
  if (!page) return ShortPlace(place);
  return LinkTo(SheetFile(book.pages[*page]), ShortPageName(book.pages[*page]));
}

Markup Places(const Book& book, const Gap& gap) {
  Markup list;
  for (const GapPlace& place : gap.places) {
    const std::string to = place.box ? BoxAddress(book, place.place, *place.box) : std::string();
    const auto page = FindPage(book, place.place);
    list +=
        Tag("li", to.empty() || !page ? PageLink(book, place.place)
                                      : LinkTo(to, ShortPageName(book.pages[*page]) + ", " + RegionOnPage(*place.box)));
  }
  return list.empty() ? list : Tag("ul", {{"class", "places"}}, list);
}

Markup BadlyRead(const Book& book, const Gap& gap) {
  Markup list;
  for (const PagePlace& place : gap.badly_read) list += Tag("li", PageLink(book, place));
  return list.empty() ? list : Tag("ul", {{"class", "places"}}, list);
}

Markup OneManual(const Book& book, const ManualGaps& gaps, std::size_t number) {
  Markup section = Tag("h2", book.gaps.size() > 1 ? gaps.manual : std::string("What was found")) +
                   Tag("p", {{"class", "hint"}}, SearchedText(gaps));
  if (gaps.gaps.empty()) {
    section += Tag("p", {{"class", "note"}}, "Nothing was found to be missing, and nothing contradicts itself.");
    return Tag("section", {{"class", "divider"}}, section);
  }
  Markup rows;
  for (const Gap& gap : gaps.gaps) {
    rows += Tag("tr", Tag("th", {{"scope", "row"}}, gap.what) + Tag("td", std::string(Name(gap.kind))) +
                          Tag("td", {{"class", "grade"}}, std::string(Name(gap.grade))) + Tag("td", gap.reason) +
                          Tag("td", Places(book, gap)) + Tag("td", BadlyRead(book, gap)));
  }
  section += DataTable(
      "Gaps of " + gaps.manual, "gaps-" + std::to_string(number),
      {{"What", ""}, {"Kind", ""}, {"Grade", ""}, {"Why", ""}, {"Where", ""}, {"Badly read, may hold it", ""}}, rows);
  return Tag("section", {{"class", "divider"}}, section);
}

}  // namespace

std::string GapsHtml(const Book& book) {
  Markup main =
      SetHead(book, SetTab::kGaps) +
      Tag("p", {{"class", "hint"}},
          "What the manual lacks, and where it contradicts itself. Missing is said only where every page that "
          "would hold the thing was read well; look at the sheets before you order.");
  for (std::size_t i = 0; i < book.gaps.size(); ++i) main += OneManual(book, book.gaps[i], i + 1);
  return WholeHtml({book.set + ": gaps", "../../", "gaps", main});
}

}  // namespace benchleaf::binder
