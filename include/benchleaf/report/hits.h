// The answer to "where is C112".

#ifndef BENCHLEAF_REPORT_HITS_H_
#define BENCHLEAF_REPORT_HITS_H_

#include "benchleaf/report/table.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// What was found for one term, in the order of the index; a hit's number is its place in `hits`, from 1.
struct TermHits {
  std::string term;
  std::vector<FoundSighting> hits;
  bool more = false;                  // there are more than `hits` holds
  std::vector<std::string> searched;  // "on schematic pages", "in QUILLHAVEN 12": how the search was narrowed
  std::vector<std::string> near;      // terms spelt much like it, when nothing was found
};

// A line that counts the places, and a table of them.
std::string HitsText(const TermHits& found, const Look& look);

// Says what was searched for and where, and which terms come near; one line, without a newline.
std::string NothingFoundText(const TermHits& found);

// One object a line: {"type":"hit"} for each, {"type":"nothing"} for a term without any.
std::string HitsJson(const TermHits& found);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_HITS_H_
