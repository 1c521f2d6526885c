#include "cli/picture_command.h"

#include "cli/narrowed_search.h"
#include "cli/picture_files.h"
#include "cli/talk.h"

#include "benchleaf/raster/page_source.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/picture.h"
#include "benchleaf/report/pictured.h"
#include "benchleaf/report/text.h"
#include "benchleaf/work/page_viewer.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr int kMostPlaces = 1000;
constexpr int kPageSide = 1600;
constexpr int kSpotSide = 4000;

// The scan's page, or why it cannot be pictured.
Result<PageView> LoadPage(PageViewer& viewer, const fs::path& library, const PagePlace& place) {
  const fs::path path = library / place.file;
  std::error_code failed;
  if (!fs::exists(path, failed)) {
    return Fail(ErrorCode::kMissing,
                "the scan is not in the library folder '" + library.string() + "'; --library names another",
                place.file);
  }
  return viewer.View(path, place.file, place.page, {{}, kPageSide});
}

// The turn that makes the page upright, as far as the index knows the page.
Result<int> OrientationOf(IndexReader& index, const PagePlace& place) {
  const auto page = index.Page(place.file, place.page);
  if (!page) return tl::unexpected(page.error());
  return *page ? (*page)->reading.frame.orientation : 0;
}

// The places of the term that are to be pictured.
tl::expected<std::vector<Pictured>, ExitCode> ChoosePlaces(IndexReader& index, const PictureOptions& options,
                                                           const Streams& streams) {
  const auto narrowing = ChooseNarrowing(index, options.set, options.kind, streams);
  if (!narrowing) return tl::unexpected(narrowing.error());
  const auto found = Search(index, options.term, *narrowing, std::max(options.hit, options.limit));
  if (!found) return tl::unexpected(Stop(streams, found.error()));
  if (found->hits.empty()) {
    Say(streams, NothingFoundText(*found));
    return tl::unexpected(ExitCode::kNothingFound);
  }
  if (options.hit > static_cast<int>(found->hits.size())) {
    Say(streams, options.term + ": it has only " + Counted(found->hits.size(), "place"));
    return tl::unexpected(ExitCode::kNothingFound);
  }
  // Without a number, the places that fit as well as the first: no look-alikes where the term itself is found.
  auto first = found->hits.begin();
  auto last =
      std::find_if(first, found->hits.end(), [&](const FoundSighting& hit) { return hit.match != first->match; });
  if (options.hit > 0) {
    first += options.hit - 1;
    last = first + 1;
  } else if (last == found->hits.end() && found->more) {
    Say(streams,
        "only the first " + std::to_string(options.limit) + " places are pictured; --limit or --hit asks for others");
  }
  std::vector<Pictured> places;
  for (auto hit = first; hit != last; ++hit) {
    const auto orientation = OrientationOf(index, hit->place);
    if (!orientation) return tl::unexpected(Stop(streams, orientation.error()));
    places.push_back({hit->place, hit->sighting.box, hit->sighting, *orientation, {}, {}});
  }
  return places;
}

// The page of the named file; the index only helps to turn it upright.
Result<Pictured> NamedPage(const PictureOptions& options) {
  Pictured pictured;
  pictured.place.file = options.file;
  pictured.place.page = options.page;
  if (!options.box.empty()) {
    const FractionBox box{options.box[0], options.box[1], options.box[2], options.box[3]};
    const bool on_page = box.x >= 0 && box.y >= 0 && box.width > 0 && box.height > 0 && box.x + box.width <= 1 &&
                         box.y + box.height <= 1;
    if (!on_page) {
      return Fail(ErrorCode::kUsage,
                  "--box takes x,y,width,height as fractions of the page, from its upper left corner");
    }
    pictured.box = box;
  }
  if (const auto index = OpenIndex(options.places)) {
    const auto page = (*index)->Page(options.file, options.page);
    if (page && *page) {
      pictured.turned = (*page)->reading.frame.orientation;
      pictured.place.kind = (*page)->facts.kind;
      pictured.place.printed_number = (*page)->facts.printed_number;
    }
  }
  return pictured;
}

Result<void> WritePictures(PageViewer& viewer, const fs::path& library, const Pictured& pictured) {
  const auto page = LoadPage(viewer, library, pictured.place);
  if (!page) return tl::unexpected(page.error());
  if (!pictured.box) return WritePng(pictured.page_file, UprightPage(page->image, pictured.turned, kPageSide));
  const SpotView view = ViewOfSpot(page->page_width, page->page_height, *pictured.box);
  const PagePlace& place = pictured.place;
  const auto part = viewer.View(library / place.file, place.file, place.page, {view.part, kSpotSide});
  if (!part) return tl::unexpected(part.error());
  auto spot = WritePng(pictured.spot_file, RingedSpot(part->image, view.spot, pictured.turned));
  if (!spot) return spot;
  return WritePng(pictured.page_file, RingedPage(page->image, *pictured.box, pictured.turned, kPageSide));
}

