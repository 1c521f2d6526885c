#include "bench/entry_scorer.h"

#include "scan-maker/sheet.h"

#include <algorithm>
#include <iterator>
#include <string>

namespace benchleaf::bench {
namespace {

using Keys = std::vector<std::string>;

template <class Row>
Keys KeysOf(const std::vector<Row>& rows, bool with_number) {
  Keys keys;
  for (const Row& row : rows) {
    if (!row.designator.empty() || (with_number && !row.part_number.empty())) {
      const std::string number = with_number ? "\t" + scanmaker::Canonical(row.part_number) : std::string();
      keys.push_back(scanmaker::Canonical(row.assembly) + "\t" + scanmaker::Canonical(row.designator) + number);
    }
  }
  std::sort(keys.begin(), keys.end());
  return keys;
}

// How many stand in both, each as often as in the one that has it less often.
int Common(const Keys& a, const Keys& b) {
  Keys common;
  std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(common));
  return static_cast<int>(common.size());
}

double Share(int part, int whole) { return whole == 0 ? 0 : static_cast<double>(part) / whole; }

}  // namespace

void EntryTally::Add(const std::vector<scanmaker::TruthEntry>& truth, const std::vector<Entry>& entries) {
  const Keys listed_keys = KeysOf(truth, true);
  const Keys read_keys = KeysOf(entries, true);
  listed += static_cast<int>(listed_keys.size());
  read += static_cast<int>(read_keys.size());
  right += Common(listed_keys, read_keys);
  const Keys listed_designator_keys = KeysOf(truth, false);
  listed_designators += static_cast<int>(listed_designator_keys.size());
  right_designator += Common(listed_designator_keys, KeysOf(entries, false));
}

double EntryTally::Recall() const { return Share(right, listed); }
double EntryTally::Precision() const { return Share(right, read); }
double EntryTally::DesignatorRecall() const { return Share(right_designator, listed_designators); }

}  // namespace benchleaf::bench
