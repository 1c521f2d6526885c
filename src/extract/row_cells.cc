#include "extract/row_cells.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <string_view>

namespace benchleaf::extract {
namespace {

// Whether a piece is a number that goes on from the row's last designator, whose comma was lost.
bool CountsOn(const Piece& piece, const Designator& last) {
  const std::string text = Trimmed(piece.text);
  int number = 0;
  int before = 0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  std::from_chars(last.number.data(), last.number.data() + last.number.size(), before);
  return number > before && IsNumberList(text);
}

// "17,21" with figures of at most four: no part number.
bool IsShortNumberList(const std::string& text) {
  constexpr std::size_t kMostFigures = 4;
  const std::size_t end = std::min(text.find(','), text.size());
  return IsNumberList(text) && text.find('-') == std::string::npos && end <= kMostFigures;
}

// Whether these are several numbers of one class that rise.
bool Rise(const std::vector<Designator>& designators) {
  const auto falls = [](const Designator& a, const Designator& b) {
    return a.letters != b.letters || NumberOf(a) >= NumberOf(b);
  };
  return designators.size() > 1 &&
         std::adjacent_find(designators.begin(), designators.end(), falls) == designators.end();
}

}  // namespace

bool IsNumberList(const std::string& text) {
  return !text.empty() && IsDigit(text.front()) && text.find_first_not_of("0123456789,-ilIOo") == std::string::npos;
}

std::vector<Alternative> ReadingsOf(const std::vector<Piece>& pieces, const DesignatorCell& cell) {
  constexpr double kRising = 0.8;
  const std::size_t from = cell.from;
  constexpr std::string_view kJoints = ",-&~/;+=";
  std::vector<Alternative> readings = {{Joined(pieces, from, cell.count).text, pieces[from].confidence}};
  if (cell.count > 1) {
    readings.push_back({pieces[from].text, pieces[from].confidence});
  }
  readings.insert(readings.end(), pieces[from].alternatives.begin(), pieces[from].alternatives.end());
  for (Alternative& reading : readings) {
    reading.text = reading.text.substr(0, reading.text.find_first_of(kJoints, 1));
    if (Rise(cell.designators) && Upper(Trimmed(reading.text)) == cell.designators.front().Text()) {
      reading.confidence = std::max(reading.confidence, kRising);
    }
  }
  std::stable_sort(readings.begin(), readings.end(),
                   [](const Alternative& a, const Alternative& b) { return a.confidence > b.confidence; });
  return readings;
}

RowCells::RowCells(const ListTable& table, double cap, const Rules::Tables& tables)
    : table_(table), cap_(cap), tables_(tables) {
  description_left_ = DescriptionLeft();
}

bool RowCells::InColumn(const Piece& piece) const {
  return table_.order != ColumnOrder::kNoDesignator && table_.order != ColumnOrder::kItems &&
         std::abs(piece.box.x - table_.designator_left) <= kDesignatorReach * cap_;
}

std::optional<DesignatorCell> RowCells::Find(const Line& line, const RowAbove& above) const {
  for (std::size_t at = 0; at < line.pieces.size(); ++at) {
    if (!InColumn(line.pieces[at]) || !BeginsColumn(line.pieces, at, cap_)) {
      continue;
    }
    if (auto cell = DesignatorCellAt(line.pieces, at, cap_, tables_, {nullptr, LoneStrokes::kAllowSmall, right()})) {
      return cell;
    }
    if (above.last != nullptr && above.goes_on &&
        (above.wants_more || line.pieces.size() == 1 ||
         CountsOn(line.pieces[at], above.own_row ? *above.first : *above.last))) {
      if (auto cell = DesignatorCellAt(line.pieces, at, cap_, tables_, {above.last, LoneStrokes::kRefuse, right()})) {
        return cell;
      }
    }
  }
  return std::nullopt;
}

int RowCells::right() const {
  return table_.order == ColumnOrder::kDesignatorFirst ? description_left_ - static_cast<int>(0.5 * cap_) : 0;
}

// Numbers that lost their comma stand in front of it.
int RowCells::DescriptionLeft() const {
  std::vector<int> lefts;
  for (const Line& line : table_.lines) {
    if (const auto cell = Find(line, {})) {
      std::size_t next = table_.order == ColumnOrder::kDesignatorLast ? 0 : cell->from + cell->count;
      while (next < line.pieces.size() && next != cell->from && IsShortNumberList(Trimmed(line.pieces[next].text))) {
        ++next;
      }
      if (next < line.pieces.size() && next != cell->from) {
        lefts.push_back(line.pieces[next].box.x);
      }
    }
  }
  std::sort(lefts.begin(), lefts.end());
  int best = 0;
  std::size_t most = 0;
  for (std::size_t i = 0; i < lefts.size(); ++i) {
    const auto from = std::lower_bound(lefts.begin(), lefts.end(), lefts[i]);
    const auto end = std::upper_bound(from, lefts.end(), lefts[i] + 1.5 * cap_);
    const auto near = static_cast<std::size_t>(end - from);
    if (near > most) {
      most = near;
      best = lefts[i];
    }
  }
  return best;
}

}  // namespace benchleaf::extract
