#include "cli/picture_places.h"

#include "cli/choices.h"
#include "cli/last_find.h"
#include "cli/narrowed_search.h"
#include "cli/talk.h"

#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

bool IsItself(Match match) { return match == Match::kExact || match == Match::kForm; }

// Whether a place is to be shown beside the best one.
bool FitsAsWell(const FoundSighting& hit, const FoundSighting& best, bool side_by_side) {
  return hit.match == best.match || (side_by_side && IsItself(hit.match) && IsItself(best.match));
}

// The place with what the index knows of its page: which way is up, and which tube it is.
Result<SheetPlace> WithItsPage(IndexReader& index, const FoundSighting& hit) {
  const auto page = index.Page(hit.place.file, hit.place.page);
  if (!page) return tl::unexpected(page.error());
  SheetPlace place{hit.place, hit.sighting, {}, 0};
  if (*page) {
    place.turned = (*page)->reading.frame.orientation;
    if (hit.kind() == TermKind::kTube) {
      place.designator =
          TubeDesignators((*page)->entries, (*page)->sightings, (*page)->reading.frame).Beside(hit.sighting);
    }
  }
  return place;
}

tl::expected<TermPlaces, ExitCode> PlacesOf(IndexReader& index, const PictureOptions& options, const TermHits& found,
                                            const Streams& streams) {
  std::vector<FoundSighting> shown;
  for (const int number : options.hits) {
    if (number > static_cast<int>(found.hits.size())) {
      Say(streams, found.term + ": it has only " + Counted(found.hits.size(), "place"));
      return tl::unexpected(ExitCode::kNothingFound);
    }
    shown.push_back(found.hits[static_cast<std::size_t>(number) - 1]);
  }
  if (options.hits.empty()) {
    const bool side_by_side = options.together || options.sheet;
    for (const FoundSighting& hit : found.hits) {
      if (!FitsAsWell(hit, found.hits.front(), side_by_side)) break;
      shown.push_back(hit);
    }
    if (found.more && shown.size() == found.hits.size() && !options.output.talk.quiet) {
      Say(streams, found.term + ": only the first " + std::to_string(options.LimitOf()) +
                       " places are pictured; --limit or --hit asks for others");
    }
  }
  TermPlaces chosen;
  chosen.term = found.term;
  for (const FoundSighting& hit : shown) {
    auto place = WithItsPage(index, hit);
    if (!place) return tl::unexpected(Stop(streams, place.error()));
    chosen.places.push_back(std::move(*place));
  }
  return chosen;
}

// What was found last, found again.
tl::expected<TermHits, ExitCode> FindAgain(IndexReader& index, const PictureOptions& options, const Streams& streams) {
  const auto last = RecallFind(streams.state_folder);
  if (!last) return tl::unexpected(Stop(streams, last.error()));
  if (last->database != AbsoluteDatabase(options.places)) {
    return tl::unexpected(Stop(
        streams,
        {ErrorCode::kUsage, "the last find was in another index: --db names it, or say find here", last->database, 0}));
  }
  const auto kind = ChoosePageKind(last->kind);
  if (!kind) return tl::unexpected(Stop(streams, kind.error()));
  auto found = Search(index, last->term, {last->set, *kind}, last->limit);
  if (!found) return tl::unexpected(Stop(streams, found.error()));
  if (found->hits.empty() || AnswerDigest(*found) != last->answer) {
    Say(streams, "the index has changed since " + last->term + " was found: say find again, for its numbers");
    return tl::unexpected(ExitCode::kNothingFound);
  }
  return std::move(*found);
}

std::optional<int> PageNumber(const std::string& text) {
  int number = 0;
  const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole = failed == std::errc() && end == text.data() + text.size() && number > 0;
  return whole ? std::optional<int>(number) : std::nullopt;
}

PagePlace PlaceOfPage(const ManualRecord& manual, const PageRecord& page) {
  return {manual.set, manual.manual, page.file, page.page, page.facts.kind, page.facts.printed_number};
}

Pictured WholePage(const PagePlace& place, int turned) {
  Pictured pictured;
  pictured.place = place;
  pictured.turned = turned;
  return pictured;
}

// The set's pages that bear the number; where none does and the set is one file, the page with that place in it.
std::vector<Pictured> PagesNumbered(const std::vector<ManualRecord>& manuals, const std::string& number) {
  std::vector<Pictured> pages;
  std::size_t files = 0;
  for (const ManualRecord& manual : manuals) {
    files += manual.files.size();
    for (const PageRecord& page : manual.pages) {
      if (page.facts.printed_number == number) {
        pages.push_back(WholePage(PlaceOfPage(manual, page), page.reading.frame.orientation));
      }
    }
  }
  const auto place = PageNumber(number);
  if (!pages.empty() || files != 1 || !place) return pages;
  for (const PageRecord& page : manuals.front().pages) {
    if (page.page == *place)
      pages.push_back(WholePage(PlaceOfPage(manuals.front(), page), page.reading.frame.orientation));
  }
  return pages;
}

