#include "extract/list_rows.h"

#include "extract/list_heading.h"
#include "extract/list_words.h"
#include "extract/part_number.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <cstdlib>
#include <optional>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kColumnReach = 4;       // capital heights from the column's edge within which its cells begin
constexpr double kNextLineWithin = 2.6;  // capital heights between a row's lines, from top to top less one height

// Builds rows line by line. Knows what the row above needs: whether its designators go on, whether it may grow.
class RowBuilder {
 public:
  RowBuilder(const ListTable& table, double cap, const Rules::Tables& tables, std::string& assembly)
      : table_(table), cap_(cap), tables_(tables), assembly_(assembly) {
    result_.order = table.order;
    description_left_ = DescriptionLeft();
  }

  TableRows Build() {
    for (const Line& line : table_.lines) {
      Take(line);
    }
    return std::move(result_);
  }

 private:
  void Take(const Line& line) {
    const std::vector<std::string> words = WordsOf(line.pieces);
    if (IsColumnTitles(words, tables_)) {
      NoteColumns(line);
      open_ = false;
      return;
    }
    const auto cell = FindCell(line);
    if (!cell) {
      if (auto heading = AssemblyHeading(line, tables_)) {
        assembly_ = *heading;
        open_ = false;
        return;
      }
      if (IsGroupTitle(words, tables_)) {
        open_ = false;
        return;
      }
    }
    if (cell && GoesOn(line, *cell)) {
      return;
    }
    if (cell) {
      AddRow(line, *cell, words);
    } else if (!TakeSection(line) && !TakeMoreNumbers(line) && !TakeSpoiled(line)) {
      TakeWithoutDesignator(line);
    }
  }

  bool InDesignatorColumn(const Piece& piece) const {
    return table_.order != ColumnOrder::kNoDesignator &&
           std::abs(piece.box.x - table_.designator_left) <= kColumnReach * cap_;
  }

  // The line's designators, when they stand in the column for them.
  std::optional<DesignatorCell> FindCell(const Line& line) const {
    for (std::size_t at = 0; at < line.pieces.size(); ++at) {
      if (InDesignatorColumn(line.pieces[at]) && BeginsColumn(line.pieces, at, cap_)) {
        if (auto cell =
                DesignatorCellAt(line.pieces, at, cap_, tables_, {nullptr, LoneStrokes::kAllowSmall, CellsRight()})) {
          return cell;
        }
        const Designator* last = LastDesignator();
        const bool own_row = last != nullptr && IsRowOfItsOwn(line);
        if (last != nullptr && open_ && Near(line) &&
            (wants_more_ || line.pieces.size() == 1 ||
             CountsOn(line.pieces[at], own_row ? result_.rows.back().designators.front() : *last))) {
          if (auto cell =
                  DesignatorCellAt(line.pieces, at, cap_, tables_, {last, LoneStrokes::kRefuse, CellsRight()})) {
            return cell;
          }
        }
      }
    }
    return std::nullopt;
  }

  // Whether a line that begins with numbers alone is a new row whose letter was lost: it has a part number, as the row
  // above has.
  bool IsRowOfItsOwn(const Line& line) const {
    return !result_.rows.empty() && HasPartNumber(line.pieces) && RowHasPartNumber(result_.rows.back());
  }

  // Where the designators' cells end at the latest.
  int CellsRight() const {
    return table_.order == ColumnOrder::kDesignatorFirst ? description_left_ - static_cast<int>(0.5 * cap_) : 0;
  }

  // Whether a piece is a number that goes on from the row's last designator, whose comma was lost.
  static bool CountsOn(const Piece& piece, const Designator& last) {
    const std::string text = Trimmed(piece.text);
    int number = 0;
    int before = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    std::from_chars(last.number.data(), last.number.data() + last.number.size(), before);
    return number > before && IsNumberList(text);
  }

  // "17,21", its figures perhaps read as strokes.
  static bool IsNumberList(const std::string& text) {
    return !text.empty() && IsDigit(text.front()) && text.find_first_not_of("0123456789,-ilIOo") == std::string::npos;
  }

  // "17,21" with figures of at most four: no part number.
  static bool IsShortNumberList(const std::string& text) {
    constexpr std::size_t kMostFigures = 4;
    const std::size_t end = std::min(text.find(','), text.size());
    return IsNumberList(text) && text.find('-') == std::string::npos && end <= kMostFigures;
  }

  const Designator* LastDesignator() const {
    return result_.rows.empty() || result_.rows.back().designators.empty() ? nullptr
                                                                           : &result_.rows.back().designators.back();
  }

  bool Near(const Line& line) const {
    return !result_.rows.empty() && line.box.y - last_bottom_ < kNextLineWithin * cap_;
  }

