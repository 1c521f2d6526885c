#include "extract/list_rows.h"

#include "extract/item_number.h"
#include "extract/list_heading.h"
#include "extract/list_words.h"
#include "extract/part_number.h"
#include "extract/plain_text.h"
#include "extract/row_cells.h"

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <optional>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kNextLineWithin = 2.6;  // capital heights between a row's lines, from top to top less one height

// Builds rows line by line. Knows what the row above needs: whether its designators go on, whether it may grow.
class RowBuilder {
 public:
  RowBuilder(const ListTable& table, double cap, const Rules::Tables& tables, std::string& assembly)
      : table_(table), cap_(cap), tables_(tables), assembly_(assembly), cells_(table, cap, tables) {
    result_.order = table.order;
  }

  TableRows Build() {
    for (const Line& line : table_.lines) {
      Take(line);
    }
    return std::move(result_);
  }

 private:
  void Take(const Line& line) {
    line_has_part_ = HasPartNumber(line.pieces);
    const std::vector<std::string> words = WordsOf(line.pieces);
    if (IsColumnTitles(words, tables_)) {
      NoteColumns(line);
      open_ = false;
      return;
    }
    if (TakeItem(line)) {
      return;
    }
    const auto cell = cells_.Find(line, Above(line));
    if (!cell) {
      if (auto heading = AssemblyHeading(line, words, tables_)) {
        assembly_ = *heading;
        open_ = false;
        return;
      }
      if (IsGroupTitle(words, tables_)) {
        title_ = words.front();
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

  // Whether a line that begins with numbers alone is a new row whose letter was lost: it has a part number, as the row
  // above has.
  bool IsRowOfItsOwn() const { return !result_.rows.empty() && line_has_part_ && row_has_part_; }

  RowAbove Above(const Line& line) const {
    RowAbove above;
    if (const Designator* last = LastDesignator(); last != nullptr) {
      above.first = &result_.rows.back().designators.front();
      above.last = last;
      above.goes_on = open_ && Near(line);
      above.wants_more = wants_more_;
      above.own_row = IsRowOfItsOwn();
    }
    return above;
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
    if (result_.rows.empty() || !open_ || !Near(line) || IsRowOfItsOwn() ||
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
    row.readings = ReadingsOf(line.pieces, cell);
    row.assembly = assembly_;
    row.title = title_;
    // The row of an assembly's own part heads the rows of what is on it.
    const Designator& first = cell.designators.front();
    if (cell.designators.size() == 1 && first.letters == "A" && AssemblyHeading(words, tables_)) {
      assembly_ = first.Text();
    }
    Begin(std::move(row));
    AddLine(result_.rows.back(), line, cell.from, cell.count);
    NoteEnd(line.pieces[cell.from + cell.count - 1]);
    open_ = true;
  }

  // A row that an item number begins.
  bool TakeItem(const Line& line) {
    for (std::size_t at = 0; at < line.pieces.size(); ++at) {
      const auto item = std::find_if(table_.items.begin(), table_.items.end(),
                                     [&](const ItemCell& cell) { return cell.box == line.pieces[at].box; });
      if (item == table_.items.end()) {
        continue;
      }
      ListRow row;
      row.item = item->item;
      row.item_box = item->box;
      row.item_confidence = item->confidence;
      StartRow(std::move(row), line, at, 1);
      return true;
    }
    return false;
  }

  // A row whose designators, if it has any, are known.
  void StartRow(ListRow row, const Line& line, std::size_t from, std::size_t count) {
    row.assembly = assembly_;
    row.title = title_;
    Begin(std::move(row));
    AddLine(result_.rows.back(), line, from, count);
    open_ = true;
    wants_more_ = false;
    wants_range_ = false;
  }

  // Sections of one part of which only the letter is printed below C1A.
  bool TakeSection(const Line& line) {
    const Designator* last = LastDesignator();
    const Piece& piece = line.pieces.front();
    const std::string letter = Upper(Trimmed(piece.text));
    if (last == nullptr || last->suffix.empty() || letter.size() != 1 || letter[0] != last->suffix[0] + 1 ||
        std::abs(piece.box.x - table_.designator_left) > 2 * kDesignatorReach * cap_ || !Near(line) ||
        line.pieces.size() < 2) {
      return false;
    }
    Designator section = *last;
    section.suffix = letter;
    AddRow(line, DesignatorCell{{section}, 0, 1, line.pieces.front().box}, {});
    result_.rows.back().readings = {{section.Text(), line.pieces.front().confidence}};
    return true;
  }

  // The wrapped cell of a row whose first designator was not made out.
  bool TakeMoreNumbers(const Line& line) {
    if (!open_ || !Near(line) || result_.rows.empty() || result_.rows.back().designator_text.empty() ||
        table_.order != ColumnOrder::kDesignatorFirst || !cells_.InColumn(line.pieces.front())) {
      return false;
    }
    ListRow& row = result_.rows.back();
    std::size_t count = 0;
    while (count < line.pieces.size() && line.pieces[count].box.right() < cells_.right() &&
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
      if (std::abs(piece.box.x - table_.designator_left) <= 1.2 * cap_ && cells_.InColumn(piece) && shaped &&
          BeginsColumn(line.pieces, at, cap_) && line.pieces.size() > 1 && text.find('-') == std::string::npos) {
        ListRow row;
        row.designator_text = head;
        row.more_designators = text.substr(head.size());
        row.designator_box = piece.box;
        row.designator_confidence = piece.confidence;
        row.readings = ReadingsOf(line.pieces, {{}, at, 1, piece.box});
        std::size_t count = 1;
        while (at + count < line.pieces.size() && line.pieces[at + count].box.right() < cells_.right() &&
               IsDigit(line.pieces[at + count].text.front())) {
          row.more_designators += "," + Trimmed(line.pieces[at + count].text);
          row.designator_box = Union(row.designator_box, line.pieces[at + count].box);
          ++count;
        }
        StartRow(std::move(row), line, at, count);
        return true;
      }
    }
    return false;
  }

  void TakeWithoutDesignator(const Line& line) {
    const bool by_names = table_.order != ColumnOrder::kNoDesignator && table_.order != ColumnOrder::kItems;
    const bool in_column = !by_names || line.pieces.front().box.x >= cells_.description_left() - 1.5 * cap_ ||
                           table_.order == ColumnOrder::kDesignatorLast;
    if (open_ && IsGroupHeading(line)) {
      title_ = Upper(Trimmed(line.pieces.front().text));
      open_ = false;
      return;
    }
    if (open_ && Near(line) && in_column && !(line_has_part_ && (row_has_part_ || !by_names))) {
      AddLine(result_.rows.back(), line, line.pieces.size(), 0);
      return;
    }
    if (line_has_part_ && line.pieces.size() > 1) {
      StartRow({}, line, line.pieces.size(), 0);
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

  void Begin(ListRow row) {
    result_.rows.push_back(std::move(row));
    row_has_part_ = false;
  }

  // Puts the line's pieces, but for the designators', into the row, which is the last.
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
    row_has_part_ = row_has_part_ || (line_has_part_ && HasPartNumber(rest));
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
      return SureOfPartNumber(Upper(TrimmedView(piece.text)), tables_, PartPlace::kList) > 0;
    });
  }

  const ListTable& table_;
  const double cap_;
  const Rules::Tables& tables_;
  std::string& assembly_;
  const RowCells cells_;
  std::string title_;  // of the group of rows
  TableRows result_;
  int last_bottom_ = 0;
  bool line_has_part_ = false;  // the line in hand holds a part number
  bool row_has_part_ = false;   // and so do the last row's
  bool open_ = false;           // the last row may go on below
  bool wants_more_ = false;     // its designators end in a comma or dash
  bool wants_range_ = false;    // in a dash
};

}  // namespace

void CountItems(std::vector<ListRow>& rows) {
  constexpr double kToldByOthers = 0.7;
  constexpr std::size_t kMostTogether = 3;
  std::size_t above = rows.size();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto item = ParseItemNumber(rows[i].item);
    if (!item) {
      continue;
    }
    const auto before = above < i ? ParseItemNumber(rows[above].item) : std::nullopt;
    const std::size_t between = before ? i - above - 1 : 0;
    if (between > 0 && between <= kMostTogether && before->letter == 0 && item->letter == 0 &&
        static_cast<std::size_t>(item->number - before->number) == between + 1) {
      for (std::size_t k = 1; k <= between; ++k) {
        ListRow& row = rows[above + k];
        row.item = ItemNumber{before->number + static_cast<int>(k)}.Text();
        row.item_box = {};
        row.item_confidence = kToldByOthers;
      }
    }
    above = i;
  }
}

TableRows RowsOf(const ListTable& table, double cap, const Rules::Tables& tables, std::string& assembly) {
  return RowBuilder(table, cap, tables, assembly).Build();
}

}  // namespace benchleaf::extract
