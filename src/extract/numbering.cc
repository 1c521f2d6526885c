#include "extract/list_rows.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <limits>
#include <numeric>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr int kWidestHole = 12;        // more numbers between two rows prove nothing
constexpr double kByNumbering = 0.75;  // how sure a designator is that only its place tells
constexpr std::size_t kLongest = 20;   // characters of a designator's cell

int NumberOf(const Designator& designator) {
  int number = 0;
  std::from_chars(designator.number.data(), designator.number.data() + designator.number.size(), number);
  return number;
}

// Characters beyond ASCII as '?', so that a distance counts each once.
std::string OneByteEach(const std::string& text) {
  std::string plain;
  for (const std::string& character : Characters(text)) {
    plain += character.size() == 1 ? character : "?";
  }
  return plain;
}

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

bool Stands(const ListRow& row) { return !row.designators.empty(); }

// Whether `below` may follow `above` in a list that counts upwards.
bool Follows(const Designator& above, const Designator& below) {
  return above.letters != below.letters || NumberOf(below) > NumberOf(above) ||
         (NumberOf(below) == NumberOf(above) && below.suffix > above.suffix);
}

// Repairs the rows of one table.
class Numbering {
 public:
  Numbering(std::vector<ListRow>& rows, const Rules::Tables& tables) : rows_(rows), tables_(tables) {}

