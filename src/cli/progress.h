// Tells a person how indexing goes.

#ifndef BENCHLEAF_SRC_CLI_PROGRESS_H_
#define BENCHLEAF_SRC_CLI_PROGRESS_H_

#include "cli/status_line.h"

#include "benchleaf/work/index_library.h"

#include <string>

namespace benchleaf {

// Writes to the talking stream. Problems are always told, as soon as they are known. Borrows the streams.
class Progress : public IndexObserver {
 public:
  Progress(const Streams& streams, Talk talk, const Clock& clock = &std::chrono::steady_clock::now);

  void Found(int sets, int manuals, int pages_to_read, int pages_known) override;
  void PageDone(const std::string& file, int page, bool failed) override;
  void ManualStored(const std::string& set, const std::string& manual) override;
  void Problem(const Error& error) override;

  // Takes the rewritten line away, so that other lines can follow.
  void Finish() { line_.Finish(); }

  int pages_failed() const { return pace_.failed(); }

 private:
  Talk talk_;
  Pace pace_;
  StatusLine line_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PROGRESS_H_
