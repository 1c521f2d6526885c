// A search for one term as find and picture both make it, so that a place has the same number in either.

#ifndef BENCHLEAF_SRC_CLI_NARROWED_SEARCH_H_
#define BENCHLEAF_SRC_CLI_NARROWED_SEARCH_H_

#include "cli/job.h"

#include "benchleaf/report/hits.h"

#include <optional>
#include <string>

namespace benchleaf {

// How a search is narrowed.
struct Narrowing {
  std::string set;               // exact name; empty: all sets
  std::optional<PageKind> kind;  // nothing: pages of every kind
};

// What --in and --kind mean. Says what is wrong with them and gives the exit code when they mean nothing.
tl::expected<Narrowing, ExitCode> ChooseNarrowing(IndexReader& index, const std::string& set, const std::string& kind,
                                                  const Streams& streams);

// The term's first `limit` places, and, when there are none, terms near to it.
Result<TermHits> Search(IndexReader& index, const std::string& term, const Narrowing& narrowing, int limit);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_NARROWED_SEARCH_H_