  void Repair() {
    const bool counts_up = CountsUp();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      for (const Designator& designator : rows_[i].designators) {
        if (!Doubtful(i, counts_up)) {
          taken_.insert({rows_[i].assembly, designator.Text()});
        }
      }
    }
    for (std::size_t from = 0; from < rows_.size();) {
      if (!Doubtful(from, counts_up)) {
        ++from;
        continue;
      }
      std::size_t to = from + 1;
      while (to < rows_.size() && Doubtful(to, counts_up)) {
        ++to;
      }
      if (from > 0 && to < rows_.size() && SameAssembly(from - 1, to)) {
        RepairRun(from, to);
      }
      for (std::size_t i = from; i < to; ++i) {
        ReadAsItLooks(rows_[i]);
      }
      from = to;
    }
  }

 private:
  // Whether nearly every row counts on from the one above: then one that does not was misread.
  bool CountsUp() const {
    std::size_t pairs = 0;
    std::size_t ascending = 0;
    for (std::size_t i = 1; i < rows_.size(); ++i) {
      if (Stands(rows_[i - 1]) && Stands(rows_[i])) {
        ++pairs;
        ascending += Follows(Start(rows_[i - 1]), Start(rows_[i])) ? 1U : 0U;
      }
    }
    return pairs >= 4 && ascending * 20 >= pairs * 13;
  }

  bool Doubtful(std::size_t i, bool counts_up) const {
    const ListRow& row = rows_[i];
    if (row.designators.size() > 1) {
      return false;
    }
    if (!Stands(row)) {
      return !row.designator_text.empty() || (counts_up && LooksLikeNeighbour(i));
    }
    if (!counts_up || i == 0 || i + 1 == rows_.size() || !Stands(rows_[i - 1]) || !Stands(rows_[i + 1])) {
      return false;
    }
    const Designator& above = Start(rows_[i - 1]);
    const Designator& own = Start(row);
    const Designator& below = Start(rows_[i + 1]);
    // The last of its class, far ahead of the one above: R10, R111, S1.
    if (above.letters == own.letters && own.letters != below.letters) {
      return NumberOf(own) > NumberOf(above) + 5 * kWidestHole;
    }
    // Out of step, while the rows above and below are in step with each other.
    const bool in_step =
        above.letters == own.letters && own.letters == below.letters && Follows(above, own) && Follows(own, below);
    return above.letters == below.letters && NumberOf(below) > NumberOf(above) + 1 && !in_step;
  }

  // Whether a row of which no designator was read begins like the one above or below it: the same kind of part, so that
  // it has a designator, too.
  bool LooksLikeNeighbour(std::size_t i) const {
    const std::string word = FirstWord(rows_[i]);
    return word.size() > 3 &&
           ((i > 0 && FirstWord(rows_[i - 1]) == word) || (i + 1 < rows_.size() && FirstWord(rows_[i + 1]) == word));
  }

  static std::string FirstWord(const ListRow& row) {
    return row.lines.empty() || row.lines.front().empty() ? std::string()
                                                          : Upper(Trimmed(row.lines.front().front().text));
  }

  bool SameAssembly(std::size_t from, std::size_t to) const {
    for (std::size_t i = from; i <= to; ++i) {
      if (rows_[i].assembly != rows_[from].assembly) {
        return false;
      }
    }
    return true;
  }

  bool Taken(const std::string& assembly, const Designator& designator) const {
    return taken_.count({assembly, designator.Text()}) != 0;
  }

  // What may stand between two designators, in order: no part is listed twice.
  std::vector<Designator> Possible(const Designator& above, const Designator& below, std::size_t count,
                                   const std::string& assembly) const {
    std::vector<Designator> possible;
    const auto add = [&](const Designator& like, int first, int last) {
      for (int number = first; number <= last; ++number) {
        const Designator designator{like.assembly, like.letters, std::to_string(number), {}, kByNumbering};
        if (!Taken(assembly, designator)) {
          possible.push_back(designator);
        }
      }
    };
    const int more = static_cast<int>(count);
    if (above.letters == below.letters) {
      if (NumberOf(below) - NumberOf(above) <= kWidestHole) {
        add(above, NumberOf(above) + 1, NumberOf(below) - 1);
      }
    } else {
      // The class ends somewhere in between.
      add(above, NumberOf(above) + 1, NumberOf(above) + more);
      add(below, std::max(1, NumberOf(below) - more), NumberOf(below) - 1);
    }
    return possible;
  }

  // Rows [from, to) get the rising sequence of possible designators that looks most like what was read.
  void RepairRun(std::size_t from, std::size_t to) {
    if (!Stands(rows_[from - 1]) || !Stands(rows_[to])) {
      return;
    }
    const std::size_t count = to - from;
    const std::vector<Designator> possible =
        Possible(Start(rows_[from - 1]), rows_[to].designators.front(), count, rows_[from].assembly);
    if (possible.size() < count) {
      return;
    }
    // cost[i][j]: least distance of the first i rows when they use only the first j possibilities.
    constexpr std::size_t kNever = std::numeric_limits<std::size_t>::max() / 2;
    std::vector<std::vector<std::size_t>> cost(count + 1, std::vector<std::size_t>(possible.size() + 1, 0));
    for (std::size_t i = 1; i <= count; ++i) {
      cost[i][0] = kNever;
      for (std::size_t j = 1; j <= possible.size(); ++j) {
        cost[i][j] = std::min(cost[i][j - 1], cost[i - 1][j - 1] + DistanceTo(rows_[from + i - 1], possible[j - 1]));
      }
    }
    const bool forced = possible.size() == count;
    std::size_t j = possible.size();
    for (std::size_t i = count; i > 0; --i) {
      while (cost[i][j] == cost[i][j - 1]) {
        --j;
      }
      const std::size_t distance = DistanceTo(rows_[from + i - 1], possible[j - 1]);
      const bool blank = rows_[from + i - 1].designator_text.empty();
      const bool alone = forced || (!blank && IsOnlyOne(rows_[from + i - 1], possible, distance));
      if (alone && distance <= (forced ? 2U : 1U) && distance < possible[j - 1].Text().size()) {
        Name(rows_[from + i - 1], possible[j - 1]);
      }
      --j;
    }
  }

  // What numbering cannot tell is read with every look-alike for a figure, and is unsure.
  void ReadAsItLooks(ListRow& row) {
    if (Stands(row)) {
      return;
    }
    const std::string text = Trimmed(PlainText(row.designator_text));
    const std::size_t letters =
        std::min(text.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"), text.size());
    for (std::size_t count = std::min<std::size_t>(letters, 3); count > 0; --count) {
      std::string designator = Upper(text.substr(0, count));
      if (!IsDesignatorClass(designator, tables_) || count == text.size()) {
        continue;
      }
      for (const std::string& character : Characters(text.substr(count))) {
        const char digit =
            character.size() == 1 && IsDigit(character[0]) ? character[0] : LookAlikeOf(character, tables_).digit;
        designator += digit == 0 ? '?' : digit;
      }
      if (auto read = ParseDesignator(designator, tables_); read && !Taken(row.assembly, *read)) {
        constexpr double kUnsure = 0.4;
        read->sure = kUnsure;
        Name(row, *read);
        return;
      }
    }
  }

  // Where a row stands in the order of numbers: groups (C4,8,12) are put where their first part belongs.
  static const Designator& Start(const ListRow& row) { return row.designators.front(); }

  // Gives a row its first designator, and what was read behind that.
  void Name(ListRow& row, const Designator& first) {
    constexpr double kBlank = 0.7;
    row.designators = {first};
    if (row.designator_box.empty()) {
      row.designator_box = PlaceOf(first, row);
    }
    row.designators.front().sure *= row.designator_text.empty() ? kBlank : 1;
    taken_.insert({row.assembly, first.Text()});
    if (row.more_designators.empty()) {
      return;
    }
    if (auto all = ExpandDesignators(first.Text() + row.more_designators, tables_, RangeStyle::kList)) {
      for (Designator& designator : *all) {
        designator.sure = std::min(designator.sure, first.sure);
      }
      row.designators = std::move(*all);
    }
  }

  // Where a designator of which nothing was read must stand: in the column, on the row's first line. Empty when that
  // cannot be told.
  Box PlaceOf(const Designator& designator, const ListRow& row) const {
    std::vector<int> lefts;
    std::vector<double> widths;  // of a character
    for (const ListRow& other : rows_) {
      if (other.designators.size() == 1 && !other.designator_box.empty()) {
        lefts.push_back(other.designator_box.x);
        widths.push_back(static_cast<double>(other.designator_box.width) /
                         static_cast<double>(other.designators.front().Text().size()));
      }
    }
    constexpr std::size_t kFewest = 3;
    if (lefts.size() < kFewest || row.lines.empty() || row.lines.front().empty()) {
      return {};
    }
    std::sort(lefts.begin(), lefts.end());
    std::sort(widths.begin(), widths.end());
    const Box& line = row.lines.front().front().box;
    const double width = widths[widths.size() / 2] * static_cast<double>(designator.Text().size());
    return {lefts[lefts.size() / 2], line.y, static_cast<int>(width), line.height};
  }

  // Whether no other possibility looks as much like the row's text.
  bool IsOnlyOne(const ListRow& row, const std::vector<Designator>& possible, std::size_t distance) const {
    return std::count_if(possible.begin(), possible.end(),
                         [&](const Designator& designator) { return DistanceTo(row, designator) <= distance; }) == 1;
  }

  std::size_t DistanceTo(const ListRow& row, const Designator& designator) const {
    const std::string read = Folded(OneByteEach(Trimmed(PlainText(row.designator_text))), tables_);
    const std::string wanted = Folded(designator.Text(), tables_);
    if (read.empty()) {
      return 1;  // nothing was read that could speak against it
    }
    return read.size() > kLongest || wanted.size() > kLongest ? kLongest : Distance(read, wanted);
  }

  std::vector<ListRow>& rows_;
  const Rules::Tables& tables_;
  std::set<std::pair<std::string, std::string>> taken_;  // assembly and designator of rows that are sure
};

}  // namespace

void RepairByNumbering(std::vector<ListRow>& rows, const Rules::Tables& tables) { Numbering(rows, tables).Repair(); }

}  // namespace benchleaf::extract
