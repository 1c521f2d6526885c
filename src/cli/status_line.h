// How far long work is, for a person: on a terminal one line that is written over and over.

#ifndef BENCHLEAF_SRC_CLI_STATUS_LINE_H_
#define BENCHLEAF_SRC_CLI_STATUS_LINE_H_

#include "cli/talk_options.h"

#include <chrono>
#include <functional>
#include <string>

namespace benchleaf {

using Clock = std::function<std::chrono::steady_clock::time_point()>;

// Counts pages, or other things of that name, against the clock.
class Pace {
 public:
  explicit Pace(Clock clock, std::string thing = "page");

  // `total` are to be done, from now on.
  void Start(int total);
  void PageDone(bool failed);
  // One of the total needs not be done.
  void LeaveOut() { --total_; }

  int total() const { return total_; }
  int done() const { return done_; }
  int failed() const { return failed_; }

  // "10 of 40 pages, 1 not read, 0.5 pages/s, 1 min left": the rate and the time as soon as they mean something.
  std::string ToString() const;

 private:
  Clock clock_;
  std::string thing_;
  std::chrono::steady_clock::time_point start_;
  int total_ = 0;
  int done_ = 0;
  int failed_ = 0;
};

// Owns the last line of the terminal while work goes on; nothing else may write to the talking stream meanwhile.
// Borrows the streams.
class StatusLine {
 public:
  StatusLine(const Streams& streams, Talk talk, Clock clock);

  // Whether there is such a line at all: on a terminal, unless quiet or telling of each page.
  bool rewrites() const { return streams_.err_is_terminal && talk_ == Talk::kNormal; }

  // A line of its own, above the rewritten one.
  void Tell(const std::string& text);
  // Shows the text in place of what stood there, cut to the terminal's width; no more often than an eye can follow,
  // unless `at_once`.
  void Show(const std::string& text, bool at_once);
  // Takes the line away, so that other lines can follow.
  void Finish();

 private:
  const Streams& streams_;
  Talk talk_;
  Clock clock_;
  std::chrono::steady_clock::time_point last_drawn_;
  bool drawn_ = false;
};

// "40 s", "12 min", "3 h 20 min".
std::string Spoken(std::chrono::seconds time);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_STATUS_LINE_H_
