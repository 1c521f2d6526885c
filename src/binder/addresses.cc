#include "binder/addresses.h"

#include "binder/markup.h"
#include "report/color_image.h"

#include "benchleaf/record/json.h"

namespace benchleaf::binder {
namespace {

std::string Number(const BookPage& page) {
  std::string digits = std::to_string(page.number);
  digits.insert(0, digits.size() < 4 ? 4 - digits.size() : 0, '0');
  return digits;
}

}  // namespace

std::string SheetFile(const BookPage& page) { return "sheet-" + Number(page) + ".html"; }

std::string PictureFile(const BookPage& page) { return std::string(kPicturesFolder) + '/' + Number(page) + ".jpg"; }

std::string ThumbFile(const BookPage& page) { return std::string(kThumbsFolder) + '/' + Number(page) + ".jpg"; }

std::string SpotAddress(const Book& book, const SpotPlace& place) {
  const BookPage& page = book.pages[place.page];
  return SheetFile(page) + '#' + page.spots[place.spot].id;
}

std::string BoxAddress(const Book& book, const PagePlace& place, const FractionBox& box) {
  if (const auto spot = FindSpot(book, place, box)) return SpotAddress(book, *spot);
  const auto number = FindPage(book, place);
  if (!number) return {};
  const BookPage& page = book.pages[*number];
  const FractionBox upright = Turned(box, page.frame.orientation);
  std::string sides;
  for (const double side : {upright.x, upright.y, upright.width, upright.height}) {
    sides += (sides.empty() ? "" : ",") + Json(side).Dump();
  }
  return SheetFile(page) + "#box=" + sides;
}

std::string PartAddress(const BookPart& part) { return "parts.html#" + part.id; }

std::string TubeFiles::NameOf(const std::string& type) {
  std::string& name = names_[type];
  if (!name.empty()) return name;
  constexpr std::size_t kLongest = 40;
  const std::string plain = Slug(type, kLongest, "tube");
  name = plain + ".html";
  for (int i = 2; !given_.insert(name).second; ++i) name = plain + '-' + std::to_string(i) + ".html";
  return name;
}

}  // namespace benchleaf::binder
