// Tells a person how indexing goes.

#ifndef BENCHLEAF_SRC_CLI_PROGRESS_H_
#define BENCHLEAF_SRC_CLI_PROGRESS_H_

#include "benchleaf/cli/run.h"
#include "benchleaf/work/index_library.h"

#include <chrono>
#include <functional>
#include <string>

namespace benchleaf {

enum class Talk {
  kQuiet,    // problems only
  kNormal,   // and how far it is: one line written over and over on a terminal, else a line a manual
  kVerbose,  // and a line for each page and manual
};

// Writes to the talking stream. Problems are always told, as soon as they are known. Borrows the streams.
class Progress : public IndexObserver {
 public:
  using Clock = std::function<std::chrono::steady_clock::time_point()>;

  Progress(const Streams& streams, Talk talk, Clock clock = &std::chrono::steady_clock::now);

  void Found(int sets, int manuals, int pages_to_read, int pages_known) override;
  void PageDone(const std::string& file, int page, bool failed) override;
  void ManualStored(const std::string& set, const std::string& manual) override;
  void Problem(const Error& error) override;

  // Takes the rewritten line away, so that other lines can follow.
  void Finish();

  int pages_failed() const { return failed_; }

 private:
  bool rewrites() const { return streams_.err_is_terminal && talk_ == Talk::kNormal; }
  void Line(const std::string& text);
  void Rewrite();
  std::string Status() const;

  const Streams& streams_;
  Talk talk_;
  Clock clock_;
  std::chrono::steady_clock::time_point start_;
  std::chrono::steady_clock::time_point last_drawn_;
  bool drawn_ = false;  // the rewritten line stands on the terminal
  int total_ = 0;       // pages to read
  int done_ = 0;
  int failed_ = 0;
};

// "40 s", "12 min", "3 h 20 min".
std::string Spoken(std::chrono::seconds time);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PROGRESS_H_
