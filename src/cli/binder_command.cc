#include "cli/binder_command.h"

#include "cli/book_pictures.h"
#include "cli/choices.h"
#include "cli/interrupt.h"
#include "cli/status_line.h"
#include "cli/talk.h"
#include "cli/tube_files.h"

#include "benchleaf/binder/write_binder.h"
#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/text.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <memory>
#include <thread>
#include <utility>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

constexpr int kMostWorkers = 256;

// What the binder is made with.
struct Tables {
  std::shared_ptr<const Rules> rules;
  TubeTable tubes;
  TubeFunctions functions;
};

Result<Tables> LoadTables(const PlaceOptions& places) {
  auto rules = LoadRules(places);
  if (!rules) return tl::unexpected(rules.error());
  auto tubes = LoadTubes(places);
  if (!tubes) return tl::unexpected(tubes.error());
  auto functions = LoadTubeFunctions(places);
  if (!functions) return tl::unexpected(functions.error());
  return Tables{std::move(*rules), std::move(*tubes), std::move(*functions)};
}

tl::expected<std::vector<std::string>, ExitCode> ChooseSets(IndexReader& index, const BinderOptions& options,
                                                            const Streams& streams) {
  std::vector<std::string> names;
  for (const std::string& text : options.sets) {
    auto set = ChooseSet(index, text, streams);
    if (!set) return tl::unexpected(set.error());
    if (std::find(names.begin(), names.end(), *set) == names.end()) names.push_back(std::move(*set));
  }
  if (!names.empty()) return names;
  const auto all = index.Sets();
  if (!all) return tl::unexpected(Stop(streams, all.error()));
  for (const SetSummary& set : *all) names.push_back(set.set);
  if (names.empty()) {
    Say(streams, "the index holds no set, so there is nothing to put into a binder");
    return tl::unexpected(ExitCode::kNothingFound);
  }
  return names;
}

Result<int> PagesOf(IndexReader& index, const std::vector<std::string>& names) {
  const auto sets = index.Sets();
  if (!sets) return tl::unexpected(sets.error());
  int pages = 0;
  for (const SetSummary& set : *sets) {
    if (std::find(names.begin(), names.end(), set.set) == names.end()) continue;
    for (const SetSummary::ManualSummary& manual : set.manuals) pages += manual.pages;
  }
  return pages;
}

// Puts one set after the other into the binder.
class Filling {
 public:
  Filling(const BinderOptions& options, const Streams& streams, IndexReader& index, const Tables& tables,
          binder::BinderWriter& writer, const std::atomic<bool>& stop)
      : options_(options),
        index_(index),
        tables_(tables),
        writer_(writer),
        line_(streams, options.talk.talk(), &std::chrono::steady_clock::now),
        pictures_({options.places.library, options.places.ConfigFolder(), ProgramPath(), options.workers, {}},
                  options.talk, line_, stop) {}

  void Start(int pages) { pictures_.Start(pages); }

  Result<void> Add(const std::string& set, int number, std::size_t sets) {
    const auto manuals = index_.Manuals(set);
    if (!manuals) return tl::unexpected(manuals.error());
    std::vector<ManualLineup> lineups;
    std::vector<ManualGaps> gaps;
    for (const ManualRecord& manual : *manuals) {
      lineups.push_back(LineUp(manual, tables_.tubes, tables_.functions));
      gaps.push_back(FindGaps(manual, *tables_.rules));
    }
    const binder::Book book = binder::MakeBook(number, *manuals, std::move(lineups), std::move(gaps));
    auto pictures = pictures_.Make(book, *manuals, writer_);
    if (!pictures) return tl::unexpected(pictures.error());
    if (!options_.talk.quiet) {
      line_.Tell(std::to_string(number) + " of " + Counted(sets, "set") + ": " + set + ", " +
                 Counted(book.pages.size(), "sheet"));
    }
    sheets_ += book.pages.size();
    return writer_.AddSet(book, *pictures);
  }