  // The cell of the row above that wraps: "C4,5,8,15," and below it "17,21".
  bool GoesOn(const Line& line, const DesignatorCell& cell) {
    const bool alone = cell.count == line.pieces.size();
    const bool only_numbers = IsDigit(Trimmed(line.pieces[cell.from].text).front());
    if (result_.rows.empty() || !open_ || !Near(line) || IsRowOfItsOwn(line) ||
        !(wants_more_ || (alone && only_numbers) || (only_numbers && LastDesignator() != nullptr))) {
      return false;
    }
    ListRow& row = result_.rows.back();
    std::vector<Designator> more = cell.designators;
    if (wants_range_) {
      const std::string range = row.designators.back().Text() + "-" + more.front().Text();
      if (auto between = ExpandDesignators(range, tables_, RangeStyle::kList)) {
        row.designators.pop_back();
        more.erase(more.begin());
        more.insert(more.begin(), between->begin(), between->end());
      }
    }
    row.designators.insert(row.designators.end(), more.begin(), more.end());
    const Piece text = Joined(line.pieces, cell.from, cell.count);
    row.designator_text += " " + text.read;
    row.designator_box = Union(row.designator_box, cell.box);
    NoteEnd(line.pieces[cell.from + cell.count - 1]);
    AddLine(row, line, cell.from, cell.count);
    return true;
  }

  void AddRow(const Line& line, const DesignatorCell& cell, const std::vector<std::string>& words) {
    ListRow row;
    row.designators = cell.designators;
    const Piece text = Joined(line.pieces, cell.from, cell.count);
    row.designator_text = text.read;
    row.designator_box = cell.box;
    row.designator_confidence = text.confidence;
    row.assembly = assembly_;
    // The row of an assembly's own part heads the rows of what is on it.
    const Designator& first = cell.designators.front();
    if (cell.designators.size() == 1 && first.letters == "A" && AssemblyHeading(words, tables_)) {
      assembly_ = first.Text();
    }
    result_.rows.push_back(std::move(row));
    AddLine(result_.rows.back(), line, cell.from, cell.count);
    NoteEnd(line.pieces[cell.from + cell.count - 1]);
    open_ = true;
  }

  // Sections of one part of which only the letter is printed below C1A.
  bool TakeSection(const Line& line) {
    const Designator* last = LastDesignator();
    const Piece& piece = line.pieces.front();
    const std::string letter = Upper(Trimmed(piece.text));
    if (last == nullptr || last->suffix.empty() || letter.size() != 1 || letter[0] != last->suffix[0] + 1 ||
        std::abs(piece.box.x - table_.designator_left) > 2 * kColumnReach * cap_ || !Near(line) ||
        line.pieces.size() < 2) {
      return false;
    }
    Designator section = *last;
    section.suffix = letter;
    AddRow(line, DesignatorCell{{section}, 0, 1, line.pieces.front().box}, {});
    return true;
  }

  // The wrapped cell of a row whose first designator was not made out.
  bool TakeMoreNumbers(const Line& line) {
    if (!open_ || !Near(line) || result_.rows.empty() || result_.rows.back().designator_text.empty() ||
        table_.order != ColumnOrder::kDesignatorFirst || !InDesignatorColumn(line.pieces.front())) {
      return false;
    }
    ListRow& row = result_.rows.back();
    std::size_t count = 0;
    while (count < line.pieces.size() && line.pieces[count].box.right() < CellsRight() &&
           IsNumberList(Trimmed(line.pieces[count].text))) {
      ++count;
    }
    if (count == 0) {
      return false;
    }
    for (std::size_t i = 0; i < count && row.designators.empty(); ++i) {
      row.more_designators += "," + Trimmed(line.pieces[i].text);
      row.designator_box = Union(row.designator_box, line.pieces[i].box);
    }
    AddLine(row, line, 0, count);
    return true;
  }

  // A short word in the designators' column that is no designator: kept for RepairByNumbering.
  bool TakeSpoiled(const Line& line) {
    for (std::size_t at = 0; at < line.pieces.size(); ++at) {
      const Piece& piece = line.pieces[at];
      const std::string text = Trimmed(piece.text);
      const std::string head = text.substr(0, text.find(','));
      const bool shaped = head.size() >= 2 && head.size() <= 7 && !std::all_of(head.begin(), head.end(), IsDigit);
      if (std::abs(piece.box.x - table_.designator_left) <= 1.2 * cap_ && InDesignatorColumn(piece) && shaped &&
          BeginsColumn(line.pieces, at, cap_) && line.pieces.size() > 1 && text.find('-') == std::string::npos) {
        ListRow row;
        row.designator_text = head;
        row.more_designators = text.substr(head.size());
        row.designator_box = piece.box;
        row.designator_confidence = piece.confidence;
        row.assembly = assembly_;
        std::size_t count = 1;
        while (at + count < line.pieces.size() && line.pieces[at + count].box.right() < CellsRight() &&
               IsDigit(line.pieces[at + count].text.front())) {
          row.more_designators += "," + Trimmed(line.pieces[at + count].text);
          row.designator_box = Union(row.designator_box, line.pieces[at + count].box);
          ++count;
        }
        result_.rows.push_back(std::move(row));
        AddLine(result_.rows.back(), line, at, count);
        wants_more_ = false;
        wants_range_ = false;
        open_ = true;
        return true;
      }
    }
    return false;
  }

