#include "cli/picture_writing.h"

#include "cli/page_loading.h"
#include "cli/picture_files.h"
#include "cli/picture_outcome.h"
#include "cli/talk.h"

#include "benchleaf/raster/page_source.h"
#include "benchleaf/report/picture.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr int kPageSide = 1600;
constexpr int kSpotSide = 4000;
constexpr int kProbeSide = 16;  // where only the page's measures are wanted

// Labels tell rings apart where more than one term is ringed.
std::vector<Mark> MarksOf(const Pictured& pictured) {
  std::set<std::string> texts;
  for (const RingedPlace& ringed : pictured.ringed) {
    if (ringed.sighting) texts.insert(ringed.sighting->text);
  }
  std::vector<Mark> marks;
  for (const RingedPlace& ringed : pictured.ringed) {
    marks.push_back({ringed.box, texts.size() > 1 && ringed.sighting ? ringed.sighting->text : ""});
  }
  return marks;
}

Result<void> Write(PageLoader& loader, const Pictured& pictured, int size) {
  const int page_side = size > 0 ? size : kPageSide;
  const auto page = loader.Load(pictured.place, {{}, pictured.page_file.empty() ? kProbeSide : page_side});
  if (!page) return tl::unexpected(page.error());
  if (pictured.ringed.empty()) {
    return WritePng(pictured.page_file, UprightPage(page->image, pictured.turned, page_side));
  }
  const std::vector<Mark> marks = MarksOf(pictured);
  if (!pictured.spot_file.empty()) {
    const SpotView view = ViewOfSpots(page->page_width, page->page_height, marks);
    const auto part = loader.Load(pictured.place, {view.part, kSpotSide});
    if (!part) return tl::unexpected(part.error());
    auto spot = WritePng(pictured.spot_file, RingedSpots(part->image, view.marks, pictured.turned, size));
    if (!spot) return spot;
  }
  if (pictured.page_file.empty()) return {};
  return WritePng(pictured.page_file, RingedPage(page->image, marks, pictured.turned, page_side));
}

// Gives every picture its files; none is there already unless it may be written over.
Result<void> NameFiles(const PictureOptions& options, const std::string& subject, std::vector<Pictured>& pictures) {
  const auto names = NamePictures(options.output.out, subject, pictures.size());
  if (!names) return tl::unexpected(names.error());
  std::vector<fs::path> files;
  for (std::size_t i = 0; i < pictures.size(); ++i) {
    const bool page_alone = pictures[i].ringed.empty() || options.view == PictureView::kPage;
    // A picture that comes alone takes the plain name.
    if (!page_alone) pictures[i].spot_file = (*names)[i].spot.string();
    if (page_alone) pictures[i].page_file = (*names)[i].spot.string();
    if (!page_alone && options.view == PictureView::kBoth) pictures[i].page_file = (*names)[i].page.string();
    for (const std::string& file : {pictures[i].spot_file, pictures[i].page_file}) {
      if (!file.empty()) files.emplace_back(file);
    }
  }
  return CheckMayWrite(options.output, files);
}

}  // namespace

ExitCode WritePictures(const PictureOptions& options, std::vector<Pictured> pictures, const std::string& subject,
                       const Streams& streams) {
  if (const auto named = NameFiles(options, subject, pictures); !named) return Stop(streams, named.error());
  PageLoader loader(options.places);
  PictureOutcome outcome(options.output, streams, pictures.size());
  for (const Pictured& pictured : pictures) {
    if (const auto written = Write(loader, pictured, options.size); !written) {
      outcome.Failed(written.error());
      continue;
    }
    outcome.Shown(pictured.place, std::max<std::size_t>(1, pictured.ringed.size()));
    outcome.Tell(options.output.json ? PicturedJson(pictured) : PicturedText(pictured));
  }
  return outcome.Finish();
}

}  // namespace benchleaf
