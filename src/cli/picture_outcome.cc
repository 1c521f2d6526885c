#include "cli/picture_outcome.h"

#include "cli/talk.h"

#include "benchleaf/record/json.h"

#include <chrono>
#include <cstdint>

namespace benchleaf {

PictureOutcome::PictureOutcome(const OutputOptions& options, const Streams& streams, std::size_t pictures)
    : options_(options),
      streams_(streams),
      pace_(&std::chrono::steady_clock::now, "picture"),
      line_(streams, options.talk.talk(), &std::chrono::steady_clock::now) {
  pace_.Start(static_cast<int>(pictures));
}

void PictureOutcome::Shown(const PagePlace& page, std::size_t places) {
  shown_ += places;
  if (options_.talk.verbose) line_.Tell(page.file + ", page " + std::to_string(page.page));
  Step(false);
}

void PictureOutcome::Failed(const Error& error) {
  last_failure_ = error;
  line_.Tell(error.ToString());
  Step(true);
}

void PictureOutcome::Step(bool failed) {
  pace_.PageDone(failed);
  line_.Show(pace_.ToString(), pace_.done() == pace_.total());
}

void PictureOutcome::Tell(const std::string& data) {
  line_.Finish();
  streams_.out << data;
}

ExitCode PictureOutcome::Finish() {
  line_.Finish();
  if (options_.json) {
    streams_.out << Json::Object(
                        {{"type", "summary"}, {"command", "picture"}, {"places", static_cast<std::int64_t>(shown_)}})
                        .Dump()
                 << '\n';
  }
  if (!last_failure_) return ExitCode::kOk;
  return shown_ > 0 ? ExitCode::kPartly : ExitCodeFor(last_failure_->code);
}

}  // namespace benchleaf
