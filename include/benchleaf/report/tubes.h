// The answer to "which sets use a 6CB6".

#ifndef BENCHLEAF_REPORT_TUBES_H_
#define BENCHLEAF_REPORT_TUBES_H_

#include "benchleaf/report/table.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// A place where the tube is seen, and the designator of the tube that it belongs to.
struct TubePlace {
  FoundSighting found;
  std::string designator;  // empty when none stands next to it
  std::string other_name;  // of the same tube, by which it was found: ECC83 for 12AX7; empty for the type asked for
};

// A line that counts sets and places, a table by set, and a line that says which forms were read.
std::string TubesText(const std::string& asked, const std::vector<TubePlace>& places, const Look& look);

// One {"type":"tube"} object a line.
std::string TubesJson(const std::string& asked, const std::vector<TubePlace>& places);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_TUBES_H_
