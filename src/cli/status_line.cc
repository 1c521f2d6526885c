#include "cli/status_line.h"

#include "cli/talk.h"

#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
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

Pace::Pace(Clock clock, std::string thing) : clock_(std::move(clock)), thing_(std::move(thing)), start_(clock_()) {}

void Pace::Start(int total) {
  total_ = total;
  start_ = clock_();
}

void Pace::PageDone(bool failed) {
  ++done_;
  if (failed) ++failed_;
}

std::string Pace::ToString() const {
  std::string status = std::to_string(done_) + " of " + Counted(static_cast<std::size_t>(total_), thing_.c_str());
  if (failed_ > 0) status += ", " + std::to_string(failed_) + " not read";
  const double seconds = std::chrono::duration<double>(clock_() - start_).count();
  if (done_ >= kPagesForRate && seconds > 0) {
    const double rate = done_ / seconds;
    status += ", " + OneDecimal(rate) + ' ' + thing_ + "s/s";
    const auto left = static_cast<long>(std::ceil((total_ - done_) / rate));
    if (left > 0) status += ", " + Spoken(std::chrono::seconds(left)) + " left";
  }
  return status;
}

StatusLine::StatusLine(const Streams& streams, Talk talk, Clock clock)
    : streams_(streams), talk_(talk), clock_(std::move(clock)), last_drawn_(clock_()) {}

void StatusLine::Tell(const std::string& text) {
  Finish();
  Say(streams_, text);
}

void StatusLine::Show(const std::string& text, bool at_once) {
  if (!rewrites()) return;
  const auto now = clock_();
  if (drawn_ && !at_once && now - last_drawn_ < kRedrawEvery) return;
  const auto room = static_cast<std::size_t>(std::max(10, streams_.out_columns - 1));
  streams_.err << "\r" << text.substr(0, room) << "\x1b[K" << std::flush;  // ECMA-48 EL: erase to the end of the line
  drawn_ = true;
  last_drawn_ = now;
}

void StatusLine::Finish() {
  if (!drawn_) return;
  streams_.err << "\r\x1b[K" << std::flush;
  drawn_ = false;
}

}  // namespace benchleaf
