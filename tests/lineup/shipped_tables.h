// The tables of config/, for tests of what they are for.

#ifndef BENCHLEAF_TESTS_LINEUP_SHIPPED_TABLES_H_
#define BENCHLEAF_TESTS_LINEUP_SHIPPED_TABLES_H_

#include "places/places.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/lineup/tube_functions.h"
#include "benchleaf/tubes/tube_table.h"

#include <filesystem>
#include <memory>

namespace benchleaf {

inline std::filesystem::path ShippedFile(const char* name) { return SourceFolder() / "config" / name; }

// These throw, and so fail the test, when a table is not there.
inline std::shared_ptr<const Rules> ShippedRules() {
  static const std::shared_ptr<const Rules> rules = Rules::Load(ShippedFile("")).value();
  return rules;
}

inline const TubeFunctions& ShippedFunctions() {
  static const TubeFunctions functions =
      TubeFunctions::Load({ShippedFile("tube-functions.tsv")}, ShippedRules()).value();
  return functions;
}

inline const TubeTable& ShippedTubes() {
  static const TubeTable table = TubeTable::Load({ShippedFile("tubes.tsv")}).value();
  return table;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_LINEUP_SHIPPED_TABLES_H_
