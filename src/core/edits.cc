#include "benchleaf/core/edits.h"

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <numeric>
#include <vector>

namespace benchleaf {

int EditsBetween(std::string_view a, std::string_view b, int most) {
  if (std::abs(static_cast<int>(a.size()) - static_cast<int>(b.size())) > most) return most + 1;
  std::vector<int> row(b.size() + 1);
  std::iota(row.begin(), row.end(), 0);
  for (std::size_t i = 0; i < a.size(); ++i) {
    int corner = row[0];
    ++row[0];
    for (std::size_t j = 0; j < b.size(); ++j) {
      const int changed = corner + (a[i] == b[j] ? 0 : 1);
      corner = row[j + 1];
      row[j + 1] = std::min({changed, row[j] + 1, row[j + 1] + 1});
    }
  }
  return std::min(row.back(), most + 1);
}

}  // namespace benchleaf
