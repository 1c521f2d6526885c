#include "cli/progress.h"

#include "benchleaf/report/text.h"

#include <cstddef>

namespace benchleaf {

Progress::Progress(const Streams& streams, Talk talk, const Clock& clock)
    : talk_(talk), pace_(clock), line_(streams, talk, clock) {}

void Progress::Found(int sets, int manuals, int pages_to_read, int pages_known) {
  pace_.Start(pages_to_read);
  if (talk_ == Talk::kQuiet) return;
  line_.Tell(Counted(static_cast<std::size_t>(sets), "set") + ", " +
             Counted(static_cast<std::size_t>(manuals), "manual") + ": " +
             Counted(static_cast<std::size_t>(pages_to_read), "page") + " to read, " + std::to_string(pages_known) +
             " already in the index");
  if (pages_to_read > 0) line_.Show(pace_.ToString(), true);
}

void Progress::PageDone(const std::string& file, int page, bool failed) {
  pace_.PageDone(failed);
  if (talk_ == Talk::kVerbose) {
    std::string text = "[";
    text += std::to_string(pace_.done()) + "/" + std::to_string(pace_.total()) + "] " + file + ", page " +
            std::to_string(page);
    if (failed) text += ": not read";
    line_.Tell(text);
  }
  line_.Show(pace_.ToString(), pace_.done() == pace_.total());
}

void Progress::ManualStored(const std::string& set, const std::string& manual) {
  if (talk_ == Talk::kQuiet || line_.rewrites()) return;
  const std::string pace = pace_.total() > 0 ? " (" + pace_.ToString() + ")" : "";
  line_.Tell("stored " + set + ", " + manual + pace);
}

void Progress::Problem(const Error& error) {
  line_.Tell(error.ToString());
  if (pace_.total() > 0) line_.Show(pace_.ToString(), true);
}

}  // namespace benchleaf
