// Which of many things belong together, as pairs become known (union by halving paths). Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_DISJOINT_SETS_H_
#define BENCHLEAF_SRC_CLEAN_DISJOINT_SETS_H_

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {

class DisjointSets {
 public:
  // Adds sets of one until there are `count` things.
  void Grow(std::size_t count) {
    for (std::size_t i = parent_.size(); i < count; ++i) {
      parent_.push_back(static_cast<std::uint32_t>(i));
    }
  }

  // The least member of the set that holds `i`.
  std::size_t Find(std::size_t i) {
    while (parent_[i] != i) {
      parent_[i] = parent_[parent_[i]];
      i = parent_[i];
    }
    return i;
  }

  void Join(std::size_t a, std::size_t b) {
    a = Find(a);
    b = Find(b);
    parent_[std::max(a, b)] = static_cast<std::uint32_t>(std::min(a, b));
  }

 private:
  std::vector<std::uint32_t> parent_;  // a page has less than 2^32 pixels
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_DISJOINT_SETS_H_