  void TakeWithoutDesignator(const Line& line) {
    const bool has_part = HasPartNumber(line.pieces);
    const bool row_has_part = !result_.rows.empty() && RowHasPartNumber(result_.rows.back());
    const bool in_column = table_.order == ColumnOrder::kNoDesignator ||
                           line.pieces.front().box.x >= description_left_ - 1.5 * cap_ ||
                           table_.order == ColumnOrder::kDesignatorLast;
    if (open_ && IsGroupHeading(line)) {
      open_ = false;
      return;
    }
    if (open_ && Near(line) && in_column &&
        !(has_part && (row_has_part || table_.order == ColumnOrder::kNoDesignator))) {
      AddLine(result_.rows.back(), line, line.pieces.size(), 0);
      return;
    }
    if (has_part && line.pieces.size() > 1) {
      ListRow row;
      row.assembly = assembly_;
      result_.rows.push_back(std::move(row));
      AddLine(result_.rows.back(), line, line.pieces.size(), 0);
      open_ = true;
      wants_more_ = false;
      wants_range_ = false;
      return;
    }
    open_ = false;
  }

  // CAPACITORS between rows whose descriptions are not all capitals.
  bool IsGroupHeading(const Line& line) const {
    constexpr std::size_t kMostWords = 3;
    const auto is_capitals = [](const Piece& piece) {
      const std::string text = Trimmed(piece.text);
      return text.size() >= 3 && std::all_of(text.begin(), text.end(), IsUpper);
    };
    const auto has_small = [](const Piece& piece) {
      return std::count_if(piece.text.begin(), piece.text.end(), IsLower) >= 3;
    };
    return line.pieces.size() <= kMostWords && std::all_of(line.pieces.begin(), line.pieces.end(), is_capitals) &&
           !result_.rows.empty() && !result_.rows.back().lines.empty() &&
           std::any_of(result_.rows.back().lines.front().begin(), result_.rows.back().lines.front().end(), has_small);
  }

  // Puts the line's pieces, but for the designators', into the row.
  void AddLine(ListRow& row, const Line& line, std::size_t from, std::size_t count) {
    std::vector<Piece> rest;
    for (std::size_t i = 0; i < line.pieces.size(); ++i) {
      const bool designator = i >= from && i < from + count;
      row.box = designator ? Union(row.box, line.pieces[i].box) : row.box;
      // What stands left of a column that comes first is a mark at the margin.
      const bool margin = count > 0 && i < from && table_.order == ColumnOrder::kDesignatorFirst;
      if (!designator && !margin) {
        row.box = Union(row.box, line.pieces[i].box);
        rest.push_back(line.pieces[i]);
      }
    }
    row.lines.push_back(std::move(rest));
    last_bottom_ = line.box.bottom();
  }

  void NoteEnd(const Piece& last) {
    const char end = last.text.back();
    wants_range_ = end == '-' || end == '~' || HasRole(ListWord(last.text), ListRole::kRange, tables_);
    wants_more_ = wants_range_ || end == ',' || end == '&' || HasRole(ListWord(last.text), ListRole::kAnd, tables_);
  }

  void NoteColumns(const Line& line) {
    for (const Piece& piece : line.pieces) {
      if (HasRole(ListWord(piece.text), ListRole::kHeadQuantity, tables_)) {
        result_.quantity_left = piece.box.x;
      }
    }
  }

  bool HasPartNumber(const std::vector<Piece>& pieces) const {
    return std::any_of(pieces.begin(), pieces.end(), [&](const Piece& piece) {
      return SureOfPartNumber(Upper(Trimmed(piece.text)), tables_, PartPlace::kList) > 0;
    });
  }

  bool RowHasPartNumber(const ListRow& row) const {
    return std::any_of(row.lines.begin(), row.lines.end(), [&](const auto& line) { return HasPartNumber(line); });
  }

  // The left edge at which most rows go on behind their designators. Numbers that lost their comma stand in front of
  // it.
  int DescriptionLeft() const {
    std::vector<int> lefts;
    for (const Line& line : table_.lines) {
      if (const auto cell = FindCell(line)) {
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
      const auto near = std::count_if(lefts.begin(), lefts.end(),
                                      [&](int left) { return left >= lefts[i] && left <= lefts[i] + 1.5 * cap_; });
      if (static_cast<std::size_t>(near) > most) {
        most = static_cast<std::size_t>(near);
        best = lefts[i];
      }
    }
    return best;
  }

  const ListTable& table_;
  const double cap_;
  const Rules::Tables& tables_;
  std::string& assembly_;
  TableRows result_;
  int description_left_ = 0;
  int last_bottom_ = 0;
  bool open_ = false;         // the last row may go on below
  bool wants_more_ = false;   // its designators end in a comma or dash
  bool wants_range_ = false;  // in a dash
};

}  // namespace

TableRows RowsOf(const ListTable& table, double cap, const Rules::Tables& tables, std::string& assembly) {
  return RowBuilder(table, cap, tables, assembly).Build();
}

}  // namespace benchleaf::extract
