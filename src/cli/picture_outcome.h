// How far the pictures of one run are, and what became of them.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_
#define BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_

#include "cli/job.h"
#include "cli/output_options.h"
#include "cli/status_line.h"

#include "benchleaf/core/result.h"
#include "benchleaf/store/index_reader.h"

#include <cstddef>
#include <optional>
#include <string>

namespace benchleaf {

// Counts the places that are shown, keeps why others are not, and owns the streams meanwhile. Borrows both.
class PictureOutcome {
 public:
  // `pictures` are to be drawn.
  PictureOutcome(const OutputOptions& options, const Streams& streams, std::size_t pictures);

  // A picture of the page is drawn; it shows so many places.
  void Shown(const PagePlace& page, std::size_t places);
  // Says why there is none.
  void Failed(const Error& error);
  // Writes to the data stream.
  void Tell(const std::string& data);
  // Writes the summary where JSON was asked for, and gives the exit code.
  ExitCode Finish();

 private:
  void Step(bool failed);

  const OutputOptions& options_;
  const Streams& streams_;
  Pace pace_;
  StatusLine line_;
  std::size_t shown_ = 0;
  std::optional<Error> last_failure_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_OUTCOME_H_
