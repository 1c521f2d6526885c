#include "extract/item_column.h"

#include "extract/item_number.h"
#include "extract/list_table.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kFewestItems = 3;

// A number that a cell may have, and how well it fits alone: 1 as read.
struct Choice {
  ItemNumber item;
  double fits = 0;
};

struct Candidate {
  ItemCell cell;
  std::vector<Choice> choices;
};

void AddChoice(std::vector<Choice>& choices, const std::optional<ItemNumber>& item, double fits) {
  if (!item) {
    return;
  }
  const auto same =
      std::find_if(choices.begin(), choices.end(), [&](const Choice& choice) { return choice.item == *item; });
  if (same == choices.end()) {
    choices.push_back({*item, fits});
  } else {
    same->fits = std::max(same->fits, fits);
  }
}

std::vector<Choice> ChoicesOf(const Piece& piece, const Rules::Tables& tables) {
  constexpr double kAlternative = 0.5;
  constexpr double kLookAlike = 0.4;
  std::vector<Choice> choices;
  const std::string text = Trimmed(piece.text);
  AddChoice(choices, ParseItemNumber(text), 1);
  AddChoice(choices, LikeItemNumber(text, tables), kLookAlike);
  for (const Alternative& alternative : piece.alternatives) {
    AddChoice(choices, ParseItemNumber(Trimmed(alternative.text)), kAlternative);
  }
  return choices;
}

// Numbers alone in their cells, with free space to both sides.
std::vector<Candidate> CandidatesOf(const std::vector<Line>& lines, double cap, const Rules::Tables& tables) {
  std::vector<Candidate> candidates;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    const auto& pieces = lines[line].pieces;
    for (std::size_t at = 0; at + 1 < pieces.size(); ++at) {
      constexpr double kCellGap = 0.8;  // a narrow column's numbers stand near what follows
      const bool alone = BeginsColumn(pieces, at, cap) && Gap(pieces[at], pieces[at + 1]) > kCellGap * cap;
      std::vector<Choice> choices = alone ? ChoicesOf(pieces[at], tables) : std::vector<Choice>{};
      if (!choices.empty()) {
        candidates.push_back({{line, at, pieces[at].box, {}, pieces[at].confidence}, std::move(choices)});
      }
    }
  }
  return candidates;
}

// Gathers what stands one below the other, by the middles: numbers are set flush left or right.
std::vector<std::vector<Candidate>> Gathered(std::vector<Candidate> candidates, double cap) {
  constexpr double kReach = 1.5;
  std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
    return a.cell.box.center_x() < b.cell.box.center_x();
  });
  std::vector<std::vector<Candidate>> columns;
  for (Candidate& candidate : candidates) {
    if (columns.empty() || candidate.cell.box.center_x() - columns.back().back().cell.box.center_x() > kReach * cap) {
      columns.emplace_back();
    }
    columns.back().push_back(std::move(candidate));
  }
  for (auto& column : columns) {
    std::stable_sort(column.begin(), column.end(),
                     [](const Candidate& a, const Candidate& b) { return a.cell.line < b.cell.line; });
  }
  return columns;
}

// The best way to count through a column: the numbers rise, mostly by one, or begin anew below a heading.
class Counting {
 public:
  explicit Counting(const std::vector<Candidate>& column) : column_(column) {
    for (std::size_t at = 0; at < column_.size(); ++at) {
      paths_.emplace_back();
      for (const Choice& choice : column_[at].choices) {
        paths_.back().push_back(BestTo(at, choice));
      }
    }
  }

  // The chosen number of each cell; nothing for a cell that does not fit.
  std::vector<std::optional<ItemNumber>> Chosen() const {
    std::vector<std::optional<ItemNumber>> chosen(column_.size());
    Place place;
    double best = 0;
    for (std::size_t at = 0; at < paths_.size(); ++at) {
      for (std::size_t i = 0; i < paths_[at].size(); ++i) {
        if (paths_[at][i].score > best) {
          best = paths_[at][i].score;
          place = {at, i};
        }
      }
    }
    while (best > 0) {
      const Path& path = paths_[place.at][place.choice];
      chosen[place.at] = column_[place.at].choices[place.choice].item;
      if (!path.goes_back) {
        break;
      }
      place = path.before;
    }
    return chosen;
  }

 private:
  struct Place {
    std::size_t at = 0;
    std::size_t choice = 0;
  };

  struct Path {
    double score = 0;
    Place before;
    bool goes_back = false;
  };

  static double StepScore(const Choice& from, const Choice& to) {
    constexpr double kOver = 0.1;  // rows whose numbers were not read
    constexpr double kAnew = -1.5;
    if (IsNextItem(from.item, to.item)) {
      return std::min(from.fits, to.fits);
    }
    return from.item < to.item ? kOver : kAnew;
  }

  Path BestTo(std::size_t at, const Choice& choice) const {
    Path path{choice.fits, {}, false};
    for (std::size_t before = 0; before < at; ++before) {
      for (std::size_t i = 0; i < paths_[before].size(); ++i) {
        const double score = paths_[before][i].score + choice.fits + StepScore(column_[before].choices[i], choice);
        if (score > path.score) {
          path = {score, {before, i}, true};
        }
      }
    }
    return path;
  }

  const std::vector<Candidate>& column_;
  std::vector<std::vector<Path>> paths_;  // by cell and choice: the best that ends there
};

// Whether counting on from `above` over so many cells gives `below`.
bool IsBehind(const ItemNumber& above, const ItemNumber& below, std::size_t cells) {
  const bool as_many = below.number - above.number == static_cast<int>(cells) && above.letter == 0 && below.letter == 0;
  return as_many || IsNextItem(above, below);
}

// The column's cells with their numbers, where they count.
std::optional<ItemColumn> Counted(const std::vector<Candidate>& candidates) {
  const auto chosen = Counting(candidates).Chosen();
  std::size_t told = 0;
  std::size_t as_read = 0;
  std::size_t steps = 0;
  std::optional<std::size_t> above;
  ItemColumn column;
  std::vector<int> lefts;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    column.cells.push_back(candidates[i].cell);
    lefts.push_back(candidates[i].cell.box.x);
    if (!chosen[i]) {
      continue;
    }
    ++told;
    as_read += candidates[i].choices.front().item == *chosen[i] && candidates[i].choices.front().fits == 1 ? 1U : 0U;
    steps += above && IsBehind(*chosen[*above], *chosen[i], i - *above) ? 1U : 0U;
    above = i;
    column.cells.back().item = chosen[i]->Text();
  }
  if (told < kFewestItems || told * 2 < candidates.size() || as_read * 2 < told || steps * 2 < told) {
    return std::nullopt;
  }
  std::nth_element(lefts.begin(), lefts.begin() + static_cast<std::ptrdiff_t>(lefts.size() / 2), lefts.end());
  column.left = lefts[lefts.size() / 2];
  return column;
}

}  // namespace

std::vector<ItemColumn> FindItemColumns(const std::vector<Line>& lines, double cap, const Rules::Tables& tables) {
  std::vector<ItemColumn> columns;
  for (const std::vector<Candidate>& candidates : Gathered(CandidatesOf(lines, cap, tables), cap)) {
    if (auto column = Counted(candidates)) {
      columns.push_back(*std::move(column));
    }
  }
  return columns;
}

}  // namespace benchleaf::extract