// Gives every picture its files; none is there already unless it may be written over.
Result<void> NameFiles(const PictureOptions& options, std::vector<Pictured>& pictures) {
  const std::string subject =
      options.term.empty() ? fs::path(options.file).stem().string() + "-" + std::to_string(options.page) : options.term;
  const auto names = NamePictures(options.out, subject, pictures.size());
  if (!names) return tl::unexpected(names.error());
  std::vector<fs::path> files;
  for (std::size_t i = 0; i < pictures.size(); ++i) {
    // A page without a ring is one picture, so it takes the plain name.
    pictures[i].page_file = pictures[i].box ? (*names)[i].page.string() : (*names)[i].spot.string();
    files.emplace_back(pictures[i].page_file);
    if (!pictures[i].box) continue;
    pictures[i].spot_file = (*names)[i].spot.string();
    files.emplace_back(pictures[i].spot_file);
  }
  return options.force ? Result<void>() : CheckNoneExists(files);
}

ExitCode WriteAll(const PictureOptions& options, const std::vector<Pictured>& pictures, const Streams& streams) {
  PageViewer viewer(ProgramPath(), options.places.ConfigFolder());
  std::size_t written = 0;
  std::optional<Error> last_failure;
  for (const Pictured& pictured : pictures) {
    const auto result = WritePictures(viewer, options.places.library, pictured);
    if (!result) {
      last_failure = result.error();
      Say(streams, result.error().ToString());
      continue;
    }
    ++written;
    streams.out << (options.json ? PicturedJson(pictured) : PicturedText(pictured));
  }
  if (options.json) {
    streams.out << Json::Object(
                       {{"type", "summary"}, {"command", "picture"}, {"places", static_cast<std::int64_t>(written)}})
                       .Dump()
                << '\n';
  }
  if (!last_failure) return ExitCode::kOk;
  return written > 0 ? ExitCode::kPartly : ExitCodeFor(last_failure->code);
}

}  // namespace

void SetUpPicture(CLI::App& app, Job& job) {
  auto options = std::make_shared<PictureOptions>();
  CLI::App* command =
      app.add_subcommand("picture", "Write PNG pictures of a spot, ringed: with its surroundings, and on its page");
  CLI::Option* term = command->add_option("TERM", options->term, "What to show");
  command->add_option("--in", options->set, "Only in this set")->type_name("SET");
  command->add_option("--kind", options->kind, "Only on pages of this kind")->type_name("KIND");
  command
      ->add_option("--hit", options->hit, "Only the place with this number in the answer of `find` (default: the best)")
      ->type_name("N")
      ->check(CLI::Range(1, kMostPlaces));
  command->add_option("--limit", options->limit, "Places pictured at most")
      ->type_name("N")
      ->check(CLI::Range(1, kMostPlaces))
      ->capture_default_str();
  CLI::Option* file = command->add_option("--file", options->file, "Instead of a term: this scan, named as in answers")
                          ->type_name("FILE")
                          ->excludes(term);
  CLI::Option* page = command->add_option("--page", options->page, "Its page, counted from 1")
                          ->type_name("N")
                          ->check(CLI::PositiveNumber)
                          ->needs(file)
                          ->capture_default_str();
  command->add_option("--box", options->box, "What to ring on it: fractions of the page, as answers in JSON give them")
      ->type_name("X,Y,W,H")
      ->delimiter(',')
      ->expected(4)
      ->needs(file)
      ->needs(page);
  command->add_option("-o,--out", options->out, "File to write, ending in .png; the page goes to FILE-page.png")
      ->type_name("FILE");
  command->add_flag("--force", options->force, "Write over files that are there");
  command->add_flag("--json", options->json, "One JSON object a line");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf picture C112 --in \"Quillhaven 12\"\n"
      "  benchleaf picture C112 --hit 3 -o spot.png\n"
      "  benchleaf picture --file quillhaven-12.pdf --page 3 --box 0.22,0.13,0.02,0.01");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunPicture(*options, s); }; });
}

ExitCode RunPicture(const PictureOptions& options, const Streams& streams) {
  if (options.term.empty() && options.file.empty()) {
    return Stop(streams, {ErrorCode::kUsage, "say what to show: a term, or --file and --page", {}, 0});
  }
  std::vector<Pictured> pictures;
  if (options.term.empty()) {
    auto named = NamedPage(options);
    if (!named) return Stop(streams, named.error());
    pictures.push_back(std::move(*named));
  } else {
    const auto index = OpenIndex(options.places);
    if (!index) return Stop(streams, index.error());
    auto chosen = ChoosePlaces(**index, options, streams);
    if (!chosen) return chosen.error();
    pictures = std::move(*chosen);
  }
  const auto named = NameFiles(options, pictures);
  if (!named) return Stop(streams, named.error());
  return WriteAll(options, pictures, streams);
}

}  // namespace benchleaf
