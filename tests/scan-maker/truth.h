// What really stands on a made page, and on which place.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_TRUTH_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_TRUTH_H_

#include "benchleaf/core/geometry.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// A text on the page, or in it a term. kind: "designator", "tube", "part-number", "semiconductor", "value", "item", or
// for whatever else is lettered "net" (label of a net or rail), "pin" (its name or number) or "text".
struct TruthTerm {
  std::string kind;
  std::string text;  // canonical, upper case, no spaces
  FractionBox box;   // of the page as scanned
  int turn = 0;      // degrees clockwise
};

// One part of a parts list.
struct TruthEntry {
  std::string designator;
  std::string assembly;
  std::string description;
  std::string part_number;
  std::string value;
  FractionBox box;
  std::string item = {};  // its number in a list by items
};

struct PageTruth {
  std::string file;  // relative to the library
  int page = 1;
  std::string kind;  // as benchleaf::Name(PageKind) has it
  std::string printed_number;
  std::vector<TruthTerm> terms;
  std::vector<TruthEntry> entries;
};

// JSON Lines, a page a line.
std::string ToJsonLines(const std::vector<PageTruth>& pages);
// REQUIRES: text written by ToJsonLines; throws std::runtime_error otherwise.
std::vector<PageTruth> FromJsonLines(const std::string& text);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_TRUTH_H_
