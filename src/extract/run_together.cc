#include "extract/run_together.h"

#include "extract/designator.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kCut = 0.8;  // how sure designators are that had to be cut

int NumberIn(std::string_view text) {
  int number = 0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

class Cutter {
 public:
  explicit Cutter(std::vector<ListRow>& rows) : rows_(rows) {
    for (const ListRow& row : rows_) {
      if (!row.designators.empty()) {
        Firsts(row, row.designators.front().letters).insert(NumberOf(row.designators.front()));
      }
    }
  }

  void Cut() {
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      for (std::size_t at = 0; at < rows_[row].designators.size(); ++at) {
        CutAt(row, at);
      }
    }
  }

 private:
  // The nearest row above or below whose first designator is of the class and the assembly; null when the next one of
  // its assembly is of another class.
  const Designator* Neighbour(std::size_t row, int step, const std::string& letters) const {
    for (auto at = static_cast<std::ptrdiff_t>(row) + step; at >= 0 && at < static_cast<std::ptrdiff_t>(rows_.size());
         at += step) {
      const ListRow& other = rows_[static_cast<std::size_t>(at)];
      if (other.assembly != rows_[row].assembly) {
        return nullptr;
      }
      if (!other.designators.empty()) {
        const Designator& first = other.designators.front();
        return first.letters == letters ? &first : nullptr;
      }
    }
    return nullptr;
  }

  // The numbers of the first designators of the rows of an assembly, by their letters.
  std::multiset<int>& Firsts(const ListRow& row, const std::string& letters) {
    return firsts_[{row.assembly, letters}];
  }

  // Of the other rows of the assembly; 0 when none has these letters.
  int Highest(std::size_t row, const std::string& letters) {
    const std::multiset<int>& firsts = Firsts(rows_[row], letters);
    const Designator& own = rows_[row].designators.front();
    auto highest = firsts.rbegin();
    if (highest != firsts.rend() && own.letters == letters && NumberOf(own) == *highest) {
      ++highest;
    }
    return highest == firsts.rend() ? 0 : *highest;
  }

  // The numbers between which that of a designator must lie.
  std::pair<int, int> Limits(std::size_t row, std::size_t at) {
    constexpr int kBeyond = 30;  // groups reach beyond the first numbers of rows
    const auto& designators = rows_[row].designators;
    const std::string& letters = designators[at].letters;
    if (at == 0) {
      const Designator* above = Neighbour(row, -1, letters);
      const Designator* below = Neighbour(row, 1, letters);
      const int beyond = Highest(row, letters) * 2 + kBeyond;
      return {above == nullptr ? 0 : NumberOf(*above), below == nullptr ? beyond : NumberOf(*below)};
    }
    const bool next = at + 1 < designators.size() && designators[at + 1].letters == letters;
    return {NumberOf(designators[at - 1]), next ? NumberOf(designators[at + 1]) : Highest(row, letters) * 2 + kBeyond};
  }

  void CutAt(std::size_t row, std::size_t at) {
    const Designator& whole = rows_[row].designators[at];
    const auto [low, high] = Limits(row, at);
    const int number = NumberOf(whole);
    if (!whole.suffix.empty() || whole.number.size() < 2 || (number > low && number < high)) {
      return;
    }
    // The second part of a group at the front of the row may lie beyond the row below.
    const int second_limit = at == 0 ? std::max(high, Highest(row, whole.letters) * 2) : high;
    std::optional<std::size_t> cut;
    for (std::size_t end = 1; end < whole.number.size(); ++end) {
      const int first = NumberIn(std::string_view(whole.number).substr(0, end));
      const int second = NumberIn(std::string_view(whole.number).substr(end));
      if (first > low && first < high && second > first && second < second_limit && whole.number[end] != '0') {
        if (cut) {
          return;
        }
        cut = end;
      }
    }
    if (cut) {
      auto& designators = rows_[row].designators;
      Designator rest = designators[at];
      rest.number.erase(0, *cut);
      if (at == 0) {
        std::multiset<int>& firsts = Firsts(rows_[row], rest.letters);
        firsts.erase(firsts.find(number));
        firsts.insert(NumberIn(std::string_view(designators[at].number).substr(0, *cut)));
      }
      designators[at].number.erase(*cut);
      designators[at].sure *= kCut;
      rest.sure *= kCut;
      if (at == 0) {
        rows_[row].readings.insert(rows_[row].readings.begin(), {designators.front().Text(), kCut});
      }
      designators.insert(designators.begin() + static_cast<std::ptrdiff_t>(at) + 1, std::move(rest));
    }
  }

  std::vector<ListRow>& rows_;
  std::map<std::pair<std::string, std::string>, std::multiset<int>> firsts_;  // by assembly and letters
};

}  // namespace

void CutRunTogether(std::vector<ListRow>& rows) { Cutter(rows).Cut(); }

}  // namespace benchleaf::extract
