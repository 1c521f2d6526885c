#include "extract/row_naming.h"

#include "extract/choice_chain.h"
#include "extract/name_candidates.h"
#include "extract/numbering_steps.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kSurelyRead = 0.5;     // confidence
constexpr double kSureForm = 0.5;       // that a text of this form is a designator
constexpr double kNoName = 0.004;       // how often a row with something in its cell has no name
constexpr double kNoNameBlank = 0.5;    // and one with nothing there
constexpr double kLeastDoubt = 0.01;    // of a reading that spells a designator
constexpr double kNamelessTold = 0.03;  // times as often, where its words tell the class of what is read: I1 LAMP
constexpr double kPastNoName = -2;      // a step to or from such a row
constexpr double kTaken = 3;            // less likely when another row surely has it
constexpr double kLeastLikely = 0.3;    // a name less likely than that is none
constexpr double kSureReading = 0.9;    // confidence of one that gives way only to a name likelier than kAgainstSure
constexpr double kAgainstSure = 0.9;
constexpr double kUnlikelyRead = 0.5;  // how sure a name is that was surely read and is unlikely among the others

class Naming {
 public:
  Naming(std::vector<ListRow>& rows, const Rules::Tables& tables) : rows_(rows), tables_(tables) {}

  void Name() {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      if (!rows_[i].designators.empty() || !rows_[i].designator_text.empty() || LooksLikeNeighbour(i)) {
        places_.push_back(i);
      }
    }
    NoteSure();
    NoteNear();
    NoteDesignators();
    std::vector<std::vector<double>> own;
    for (std::size_t at = 0; at < places_.size(); ++at) {
      own.push_back(Candidates(at));
    }
    const NumberingSteps steps(SurePairs());
    std::vector<std::vector<StepEnd>> ends(places_.size());
    for (std::size_t at = 0; at < places_.size(); ++at) {
      for (const NameCandidate& candidate : candidates_[at]) {
        ends[at].push_back(steps.EndAt({rows_[places_[at]].assembly, candidate.designator}));
      }
    }
    const auto chances = ChancesInChain(own, [&](std::size_t at, std::size_t from, std::size_t to) {
      // The last choice of every place is no name.
      if (from == ends[at - 1].size() || to == ends[at].size()) {
        return kPastNoName;
      }
      return steps.Likeliness(ends[at - 1][from], ends[at][to]);
    });
    for (std::size_t at = 0; at < places_.size(); ++at) {
      Settle(at, chances[at]);
    }
  }

 private:
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

  void NoteSure() {
    for (const std::size_t i : places_) {
      const ListRow& row = rows_[i];
      const bool sure = !row.designators.empty() && row.designators.front().sure >= kSureForm &&
                        row.designator_confidence >= kSurelyRead;
      sure_.push_back(sure);
      for (const Designator& designator : row.designators) {
        if (sure) {
          ++taken_[row.assembly + " " + designator.Text()];
        }
      }
    }
  }

  std::vector<std::pair<RowName, RowName>> SurePairs() const {
    std::vector<std::pair<RowName, RowName>> pairs;
    for (std::size_t at = 1; at < places_.size(); ++at) {
      if (sure_[at - 1] && sure_[at]) {
        const ListRow& above = rows_[places_[at - 1]];
        const ListRow& below = rows_[places_[at]];
        pairs.push_back({{above.assembly, above.designators.front()}, {below.assembly, below.designators.front()}});
      }
    }
    return pairs;
  }

  // Which place above and which below is the nearest sure one of the same assembly.
  void NoteNear() {
    const std::size_t count = places_.size();
    above_.assign(count, std::nullopt);
    below_.assign(count, std::nullopt);
    const auto note = [&](std::vector<std::optional<std::size_t>>& near, std::size_t at, std::size_t next) {
      if (rows_[places_[next]].assembly == rows_[places_[at]].assembly) {
        near[at] = sure_[next] ? next : near[next];
      }
    };
    for (std::size_t at = 1; at < count; ++at) {
      note(above_, at, at - 1);
    }
    for (std::size_t at = count; at-- > 1;) {
      note(below_, at - 1, at);
    }
  }

  NearName Near(std::size_t at, const std::vector<std::optional<std::size_t>>& near) const {
    // A row that was sure may have lost its name since.
    if (!near[at] || rows_[places_[*near[at]]].designators.empty()) {
      return {};
    }
    return {&rows_[places_[*near[at]]].designators.front(),
            static_cast<int>(std::max(at, *near[at]) - std::min(at, *near[at]))};
  }

  // Finds the place's candidates; gives how well each fits, and last how well no name does.
  std::vector<double> Candidates(std::size_t at) {
    const ListRow& row = rows_[places_[at]];
    std::vector<NameCandidate> candidates = NameCandidates(row, Near(at, above_), Near(at, below_), tables_);
    std::vector<double> fits;
    for (NameCandidate& candidate : candidates) {
      const std::string text = candidate.designator.Text();
      const auto taken = taken_.find(row.assembly + " " + text);
      const bool own = sure_[at] && std::any_of(row.designators.begin(), row.designators.end(),
                                                [&](const auto& other) { return other.Text() == text; });
      const std::size_t others = taken == taken_.end() ? 0 : taken->second - (own ? 1U : 0U);
      fits.push_back(candidate.fit - (others > 0 ? kTaken : 0));
    }
    fits.push_back(std::log(HowOftenNameless(at, candidates)));
    candidates_.push_back(std::move(candidates));
    return fits;
  }

  double HowOftenNameless(std::size_t at, const std::vector<NameCandidate>& candidates) const {
    const ListRow& row = rows_[places_[at]];
    if (row.readings.empty() && row.designator_text.empty()) {
      return kNoNameBlank;
    }
    const bool told = std::any_of(candidates.begin(), candidates.end(), [](const auto& one) { return one.told; });
    return kNoName * (told ? kNamelessTold : 1) *
           (sure_[at] ? std::max(kLeastDoubt, 1 - row.designator_confidence) : 1);
  }

  // Whether the sure rows right above and below leave one number between them.
  bool IsForced(std::size_t at, const Designator& name) const {
    const NearName above = Near(at, above_);
    const NearName below = Near(at, below_);
    const auto next_to = [&](const NearName& near, int distance) {
      return near.rows == 1 && near.designator->letters == name.letters &&
             NumberOf(name) - NumberOf(*near.designator) == distance;
    };
    return next_to(above, 1) && next_to(below, -1);
  }

  // The candidate that the row's surest reading spells beyond doubt. Several words may be several designators: L6 7.
  std::optional<std::size_t> SurelyRead(std::size_t at) const {
    const ListRow& row = rows_[places_[at]];
    if (row.readings.empty() || row.readings.front().confidence < kSureReading || row.designators.size() > 1 ||
        Trimmed(row.designator_text).find(' ') != std::string::npos) {
      return std::nullopt;
    }
    const auto spelled = ParseDesignator(Trimmed(row.readings.front().text), tables_);
    for (std::size_t i = 0; i < candidates_[at].size() && spelled && spelled->sure >= kSureForm; ++i) {
      if (candidates_[at][i].designator.Text() == spelled->Text()) {
        return i;
      }
    }
    return std::nullopt;
  }

  void Settle(std::size_t at, const std::vector<double>& chances) {
    CountDesignator(rows_[places_[at]], Counted::kNoMore);
    SettleName(at, chances);
    CountDesignator(rows_[places_[at]], Counted::kFromNow);
  }

  void SettleName(std::size_t at, const std::vector<double>& chances) {
    ListRow& row = rows_[places_[at]];
    const auto best = static_cast<std::size_t>(std::max_element(chances.begin(), chances.end()) - chances.begin());
    if (const auto read = SurelyRead(at); read && *read != best && chances[best] < kAgainstSure) {
      Take(row, candidates_[at][*read].designator, std::max(kUnlikelyRead, chances[*read]));
      return;
    }
    const bool named = best < candidates_[at].size() && chances[best] >= kLeastLikely &&
                       (candidates_[at][best].seen || IsForced(at, candidates_[at][best].designator));
    if (!named) {
      if (row.designators.size() == 1) {
        row.designators.clear();
      }
      return;
    }
    constexpr double kRepaired = 0.95;
    const Designator& name = candidates_[at][best].designator;
    const bool read = std::any_of(row.readings.begin(), row.readings.end(), [&](const Alternative& reading) {
      return Upper(Trimmed(reading.text)) == name.Text();
    });
    Take(row, name, chances[best] * (read ? 1 : kRepaired));
  }

  // Gives a row its first designator, and what was read behind that.
  void Take(ListRow& row, Designator first, double chance) {
    const bool same = !row.designators.empty() && row.designators.front().Text() == first.Text();
    first.sure = chance;
    if (row.designator_box.empty()) {
      row.designator_box = PlaceOf(first, row);
    }
    if (same) {
      row.designators.front().sure = chance;
    } else if (row.designators.size() > 1) {
      row.designators.front() = first;
    } else {
      row.designators = {first};
      AddMore(row, first);
    }
    if (row.designators.size() == 1) {
      row.designator_confidence = 1;  // the chance knows of it
    }
  }

  void AddMore(ListRow& row, const Designator& first) const {
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
    constexpr std::size_t kFewest = 3;
    if (lefts_.size() < kFewest || row.lines.empty() || row.lines.front().empty()) {
      return {};
    }
    const Box& line = row.lines.front().front().box;
    const double width = widths_[widths_.size() / 2] * static_cast<double>(designator.Text().size());
    return {lefts_[lefts_.size() / 2], line.y, static_cast<int>(width), line.height};
  }

  void NoteDesignators() {
    for (const ListRow& row : rows_) {
      CountDesignator(row, Counted::kFromNow);
    }
  }

  // Counts a row's designator, where it has one and one only, among the places and widths that the others go by. Both
  // are kept in order.
  enum class Counted { kFromNow, kNoMore };
  void CountDesignator(const ListRow& row, Counted counted) {
    if (row.designators.size() != 1 || row.designator_box.empty()) {
      return;
    }
    const auto count = [&](auto& sorted, auto number) {
      const auto place = std::lower_bound(sorted.begin(), sorted.end(), number);
      if (counted == Counted::kFromNow) {
        sorted.insert(place, number);
      } else {
        sorted.erase(place);
      }
    };
    count(lefts_, row.designator_box.x);
    count(widths_,
          static_cast<double>(row.designator_box.width) / static_cast<double>(row.designators.front().Text().size()));
  }

  std::vector<ListRow>& rows_;
  const Rules::Tables& tables_;
  std::vector<std::size_t> places_;                // rows that have a name, or should
  std::vector<bool> sure_;                         // by place
  std::vector<std::optional<std::size_t>> above_;  // by place: the nearest sure place above
  std::vector<std::optional<std::size_t>> below_;
  std::vector<int> lefts_;      // px, of rows with one designator, in order
  std::vector<double> widths_;  // px of a character, of the same
  std::vector<std::vector<NameCandidate>> candidates_;
  ByText<std::size_t> taken_;  // assembly and designator, by how many sure rows
};

}  // namespace

void NameRows(std::vector<ListRow>& rows, const Rules::Tables& tables) { Naming(rows, tables).Name(); }

}  // namespace benchleaf::extract
