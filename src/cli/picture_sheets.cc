#include "cli/page_loading.h"
#include "cli/picture_files.h"
#include "cli/picture_outcome.h"
#include "cli/picture_writing.h"
#include "cli/talk.h"

#include "benchleaf/raster/page_source.h"
#include "benchleaf/report/contact_sheet.h"
#include "benchleaf/report/picture.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <cstddef>
#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kSheetSide = 2339;  // A4 at 200 dpi
constexpr int kProbeSide = 16;

class SheetMaker {
 public:
  SheetMaker(const PictureOptions& options, PictureOutcome& outcome)
      : loader_(options.places), outcome_(outcome), side_(options.size > 0 ? options.size : kSheetSide) {}

  ColorImage Make(const std::string& title, const std::string& number, const std::vector<SheetPlace>& places) {
    std::vector<SheetCell> cells;
    for (const SheetPlace& place : places) {
      SheetCell cell{CaptionOf(place), {}, ""};
      if (auto thumb = Thumb(place)) {
        cell.picture = std::move(*thumb);
        outcome_.Shown(place.place, 1);
      } else {
        cell.failure = thumb.error().ToString();
        outcome_.Failed(thumb.error());
      }
      cells.push_back(std::move(cell));
    }
    return ContactSheet(title, number, cells, side_);
  }

 private:
  Result<ColorImage> Thumb(const SheetPlace& place) {
    const auto page = loader_.Load(place.place, {{}, kProbeSide});
    if (!page) return tl::unexpected(page.error());
    const SpotView view = ViewOfSpots(page->page_width, page->page_height, {{place.sighting.box, ""}});
    const ThumbSize size = ThumbOn(side_);
    const auto part = loader_.Load(place.place, {view.part, 2 * std::max(size.width, size.height)});
    if (!part) return tl::unexpected(part.error());
    return RingedThumb(part->image, view.marks.front().box, place.turned, size.width, size.height);
  }

  PageLoader loader_;
  PictureOutcome& outcome_;
  int side_;
};

// The places of all terms, set by set, the surest of a set first.
std::vector<SheetPlace> Sorted(const std::vector<TermPlaces>& chosen) {
  std::vector<SheetPlace> places;
  for (const TermPlaces& term : chosen) places.insert(places.end(), term.places.begin(), term.places.end());
  std::stable_sort(places.begin(), places.end(),
                   [](const SheetPlace& a, const SheetPlace& b) { return a.place.set < b.place.set; });
  return places;
}

std::string Terms(const std::vector<TermPlaces>& chosen) {
  std::string terms;
  for (const TermPlaces& term : chosen) terms += (terms.empty() ? "" : ", ") + term.term;
  return terms;
}

}  // namespace

ExitCode WriteSheets(const PictureOptions& options, const std::vector<TermPlaces>& chosen, const std::string& subject,
                     const Streams& streams) {
  const std::vector<SheetPlace> places = Sorted(chosen);
  const std::size_t sheets = (places.size() + kCellsPerSheet - 1) / kCellsPerSheet;
  const auto names = NamePictures(options.output.out, subject + "-sheet", sheets);
  if (!names) return Stop(streams, names.error());
  std::vector<std::filesystem::path> files;
  for (const PictureFiles& name : *names) files.push_back(name.spot);
  if (const auto free = CheckMayWrite(options.output, files); !free) return Stop(streams, free.error());

  PictureOutcome outcome(options.output, streams, places.size());
  SheetMaker maker(options, outcome);
  for (std::size_t sheet = 0; sheet < sheets; ++sheet) {
    const auto first = places.begin() + static_cast<std::ptrdiff_t>(sheet * kCellsPerSheet);
    const auto last = sheet + 1 == sheets ? places.end() : first + kCellsPerSheet;
    const std::vector<SheetPlace> shown(first, last);
    const std::string number =
        sheets == 1 ? "" : "sheet " + std::to_string(sheet + 1) + " of " + std::to_string(sheets);
    const auto written = WritePng(files[sheet], maker.Make(SheetTitle(Terms(chosen), places), number, shown));
    if (!written) return Stop(streams, written.error());
    outcome.Tell(options.output.json ? SheetJson(files[sheet].string(), shown)
                                     : SheetText(files[sheet].string(), shown));
  }
  return outcome.Finish();
}

}  // namespace benchleaf
