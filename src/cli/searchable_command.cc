#include "cli/searchable_command.h"

#include "cli/choices.h"
#include "cli/interrupt.h"
#include "cli/page_loading.h"
#include "cli/picture_files.h"
#include "cli/status_line.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/laid_words.h"
#include "benchleaf/report/text.h"
#include "benchleaf/work/copy_manual.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <system_error>
#include <utility>
#include <vector>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

tl::expected<std::vector<ManualRecord>, ExitCode> ChooseManuals(const SearchableOptions& options,
                                                                const Streams& streams) {
  const auto index = OpenIndex(options.places);
  if (!index) return tl::unexpected(Stop(streams, index.error()));
  const auto set = ChooseSet(**index, options.set, streams);
  if (!set) return tl::unexpected(set.error());
  auto manuals = (*index)->Manuals(*set);
  if (!manuals) return tl::unexpected(Stop(streams, manuals.error()));
  if (options.manual.empty()) return std::move(*manuals);
  std::vector<std::string> names;
  for (const ManualRecord& manual : *manuals) names.push_back(manual.manual);
  std::erase_if(*manuals, [&](const ManualRecord& manual) { return manual.manual != options.manual; });
  if (manuals->empty()) {
    Say(streams, *set + ": no manual of it is called '" + options.manual + "'; there are: " + ListOf(names));
    return tl::unexpected(ExitCode::kNothingFound);
  }
  return std::move(*manuals);
}

std::vector<PageToCopy> PagesOf(const ManualRecord& manual, const fs::path& library) {
  std::vector<PageToCopy> pages;
  for (const PageRecord& page : manual.pages) {
    pages.push_back({library / page.file, page.file, page.page, page.reading.frame.dpi, LaidWords(page)});
  }
  return pages;
}

// The scan that a person is told of where none of the manual's is in the library; nothing where one is.
std::optional<Error> MissingScans(const std::vector<PageToCopy>& pages, const ManualRecord& manual,
                                  const fs::path& library) {
  std::error_code failed;
  if (std::any_of(pages.begin(), pages.end(), [&](const PageToCopy& page) { return fs::exists(page.path, failed); })) {
    return std::nullopt;
  }
  return NotInLibrary(library, pages.empty() ? manual.manual : pages.front().name);
}

// Copies one manual after the other, tells of each, and keeps what went wrong.
class Copying {
 public:
  Copying(const SearchableOptions& options, const Streams& streams)
      : options_(options),
        streams_(streams),
        line_(streams, options.output.talk.talk(), &std::chrono::steady_clock::now) {}

  Result<void> Copy(const ManualRecord& manual, const fs::path& file) {
    const std::vector<PageToCopy> pages = PagesOf(manual, options_.places.library);
    if (auto missing = MissingScans(pages, manual, options_.places.library)) return tl::unexpected(std::move(*missing));
    std::int64_t words = 0;
    for (const PageToCopy& page : pages) words += static_cast<std::int64_t>(page.words.size());
    if (!options_.output.talk.quiet) {
      line_.Tell(manual.set + ", " + manual.manual + ": " + Counted(pages.size(), "page") + ", " +
                 Counted(static_cast<std::size_t>(words), "word"));
    }
    const auto left_out = Write(pages, file);
    line_.Finish();
    if (!left_out) return tl::unexpected(left_out.error());
    for (const Error& error : *left_out) Say(streams_, "left out: " + error.ToString());
    partly_ = partly_ || !left_out->empty();
    const std::size_t copied = pages.size() - std::min(pages.size(), left_out->size());
    if (options_.output.json) {
      streams_.out << Json::Object({{"type", "copy"},
                                    {"file", file.string()},
                                    {"set", manual.set},
                                    {"manual", manual.manual},
                                    {"pages", static_cast<std::int64_t>(copied)},
                                    {"left_out", static_cast<std::int64_t>(left_out->size())},
                                    {"words", words}})
                          .Dump()
                   << '\n';
    } else {
      streams_.out << CleanText(file.string() + ": " + manual.set + ", " + manual.manual + ", " +
                                Counted(copied, "page"))
                   << '\n';
    }
    return {};
  }

  bool partly() const { return partly_; }

 private:
  // Gives the pages that were left out.
  Result<std::vector<Error>> Write(const std::vector<PageToCopy>& pages, const fs::path& file) {
    Pace pace(&std::chrono::steady_clock::now);
    pace.Start(static_cast<int>(pages.size()));
    CopyOptions copy{options_.places.ConfigFolder(), ProgramPath()};
    copy.taken = [&](const PageToCopy& page) {
      pace.PageDone(false);
      if (options_.output.talk.verbose) line_.Tell(page.name + ", page " + std::to_string(page.page));
      line_.Show(pace.ToString(), pace.done() == pace.total());
    };
    return CopyManual(pages, file, copy, interrupt_.flag());
  }

  const SearchableOptions& options_;
  const Streams& streams_;
  const Interrupt interrupt_;
  StatusLine line_;
  bool partly_ = false;
};

}  // namespace

void SetUpSearchable(CLI::App& app, Job& job) {
  auto options = std::make_shared<SearchableOptions>();
  CLI::App* command = app.add_subcommand(
      "searchable",
      "Write a set's manuals as PDFs over whose scans the words lie unseen, for any reader of PDF to find");
  command->add_option("SET", options->set, "The set's name, or words of it")->required();
  command->add_option("--manual", options->manual, "Only this manual of the set")->type_name("NAME");
  AddOutputOptions(*command, "File to write, ending in .pdf (default: named after set and manual)", options->output);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Scans stay as they are: pages of a PDF keep their content, JPEG and black and white (T.6) their coding, other\n"
      "pictures are packed without loss. What was misread is not found there either; where the index knows better, "
      "its\n"
      "term is laid.\n\n"
      "Example:\n"
      "  benchleaf searchable \"Quillhaven 12\" -o ~/quillhaven-12.pdf");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunSearchable(*options, s); }; });
}

ExitCode RunSearchable(const SearchableOptions& options, const Streams& streams) {
  const auto manuals = ChooseManuals(options, streams);
  if (!manuals) return manuals.error();
  const std::string subject = manuals->front().set + (options.manual.empty() ? "" : "-" + options.manual);
  const auto files = NameFiles(options.output.out, subject, manuals->size(), ".pdf");
  if (!files) return Stop(streams, files.error());
  for (const fs::path& file : *files) {
    if (const auto outside = CheckOutsideLibrary(options.places, file); !outside) return Stop(streams, outside.error());
  }
  if (const auto free = CheckMayWrite(options.output, *files); !free) return Stop(streams, free.error());

  Copying copying(options, streams);
  for (std::size_t i = 0; i < manuals->size(); ++i) {
    const auto copied = copying.Copy((*manuals)[i], (*files)[i]);
    if (copied) continue;
    if (copied.error().code == ErrorCode::kCancelled) {
      Say(streams, "stopped; '" + (*files)[i].string() + "' was not written: run the same command again");
      return ExitCode::kInterrupted;
    }
    return Stop(streams, copied.error());
  }
  if (options.output.json) {
    streams.out << Json::Object({{"type", "summary"},
                                 {"command", "searchable"},
                                 {"set", manuals->front().set},
                                 {"copies", static_cast<std::int64_t>(manuals->size())}})
                       .Dump()
                << '\n';
  }
  return copying.partly() ? ExitCode::kPartly : ExitCode::kOk;
}

}  // namespace benchleaf