tl::expected<std::vector<Pictured>, ExitCode> PagesOfSet(const PictureOptions& options, const Streams& streams) {
  const auto index = OpenIndex(options.places);
  if (!index) return tl::unexpected(Stop(streams, index.error()));
  const auto set = ChooseSet(**index, options.set, streams);
  if (!set) return tl::unexpected(set.error());
  const auto manuals = (*index)->Manuals(*set);
  if (!manuals) return tl::unexpected(Stop(streams, manuals.error()));
  std::vector<Pictured> pages = PagesNumbered(*manuals, options.page);
  if (pages.empty()) {
    Say(streams, *set + ": no page bears the number " + options.page + "; --file FILE --page N names one by its place");
    return tl::unexpected(ExitCode::kNothingFound);
  }
  return pages;
}

// The page of the named file; the index only helps to turn it upright.
Result<Pictured> PageOfFile(const PictureOptions& options) {
  const auto number = options.page.empty() ? std::optional<int>(1) : PageNumber(options.page);
  if (!number)
    return Fail(ErrorCode::kUsage, "--page takes the page's place in the file, from 1, not '" + options.page + "'");
  Pictured pictured;
  pictured.place.file = options.file;
  pictured.place.page = *number;
  if (const auto index = OpenIndex(options.places)) {
    const auto page = (*index)->Page(options.file, *number);
    if (page && *page) {
      pictured.turned = (*page)->reading.frame.orientation;
      pictured.place.kind = (*page)->facts.kind;
      pictured.place.printed_number = (*page)->facts.printed_number;
    }
  }
  return pictured;
}

Result<void> RingBox(const PictureOptions& options, std::vector<Pictured>& pages) {
  if (options.box.empty()) return {};
  const FractionBox box{options.box[0], options.box[1], options.box[2], options.box[3]};
  const bool on_page =
      box.x >= 0 && box.y >= 0 && box.width > 0 && box.height > 0 && box.x + box.width <= 1 && box.y + box.height <= 1;
  if (!on_page) {
    return Fail(ErrorCode::kUsage, "--box takes x,y,width,height as fractions of the page, from its upper left corner");
  }
  for (Pictured& page : pages) page.ringed = {{box, std::nullopt}};
  return {};
}

}  // namespace

tl::expected<std::vector<TermPlaces>, ExitCode> ChoosePlaces(IndexReader& index, const PictureOptions& options,
                                                             const Streams& streams) {
  std::vector<TermHits> answers;
  if (options.terms.empty()) {
    auto again = FindAgain(index, options, streams);
    if (!again) return tl::unexpected(again.error());
    answers.push_back(std::move(*again));
  }
  const auto narrowing = ChooseNarrowing(index, options.set, options.kind, streams);
  if (!narrowing) return tl::unexpected(narrowing.error());
  const int highest = options.hits.empty() ? 0 : *std::max_element(options.hits.begin(), options.hits.end());
  for (const std::string& term : options.terms) {
    auto found = Search(index, term, *narrowing, std::max(highest, options.LimitOf()));
    if (!found) return tl::unexpected(Stop(streams, found.error()));
    if (found->hits.empty()) {
      Say(streams, NothingFoundText(*found));
      return tl::unexpected(ExitCode::kNothingFound);
    }
    answers.push_back(std::move(*found));
  }
  std::vector<TermPlaces> chosen;
  for (const TermHits& found : answers) {
    auto places = PlacesOf(index, options, found, streams);
    if (!places) return tl::unexpected(places.error());
    chosen.push_back(std::move(*places));
  }
  return chosen;
}

std::vector<Pictured> PicturesOf(const std::vector<TermPlaces>& chosen, bool together) {
  std::vector<Pictured> pictures;
  for (const TermPlaces& term : chosen) {
    for (const SheetPlace& place : term.places) {
      auto same_page = pictures.end();
      if (together) {
        same_page = std::find_if(pictures.begin(), pictures.end(), [&](const Pictured& pictured) {
          return pictured.place.file == place.place.file && pictured.place.page == place.place.page;
        });
      }
      if (same_page == pictures.end()) {
        pictures.push_back(WholePage(place.place, place.turned));
        pictures.back().together = together;
        same_page = pictures.end() - 1;
      }
      same_page->ringed.push_back({place.sighting.box, place.sighting});
    }
  }
  return pictures;
}

tl::expected<std::vector<Pictured>, ExitCode> NamedPages(const PictureOptions& options, const Streams& streams) {
  std::vector<Pictured> pages;
  if (options.file.empty()) {
    auto found = PagesOfSet(options, streams);
    if (!found) return found;
    pages = std::move(*found);
  } else {
    auto page = PageOfFile(options);
    if (!page) return tl::unexpected(Stop(streams, page.error()));
    pages.push_back(std::move(*page));
  }
  if (const auto ringed = RingBox(options, pages); !ringed) return tl::unexpected(Stop(streams, ringed.error()));
  return pages;
}

}  // namespace benchleaf
