// What `find` was asked last, so that `picture --hit 3` can be said right after it.

#ifndef BENCHLEAF_SRC_CLI_LAST_FIND_H_
#define BENCHLEAF_SRC_CLI_LAST_FIND_H_

#include "cli/places.h"

#include "benchleaf/core/result.h"
#include "benchleaf/report/hits.h"

#include <filesystem>
#include <string>

namespace benchleaf {

// The question, and a digest of its answer: a number is only good for the very answer that a person has seen.
struct LastFind {
  std::string database;  // absolute
  std::string term;
  std::string set;   // exact name; empty: all sets
  std::string kind;  // of page; empty: all kinds
  int limit = 0;     // places told
  std::string answer;

  friend bool operator==(const LastFind&, const LastFind&) = default;
};

// The index that the options name, by its absolute path.
std::string AbsoluteDatabase(const PlaceOptions& places);

// The places told, in their order.
std::string AnswerDigest(const TermHits& found);

// Writes to the folder's file `last-find`, and makes the folder; over what was remembered before. Where that cannot be
// done, nothing is remembered: an answer is worth more than its echo. Does nothing for an empty folder.
void RememberFind(const std::filesystem::path& state_folder, const LastFind& find);

// Fails with kMissing when nothing is remembered.
Result<LastFind> RecallFind(const std::filesystem::path& state_folder);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_LAST_FIND_H_
