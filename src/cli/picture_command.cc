#include "cli/picture_command.h"

#include "cli/picture_places.h"
#include "cli/picture_writing.h"
#include "cli/talk.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <map>
#include <memory>
#include <system_error>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr int kMostPlaces = 1000;
constexpr int kLeastSide = 400;  // px
constexpr int kMostSide = 4096;  // what a worker's answer holds
// Places of a term, where nothing is said.
constexpr int kFewPlaces = 6;
constexpr int kPlacesTogether = 60;
constexpr int kPlacesOnSheets = 300;
constexpr std::size_t kLongestSubject = 60;

const std::map<std::string, PictureView> kViews = {
    {"both", PictureView::kBoth}, {"spot", PictureView::kSpot}, {"page", PictureView::kPage}};

// What the files are named after.
std::string SubjectOf(const std::vector<TermPlaces>& chosen) {
  std::string subject;
  for (const TermPlaces& term : chosen) subject += (subject.empty() ? "" : "-") + term.term;
  return subject.substr(0, kLongestSubject);
}

std::string SubjectOf(const Pictured& page) {
  return fs::path(page.place.file).stem().string() + "-" + std::to_string(page.place.page);
}

bool IsScanOfLibrary(const PictureOptions& options, const std::string& term) {
  std::error_code failed;
  return fs::is_regular_file(fs::path(options.places.library) / term, failed);
}

// What is said twice or makes no sense together.
Result<void> CheckAsked(const PictureOptions& options) {
  const bool page = !options.file.empty() || !options.page.empty();
  const bool term = !options.terms.empty() || !options.hits.empty();
  if (!page && !term) {
    return Fail(ErrorCode::kUsage,
                "say what to show: a term; --hit N of what was found last; a scan's name; or --in SET --page NUMBER");
  }
  if (page && term) {
    return Fail(ErrorCode::kUsage, "a page is shown by itself: leave out the term and --hit, or the page");
  }
  if (page && options.file.empty() && options.set.empty()) {
    return Fail(ErrorCode::kUsage, "--page needs a scan's name, or --in SET whose page bears the number");
  }
  if (!options.box.empty() && (options.file.empty() || options.page.empty())) {
    return Fail(ErrorCode::kUsage, "--box needs --file and --page: it rings a spot on that page");
  }
  if (options.sheet && options.together) {
    return Fail(ErrorCode::kUsage, "--sheet shows each place by itself, --together all of a page: say one of them");
  }
  if (options.sheet && page) return Fail(ErrorCode::kUsage, "--sheet takes terms, not a page");
  return {};
}

// A picture in the library would be one of its scans from the next index on.
void WarnOfLibrary(const PictureOptions& options, ExitCode code, const Streams& streams) {
  const bool written = code == ExitCode::kOk || code == ExitCode::kPartly;
  const fs::path out = options.output.out.empty() ? fs::path("picture.png") : fs::path(options.output.out);
  if (!written || options.output.talk.quiet || CheckOutsideLibrary(options.places, out)) return;
  Say(streams,
      "what was written lies in the library, where the next `benchleaf index` would read it as a scan: move it, or "
      "name "
      "another place with -o");
}

ExitCode PictureTerms(const PictureOptions& options, const Streams& streams) {
  const auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto chosen = ChoosePlaces(**index, options, streams);
  if (!chosen) return chosen.error();
  if (options.sheet) return WriteSheets(options, *chosen, SubjectOf(*chosen), streams);
  return WritePictures(options, PicturesOf(*chosen, options.together), SubjectOf(*chosen), streams);
}

void AddPageOptions(CLI::App& command, PictureOptions& options) {
  command.add_option("--file", options.file, "Instead of a term: this scan, named as in answers")->type_name("FILE");
  command
      .add_option("-p,--page", options.page,
                  "Its page, counted from 1; without a scan, the page of --in SET that bears this number")
      ->type_name("NUMBER");
  command.add_option("--box", options.box, "What to ring on it: fractions of the page, as answers in JSON give them")
      ->type_name("X,Y,W,H")
      ->delimiter(',')
      ->expected(4);
}

