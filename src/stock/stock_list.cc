#include "benchleaf/stock/stock_list.h"

#include "stock/tube_marking.h"
#include "stock/tube_state.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/core/csv_table.h"
#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kColumns = 7;
constexpr int kMostTubes = 9999;

constexpr std::array<std::string_view, kColumns> kNames = {"type",      "count",  "glass", "box",
                                                           "condition", "tester", "place"};

char SeparatorOf(std::string_view text) {
  const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
  return std::count(first.begin(), first.end(), ';') > std::count(first.begin(), first.end(), ',') ? ';' : ',';
}

class ListReader {
 public:
  ListReader(const std::string& source, const StockWords& words, const TubeTable& tubes)
      : source_(source), words_(words), tubes_(tubes) {}

  // Finds the columns.
  Result<void> ReadHeader(const CsvRow& row) {
    width_ = row.cells.size();
    for (std::size_t i = 0; i < width_; ++i) {
      const std::string title = TrimmedCell(row.cells[i]);
      const auto column = words_.Column(title);
      if (!column) {
        if (!title.empty()) list.unused.push_back(title);
        continue;
      }
      auto& position = positions_[static_cast<std::size_t>(*column)];
      if (position) {
        return Fail(ErrorCode::kUsage,
                    "line " + std::to_string(row.line) + ", column " + std::to_string(i + 1) + ": '" + title +
                        "' is a second column of the " + std::string(kNames[static_cast<std::size_t>(*column)]) +
                        "; rename or take out one of them",
                    source_);
      }
      position = i;
    }
    if (!Has(StockColumn::kType) && !Has(StockColumn::kGlass)) {
      return Fail(ErrorCode::kUsage,
                  "line " + std::to_string(row.line) +
                      ": no column is named type or glass; name the columns in the first line, as in: "
                      "type,count,glass,box,condition,tester,place",
                  source_);
    }
    list.condition_stated = Has(StockColumn::kCondition) || Has(StockColumn::kTester);
    return {};
  }

