// The table of tube types that the project ships.

#ifndef BENCHLEAF_TESTS_TUBES_SHIPPED_TABLE_H_
#define BENCHLEAF_TESTS_TUBES_SHIPPED_TABLE_H_

#include "places/places.h"

#include "benchleaf/tubes/tube_table.h"

#include <filesystem>
#include <stdexcept>

namespace benchleaf {

inline std::filesystem::path ShippedTubesFile() { return SourceFolder() / "config" / "tubes.tsv"; }

inline const TubeTable& ShippedTubes() {
  static const TubeTable table = [] {
    auto loaded = TubeTable::Load({ShippedTubesFile()});
    if (!loaded) throw std::runtime_error(loaded.error().ToString());
    return *loaded;
  }();
  return table;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_TUBES_SHIPPED_TABLE_H_