void AddLookOptions(CLI::App& command, PictureOptions& options) {
  command.add_flag("-t,--together", options.together,
                   "Ring all places of a page in one picture, labelled where they are of several terms");
  command.add_flag("-s,--sheet", options.sheet,
                   "One contact sheet of all places, each with its set, its page and what it shows");
  command
      .add_option("--view", options.view,
                  "What to write: spot (with its surroundings), page (the whole of it) or both (default)")
      ->type_name("VIEW")
      ->transform(CLI::CheckedTransformer(kViews).description(""))
      ->option_text("VIEW");
  command
      .add_option("--size", options.size,
                  "Px of a picture's longer side (default: 1600 for pages, 2339 for sheets, as scanned for spots)")
      ->type_name("PX")
      ->check(CLI::Range(kLeastSide, kMostSide).description(""));
}

}  // namespace

int PictureOptions::LimitOf() const {
  if (limit > 0) return limit;
  if (sheet) return kPlacesOnSheets;
  return together ? kPlacesTogether : kFewPlaces;
}

std::vector<std::string> PictureViews() {
  std::vector<std::string> names;
  names.reserve(kViews.size());
  for (const auto& [name, view] : kViews) names.push_back(name);
  return names;
}

void SetUpPicture(CLI::App& app, Job& job) {
  auto options = std::make_shared<PictureOptions>();
  CLI::App* command = app.add_subcommand("picture", "Write PNG pictures: spots with a ring round them, pages, sheets");
  command->add_option("TERM", options->terms, "What to show, or the name of a scan whose page is wanted");
  command->add_option("--in", options->set, "Only in this set")->type_name("SET");
  command->add_option("--kind", options->kind, "Only on pages of this kind")->type_name("KIND");
  command
      ->add_option("-n,--hit", options->hits,
                   "Only places with these numbers in the answer of `find` (3 or 1,4); without a TERM, in its last one")
      ->type_name("N")
      ->delimiter(',')
      ->allow_extra_args(false)
      ->check(CLI::Range(1, kMostPlaces).description(""));
  command
      ->add_option("--limit", options->limit,
                   "Places of a term at most (default: 6; 60 with --together, 300 with --sheet)")
      ->type_name("N")
      ->check(CLI::Range(1, kMostPlaces).description(""));
  AddPageOptions(*command, *options);
  AddLookOptions(*command, *options);
  AddOutputOptions(*command, "File to write, ending in .png; of a spot, the page goes to FILE-page.png",
                   options->output);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf picture C112 --in \"Quillhaven 12\"       the best places of C112 in a set\n"
      "  benchleaf find C112; benchleaf picture -n 3       the third of what was found last\n"
      "  benchleaf picture C112 R7 V3 --in Quill -t        all that a page has of them\n"
      "  benchleaf picture 6AU6 --sheet                    the tube in every set of the library\n"
      "  benchleaf picture quillhaven-12.pdf -p 3          a page of a scan\n"
      "  benchleaf picture --in Quillhaven -p 8-17         the page that bears a number");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunPicture(*options, s); }; });
}

ExitCode RunPicture(const PictureOptions& asked, const Streams& streams) {
  PictureOptions options = asked;
  if (options.file.empty() && options.terms.size() == 1 && IsScanOfLibrary(options, options.terms.front())) {
    options.file = std::exchange(options.terms, {}).front();
  }
  if (const auto checked = CheckAsked(options); !checked) return Stop(streams, checked.error());
  if (options.file.empty() && options.page.empty()) {
    const ExitCode code = PictureTerms(options, streams);
    WarnOfLibrary(options, code, streams);
    return code;
  }
  auto pages = NamedPages(options, streams);
  if (!pages) return pages.error();
  const std::string subject = SubjectOf(pages->front());
  const ExitCode code = WritePictures(options, std::move(*pages), subject, streams);
  WarnOfLibrary(options, code, streams);
  return code;
}

}  // namespace benchleaf
