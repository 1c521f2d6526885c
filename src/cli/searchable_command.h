// searchable: a set's manuals as PDFs in which any reader of PDF finds the words.

#ifndef BENCHLEAF_SRC_CLI_SEARCHABLE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_SEARCHABLE_COMMAND_H_

#include "cli/job.h"
#include "cli/output_options.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct SearchableOptions {
  PlaceOptions places;
  std::string set;
  std::string manual;  // empty: all of the set
  OutputOptions output;
};

void SetUpSearchable(CLI::App& app, Job& job);
ExitCode RunSearchable(const SearchableOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_SEARCHABLE_COMMAND_H_
