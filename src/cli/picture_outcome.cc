#include "cli/picture_outcome.h"

#include "cli/talk.h"

#include "benchleaf/record/json.h"

#include <cstdint>

namespace benchleaf {

void PictureOutcome::Failed(const Error& error, const Streams& streams) {
  last_failure_ = error;
  Say(streams, error.ToString());
}

ExitCode PictureOutcome::Finish(bool json, const Streams& streams) const {
  if (json) {
    streams.out << Json::Object(
                       {{"type", "summary"}, {"command", "picture"}, {"places", static_cast<std::int64_t>(shown_)}})
                       .Dump()
                << '\n';
  }
  if (!last_failure_) return ExitCode::kOk;
  return shown_ > 0 ? ExitCode::kPartly : ExitCodeFor(last_failure_->code);
}

}  // namespace benchleaf
