// What became of the pictures of one run.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_
#define BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_

#include "cli/job.h"

#include "benchleaf/core/result.h"

#include <cstddef>
#include <optional>

namespace benchleaf {

// Counts the places that are shown, and keeps why others are not.
class PictureOutcome {
 public:
  void Shown(std::size_t places) { shown_ += places; }
  // Says why.
  void Failed(const Error& error, const Streams& streams);
  // Writes the summary where JSON was asked for, and gives the exit code.
  ExitCode Finish(bool json, const Streams& streams) const;

 private:
  std::size_t shown_ = 0;
  std::optional<Error> last_failure_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_
