#include "cli/talk.h"

#include "benchleaf/report/text.h"

#include <cstdlib>
#include <sstream>
#include <string_view>

namespace benchleaf {
namespace {

std::string_view Environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string_view() : std::string_view(value);
}

}  // namespace

void Say(const Streams& streams, const std::string& message) {
  streams.err << "benchleaf: " << CleanText(message) << '\n';
}

void WriteCsv(const Streams& streams, const std::string& csv) {
  if (!streams.out_is_terminal) {
    streams.out << csv;
    return;
  }
  std::istringstream lines(csv);
  for (std::string line; std::getline(lines, line);) {
    if (line.ends_with('\r')) line.pop_back();
    streams.out << CleanText(line) << '\n';
  }
}

ExitCode Stop(const Streams& streams, const Error& error) {
  Say(streams, error.ToString());
  return ExitCodeFor(error.code);
}

ExitCode ExitCodeFor(ErrorCode code) {
  switch (code) {
    case ErrorCode::kUsage:
      return ExitCode::kUsage;
    case ErrorCode::kCancelled:
      return ExitCode::kInterrupted;
    default:
      return ExitCode::kCannotRun;
  }
}

Look LookOfOut(const Streams& streams) {
  if (!streams.out_is_terminal) return {};
  const std::string_view term = Environment("TERM");
  const bool color = Environment("NO_COLOR").empty() && !term.empty() && term != "dumb";
  return {color, streams.out_columns};
}

}  // namespace benchleaf
