#include "binder/document.h"
#include "binder/page_drawing.h"
#include "binder/set_documents.h"

#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/report/where.h"

#include <algorithm>

namespace benchleaf::binder {
namespace {

// The surest place on each page; a part that is drawn on many sheets would fill the paper.
constexpr std::size_t kMostCrops = 2;

Markup Crops(const Book& book, const BookPart& part, const std::vector<PagePicture>& pictures) {
  Markup crops;
  for (std::size_t i = 0; i < std::min(kMostCrops, part.drawn.size()); ++i) {
    const SpotPlace& place = part.drawn[i];
    const BookPage& page = book.pages[place.page];
    const Spot& spot = page.spots[place.spot];
    const std::string where =
        ShortPageName(page) + " " + std::string(Name(page.place.kind)) + ", " + WhereOnPage(spot.box);
    Markup figure;
    if (pictures[place.page].is_there()) {
      figure += RingedCrop(page, pictures[place.page], spot, PartName(part.entry) + ", ringed on " + where);
    }
    crops += Tag("figure", figure + Tag("figcaption", where));
  }
  return crops.empty() ? Tag("p", {{"class", "faint"}}, "not seen on a drawing") : crops;
}

Markup Slip(const Book& book, const BookPart& part, const std::vector<PagePicture>& pictures) {
  return Tag("li", {{"class", "slip"}},
             Tag("p", Tag("strong", {{"class", "tag"}}, PartName(part.entry)) + " " + PartWords(part.entry)) +
                 Tag("p", {{"class", "faint"}}, "listed on " + ShortPageName(book.pages[part.row.page])) +
                 Crops(book, part, pictures));
}

}  // namespace

std::string PaperHtml(const Book& book, const std::vector<PagePicture>& pictures) {
  Markup slips;
  for (const BookPart& part : book.parts) {
    if (!NameOf(part.entry).empty()) slips += Slip(book, part, pictures);
  }
  const Markup main =
      SetHead(book, SetTab::kPaper) + CautionLine() +
      (slips.empty() ? Tag("p", {{"class", "note"}}, "No rows of a parts list were read in this set.")
                     : Tag("p", {{"class", "hint"}},
                           "The parts index with a picture of each place, to be printed and laid on the bench.") +
                           Tag("ul", {{"class", "slips"}}, slips));
  return WholeHtml({book.set + ": parts on paper", "../../", "paper", main});
}

}  // namespace benchleaf::binder
