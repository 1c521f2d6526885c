#include "extract/group_members.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

constexpr double kSurelyNamed = 0.5;  // of a row's first designator

// How sure the designators of a group are, whatever the readers said of its single words: measured on generated lists.
constexpr double kInOrder = 0.85;
constexpr double kPutInOrder = 0.5;

using Members = std::vector<Designator>;

class Groups {
 public:
  explicit Groups(std::vector<ListRow>& rows) : rows_(rows) {
    for (const ListRow& row : rows_) {
      for (const Designator& member : row.designators) {
        printed_[KeyOf(row, member)] += member.between ? 0 : 1;
        listed_[row.assembly + " " + member.letters] += member.between ? 0 : 1;
      }
      if (!row.designators.empty() && row.designators.front().sure > kSurelyNamed) {
        ++named_[KeyOf(row, row.designators.front())];
        int& highest = highest_[row.assembly + " " + row.designators.front().letters];
        highest = std::max(highest, NumberOf(row.designators.front()));
      }
    }
  }

  void Settle() {
    for (ListRow& row : rows_) {
      if (row.designators.size() > 1) {
        SettleRow(row);
      }
    }
  }

 private:
  static std::string KeyOf(const ListRow& row, const Designator& member) { return row.assembly + " " + member.Text(); }

  void SettleRow(ListRow& row) const {
    const std::size_t before = row.designators.size();
    DropFalseRanges(row);
    DropNamedElsewhere(row);
    row.designators = InOrder(row.designators, HighestOf(row));
    if (row.designators.size() == 1) {
      row.designator_confidence = std::max(row.designator_confidence, kPutInOrder);
      return;
    }
    const double first = row.designators.front().sure;
    for (Designator& member : row.designators) {
      member.sure = std::min(member.sure, first);
    }
    row.designator_confidence =
        std::max(row.designator_confidence, row.designators.size() == before ? kInOrder : kPutInOrder);
  }

  // Numbers beyond this are read together or wrong.
  int HighestOf(const ListRow& row) const {
    constexpr int kBeyond = 30;  // groups reach beyond the first numbers of rows
    const std::string key = row.assembly + " " + row.designators.front().letters;
    const auto highest = highest_.find(key);
    return std::max({highest == highest_.end() ? 0 : highest->second * 2, NumberOf(row.designators.front()) * 2,
                     listed_.at(key) * 2}) +
           kBeyond;
  }

  void DropFalseRanges(ListRow& row) const {
    Members kept;
    for (auto at = row.designators.begin(); at != row.designators.end();) {
      const auto end = std::find_if_not(at, row.designators.end(), [](const Designator& d) { return d.between; });
      const bool listed = std::any_of(at, end, [&](const Designator& member) {
        const auto printed = printed_.find(KeyOf(row, member));
        return printed != printed_.end() && printed->second > 0;
      });
      if (!listed) {
        kept.insert(kept.end(), at, end);
      }
      at = end;
      if (at != row.designators.end()) {
        kept.push_back(*at++);
      }
    }
    row.designators = std::move(kept);
  }

  void DropNamedElsewhere(ListRow& row) const {
    Members kept = {row.designators.front()};
    std::copy_if(row.designators.begin() + 1, row.designators.end(), std::back_inserter(kept),
                 [&](const Designator& member) { return named_.count(KeyOf(row, member)) == 0; });
    row.designators = std::move(kept);
  }

  // The first, and the longest rising run of those behind it that are of its class; of several the one with the lowest
  // numbers. Sections of one part and other classes stay as they are.
  static Members InOrder(const Members& members, int highest) {
    const std::string& letters = members.front().letters;
    const bool plain = std::all_of(members.begin(), members.end(), [&](const Designator& member) {
      return member.suffix.empty() && member.letters == letters;
    });
    Members same;
    std::copy_if(members.begin(), members.end(), std::back_inserter(same),
                 [&](const Designator& member) { return member.letters == letters; });
    if (!plain && std::any_of(same.begin(), same.end(), [](const Designator& d) { return !d.suffix.empty(); })) {
      return members;
    }
    struct Run {  // the longest that ends here
      std::size_t length = 0;
      std::size_t previous = 0;
    };
    std::vector<Run> runs = {{1, 0}};
    std::size_t best = 0;
    for (std::size_t i = 1; i < same.size(); ++i) {
      Run run;
      for (std::size_t j = 0; j < i; ++j) {
        const bool rises = runs[j].length > 0 && NumberOf(same[i]) > NumberOf(same[j]) && NumberOf(same[i]) <= highest;
        const bool lower = runs[j].length + 1 == run.length && NumberOf(same[j]) < NumberOf(same[run.previous]);
        if (rises && (runs[j].length + 1 > run.length || lower)) {
          run = {runs[j].length + 1, j};
        }
      }
      runs.push_back(run);
      const bool lower = best != 0 && run.length == runs[best].length && NumberOf(same[i]) < NumberOf(same[best]);
      best = run.length > runs[best].length || lower ? i : best;
    }
    Members kept;
    for (std::size_t at = best; at != 0; at = runs[at].previous) {
      kept.push_back(same[at]);
    }
    kept.push_back(same.front());
    std::reverse(kept.begin(), kept.end());
    return kept;
  }

  std::vector<ListRow>& rows_;
  std::map<std::string, int> printed_;  // assembly and designator, but for those that only lie in a range
  std::map<std::string, int> listed_;   // assembly and class to how many are printed
  std::map<std::string, int> named_;    // of rows whose first designator is sure
  std::map<std::string, int> highest_;  // assembly and class to the highest first number of a row
};

}  // namespace

void SettleGroups(std::vector<ListRow>& rows) { Groups(rows).Settle(); }

}  // namespace benchleaf::extract
