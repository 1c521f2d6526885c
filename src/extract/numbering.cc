#include "extract/list_rows.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <numeric>

namespace benchleaf::extract {
namespace {

constexpr int kWidestHole = 6;          // more missing numbers between two rows prove nothing
constexpr double kByNumbering = 0.75;   // how sure a designator is that only its place tells

int NumberOf(const Designator& designator) {
  int number = 0;
  std::from_chars(designator.number.data(), designator.number.data() + designator.number.size(), number);
  return number;
}

constexpr std::size_t kLongest = 20;  // characters of a designator's cell

// Levenshtein's distance. REQUIRES: both at most kLongest long.
std::size_t Distance(const std::string& a, const std::string& b) {
  std::array<std::size_t, kLongest + 1> row{};
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t corner = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = corner + (a[i - 1] == b[j - 1] ? 0U : 1U);
      corner = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
    }
  }
  return row[b.size()];
}

bool IsPlain(const ListRow& row) { return !row.designators.empty(); }

// Whether the row's designator stands where counting upwards has it between the two.
bool Fits(const ListRow& row, const Designator& above, const Designator& below) {
  const Designator& own = row.designators.front();
  return own.letters == above.letters && NumberOf(own) >= NumberOf(above) && NumberOf(own) <= NumberOf(below);
}

// The one designator between `above` and `below` that the text may have been; nothing when there are none or several.
std::optional<Designator> Between(const std::string& text, const Designator& above, const Designator& below,
                                  const Rules::Tables& tables) {
  const int from = NumberOf(above);
  const int to = NumberOf(below);
  const std::string folded = Folded(Trimmed(PlainText(text)), tables);
  if (folded.size() > kLongest) {
    return std::nullopt;
  }
  std::optional<Designator> best;
  std::size_t best_distance = to - from == 2 ? 3 : 2;  // with one possibility, one more character may be spoiled
  bool tie = false;
  for (int number = from + 1; number < to; ++number) {
    const std::string candidate = above.assembly + above.letters + std::to_string(number);
    if (candidate.size() > kLongest) {
      return std::nullopt;
    }
    const std::size_t distance = Distance(folded, Folded(candidate, tables));
    tie = tie || (best && distance == best_distance);
    if (distance < best_distance && distance < candidate.size() - 1) {
      best_distance = distance;
      best = Designator{above.assembly, above.letters, std::to_string(number), {}, kByNumbering};
      tie = false;
    }
  }
  return tie ? std::nullopt : best;
}

}  // namespace

void RepairByNumbering(std::vector<ListRow>& rows, const Rules::Tables& tables) {
  for (std::size_t i = 1; i + 1 < rows.size(); ++i) {
    ListRow& row = rows[i];
    const ListRow& before = rows[i - 1];
    const ListRow& after = rows[i + 1];
    if (row.designator_text.empty() || row.designators.size() > 1 || !IsPlain(before) || !IsPlain(after) ||
        before.assembly != row.assembly || after.assembly != row.assembly) {
      continue;
    }
    const Designator& above = before.designators.back();
    const Designator& below = after.designators.front();
    const int hole = NumberOf(below) - NumberOf(above);
    if (above.letters != below.letters || above.assembly != below.assembly || hole < 2 || hole > kWidestHole ||
        (IsPlain(row) && Fits(row, above, below))) {
      continue;
    }
    if (auto designator = Between(row.designator_text, above, below, tables)) {
      row.designators = {*designator};
    }
  }
}

}  // namespace benchleaf::extract