  // Takes the line about the work away.
  void EndLine() { line_.Finish(); }

  std::size_t sheets() const { return sheets_; }
  const BookPictures& pictures() const { return pictures_; }

 private:
  const BinderOptions& options_;
  IndexReader& index_;
  const Tables& tables_;
  binder::BinderWriter& writer_;
  StatusLine line_;
  BookPictures pictures_;
  std::size_t sheets_ = 0;
};

}  // namespace

void SetUpBinder(CLI::App& app, Job& job) {
  auto options = std::make_shared<BinderOptions>();
  options->workers = static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, 64U));
  CLI::App* command =
      app.add_subcommand("binder", "Write the sets as a folder of pages for any browser, and for paper");
  command->add_option("OUT", options->out, "Folder to write: new, empty, or a binder written before, which is replaced")
      ->required();
  command->add_option("--in", options->sets, "Only this set (may be said again)")
      ->type_name("SET")
      ->allow_extra_args(false);
  command->add_option("--workers", options->workers, "Pages drawn at the same time (default: one for each core)")
      ->type_name("N")
      ->check(CLI::Range(1, kMostWorkers));
  AddTalkOptions(*command, options->talk);
  command->add_flag("--json", options->json, "Write a summary as one JSON object");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "The folder needs no network and no server: open its index.html, or copy it to a tablet. It shows the library "
      "as\n"
      "it was indexed; write it again after an index.\n\n"
      "Example:\n"
      "  benchleaf binder ~/binder\n"
      "  benchleaf binder ~/quillhaven --in \"Quillhaven 12\"");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunBinder(*options, s); }; });
}

ExitCode RunBinder(const BinderOptions& options, const Streams& streams) {
  if (const auto outside = CheckOutsideLibrary(options.places, options.out); !outside)
    return Stop(streams, outside.error());
  const auto tables = LoadTables(options.places);
  if (!tables) return Stop(streams, tables.error());
  const auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto sets = ChooseSets(**index, options, streams);
  if (!sets) return sets.error();
  const auto writer = binder::BinderWriter::Begin(options.out, options.places.ConfigFolder() / "binder");
  if (!writer) return Stop(streams, writer.error());

  const Interrupt interrupt;
  Filling filling(options, streams, **index, *tables, **writer, interrupt.flag());
  Result<void> done;
  const auto pages = PagesOf(**index, *sets);
  if (!pages) return Stop(streams, pages.error());
  filling.Start(*pages);
  int number = 0;
  for (const std::string& set : *sets) {
    if (done) done = filling.Add(set, ++number, sets->size());
  }
  if (done) done = (*writer)->Finish(tables->tubes, *tables->rules);
  filling.EndLine();
  if (!done) {
    if (done.error().code == ErrorCode::kCancelled) {
      Say(streams, "stopped; nothing was written to '" + options.out + "': run the same command again");
      return ExitCode::kInterrupted;
    }
    return Stop(streams, done.error());
  }
  if (options.json) {
    streams.out << Json::Object({{"type", "summary"},
                                 {"command", "binder"},
                                 {"out", options.out},
                                 {"sets", static_cast<std::int64_t>(sets->size())},
                                 {"sheets", static_cast<std::int64_t>(filling.sheets())},
                                 {"without_picture", static_cast<std::int64_t>(filling.pictures().missing())},
                                 {"pictures_kept", static_cast<std::int64_t>(filling.pictures().kept())}})
                       .Dump()
                << '\n';
  }
  if (!options.talk.quiet) {
    Say(streams,
        "the binder of " + Counted(sets->size(), "set") + ", " + Counted(filling.sheets(), "sheet") + ", is written" +
            (filling.pictures().kept() > 0 ? " (" + Counted(filling.pictures().kept(), "picture") + " as before)"
                                           : "") +
            ": open '" + (fs::path(options.out) / "index.html").string() + "'");
  }
  return filling.pictures().missing() > 0 ? ExitCode::kPartly : ExitCode::kOk;
}

}  // namespace benchleaf
