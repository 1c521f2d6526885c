#include "cli/progress.h"

#include "cli/talk.h"

#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::chrono::milliseconds kRedrawEvery{100};
// A rate from fewer pages says nothing: the first ones wait for the readers to start.
constexpr int kPagesForRate = 3;

std::string OneDecimal(double number) {
  std::array<char, 32> text{};
  const auto end = std::to_chars(text.begin(), text.end(), number, std::chars_format::fixed, 1);
  return {text.begin(), end.ptr};
}

}  // namespace

std::string Spoken(std::chrono::seconds time) {
  const auto minutes = (time.count() + 30) / 60;
  if (time.count() < 60) return std::to_string(time.count()) + " s";
  if (minutes < 60) return std::to_string(minutes) + " min";
  return std::to_string(minutes / 60) + " h " + std::to_string(minutes % 60) + " min";
}

Progress::Progress(const Streams& streams, Talk talk, Clock clock)
    : streams_(streams), talk_(talk), clock_(std::move(clock)), start_(clock_()), last_drawn_(start_) {}

void Progress::Found(int sets, int manuals, int pages_to_read, int pages_known) {
  total_ = pages_to_read;
  start_ = clock_();
  if (talk_ == Talk::kQuiet) return;
  Line(Counted(static_cast<std::size_t>(sets), "set") + ", " + Counted(static_cast<std::size_t>(manuals), "manual") +
       ": " + Counted(static_cast<std::size_t>(pages_to_read), "page") + " to read, " + std::to_string(pages_known) +
       " already in the index");
  Rewrite();
}

void Progress::PageDone(const std::string& file, int page, bool failed) {
  ++done_;
  if (failed) ++failed_;
  if (talk_ == Talk::kVerbose) {
    std::string line = "[";
    line += std::to_string(done_) + "/" + std::to_string(total_) + "] " + file + ", page " + std::to_string(page);
    if (failed) line += ": not read";
    Line(line);
  }
  const auto now = clock_();
  if (!drawn_ || done_ == total_ || now - last_drawn_ >= kRedrawEvery) Rewrite();
}

void Progress::ManualStored(const std::string& set, const std::string& manual) {
  if (talk_ == Talk::kQuiet || rewrites()) return;
  Line("stored " + set + ", " + manual + " (" + Status() + ")");
}

void Progress::Problem(const Error& error) {
  Line(error.ToString());
  Rewrite();
}

void Progress::Finish() {
  if (!drawn_) return;
  streams_.err << "\r\x1b[K" << std::flush;  // ECMA-48 EL: erase to the end of the line
  drawn_ = false;
}

void Progress::Line(const std::string& text) {
  Finish();
  Say(streams_, text);
}

void Progress::Rewrite() {
  if (!rewrites() || total_ == 0) return;
  const std::size_t room = static_cast<std::size_t>(std::max(10, streams_.out_columns - 1));
  streams_.err << "\r" << Status().substr(0, room) << "\x1b[K" << std::flush;
  drawn_ = true;
  last_drawn_ = clock_();
}

std::string Progress::Status() const {
  std::string status = std::to_string(done_) + " of " + Counted(static_cast<std::size_t>(total_), "page");
  if (failed_ > 0) status += ", " + std::to_string(failed_) + " not read";
  const double seconds = std::chrono::duration<double>(clock_() - start_).count();
  if (done_ >= kPagesForRate && seconds > 0) {
    const double rate = done_ / seconds;
    status += ", " + OneDecimal(rate) + " pages/s";
    const auto left = static_cast<long>(std::ceil((total_ - done_) / rate));
    if (left > 0) status += ", " + Spoken(std::chrono::seconds(left)) + " left";
  }
  return status;
}

}  // namespace benchleaf