  void ReadRow(const CsvRow& row) {
    if (std::all_of(row.cells.begin(), row.cells.end(), [](const auto& c) { return TrimmedCell(c).empty(); })) return;
    if (row.cells.size() > width_) {  // a separator too many shifts the cells behind it: none can be trusted
      Complain(row.line, width_,
               "the row has " + std::to_string(row.cells.size()) + " columns, the first line " +
                   std::to_string(width_) + "; put a text that holds a separator in quotes");
      return;
    }
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      if (IsUtf8(row.cells[i])) continue;
      Complain(row.line, i, "is not UTF-8; save the table as UTF-8");
      return;
    }
    StockRow stock;
    stock.line = row.line;
    stock.listed = Cell(row, StockColumn::kType);
    stock.glass = Cell(row, StockColumn::kGlass);
    stock.box = Cell(row, StockColumn::kBox);
    stock.condition = Cell(row, StockColumn::kCondition);
    stock.tester = Cell(row, StockColumn::kTester);
    stock.place = Cell(row, StockColumn::kPlace);
    const auto count = Count(row);
    if (!count) return;
    stock.count = *count;
    if (!SetType(stock)) {
      Complain(row.line, Has(StockColumn::kType) ? Position(StockColumn::kType) : Position(StockColumn::kGlass),
               "no type is given; write the tube's type number");
      return;
    }
    stock::SetState(stock, words_, list.condition_stated);
    if (stock.count > 0) list.rows.push_back(std::move(stock));
  }

  void Complain(int line, std::size_t column, const std::string& what) {
    std::string message = "line " + std::to_string(line) + ", column " + std::to_string(column + 1);
    for (std::size_t i = 0; i < kColumns; ++i) {
      if (positions_[i] == column) message += " (" + std::string(kNames[i]) + ")";
    }
    list.faults.push_back({ErrorCode::kUsage, message + ": " + what + "; this row is left out", source_, 0});
  }

  StockList list;

 private:
  bool Has(StockColumn column) const { return positions_[static_cast<std::size_t>(column)].has_value(); }
  std::size_t Position(StockColumn column) const { return positions_[static_cast<std::size_t>(column)].value_or(0); }

  std::string Cell(const CsvRow& row, StockColumn column) const {
    const auto position = positions_[static_cast<std::size_t>(column)];
    return position && *position < row.cells.size() ? TrimmedCell(row.cells[*position]) : std::string();
  }

  // A table without the column has a row for each tube.
  std::optional<int> Count(const CsvRow& row) {
    if (!Has(StockColumn::kCount)) return 1;
    const std::string cell = Cell(row, StockColumn::kCount);
    int count = 0;
    const bool number = !cell.empty() && cell.size() <= 4 && std::all_of(cell.begin(), cell.end(), IsDigit);
    for (std::size_t i = 0; number && i < cell.size(); ++i) count = count * 10 + (cell[i] - '0');
    if (number) return count;
    Complain(row.line, Position(StockColumn::kCount),
             "'" + cell + "' is no count; write a number from 0 to " + std::to_string(kMostTubes));
    return std::nullopt;
  }

  // The marking on the glass wins: boxes are reused, and lists are written from boxes.
  bool SetType(StockRow& row) const {
    const std::string on_glass = words_.IsUnmarked(row.glass) ? "" : stock::TypeInMarking(row.glass, tubes_);
    const std::string in_list = words_.IsUnmarked(row.listed) ? "" : stock::TypeInMarking(row.listed, tubes_);
    const std::string on_box = words_.IsUnmarked(row.box) ? "" : stock::TypeInMarking(row.box, tubes_);
    // A marking that is no type at all (a maker's mark alone) tells nothing against the list.
    const bool glass_tells = !on_glass.empty() && (in_list.empty() || stock::IsKnownType(on_glass, tubes_));
    row.type = glass_tells ? on_glass : !in_list.empty() ? in_list : on_box;
    if (!on_glass.empty() && !glass_tells) {
      row.remarks.push_back("the glass says '" + row.glass + "', in which no type is known; taken by the list");
    }
    if (on_glass.empty() && !row.glass.empty()) row.remarks.emplace_back("the glass cannot be read");
    if (on_glass.empty() && in_list.empty() && !on_box.empty()) row.remarks.emplace_back("taken by its box alone");
    if (!in_list.empty() && in_list != row.type) row.remarks.push_back("listed as " + in_list + "; the glass counts");
    if (!on_box.empty() && on_box != row.type && stock::IsKnownType(on_box, tubes_)) {
      row.remarks.push_back("the box says " + on_box);
    }
    return !row.type.empty();
  }

  const std::string& source_;
  const StockWords& words_;
  const TubeTable& tubes_;
  std::size_t width_ = 0;  // columns of the first line
  std::array<std::optional<std::size_t>, kColumns> positions_;
};

}  // namespace

std::string_view Name(StockState state) {
  constexpr std::array<std::string_view, 4> kStates = {"good", "not stated", "unproven", "bad"};
  return kStates[static_cast<std::size_t>(state)];
}

Result<StockList> ParseStock(std::string_view text, const std::string& source, const StockWords& words,
                             const TubeTable& tubes) {
  if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
    return Fail(ErrorCode::kUsage, "the table is UTF-16; save it as CSV in UTF-8", source);
  }
  const CsvTable csv = ParseCsv(text, SeparatorOf(text));
  if (csv.rows.empty()) {
    return Fail(ErrorCode::kUsage,
                "the table is empty; write the columns' names in the first line, a row below for each type", source);
  }
  ListReader reader(source, words, tubes);
  if (const auto read = reader.ReadHeader(csv.rows.front()); !read) return tl::unexpected<Error>(read.error());
  for (const CsvFault& fault : csv.faults) {
    reader.Complain(fault.line, static_cast<std::size_t>(fault.column) - 1, fault.message);
  }
  for (std::size_t i = 1; i < csv.rows.size(); ++i) reader.ReadRow(csv.rows[i]);
  return std::move(reader.list);
}

}  // namespace benchleaf
