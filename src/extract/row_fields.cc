#include "extract/row_fields.h"

#include "extract/code_columns.h"
#include "extract/list_words.h"
#include "extract/part_column.h"
#include "extract/plain_text.h"
#include "extract/row_value.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string_view>

namespace benchleaf::extract {
namespace {

bool IsSmallNumber(std::string_view text) {
  return !text.empty() && text.size() <= 3 && text[0] != '0' && std::all_of(text.begin(), text.end(), IsDigit);
}

// Numbers that stand alone in their cell, one below the other.
struct NumberColumn {
  int left = 0;
  std::vector<int> numbers;
};

// Where the quantities stand, or -1: small numbers at one place in most rows, or where the titles say. Numbers that
// count upwards from row to row are item numbers.
int QuantityLeft(const TableRows& table, const std::vector<RowParts>& parts, double cap) {
  std::vector<NumberColumn> columns;
  for (std::size_t row = 0; row < table.rows.size(); ++row) {
    for (const auto& line : parts[row].LinesOf(table.rows[row])) {
      for (std::size_t i = 0; i < line.size(); ++i) {
        const bool alone = BeginsColumn(line, i, cap) && (i + 1 == line.size() || BeginsColumn(line, i + 1, cap));
        if (!alone || !IsSmallNumber(line[i].text)) {
          continue;
        }
        const auto near = std::find_if(columns.begin(), columns.end(), [&](const NumberColumn& column) {
          return std::abs(column.left - line[i].box.x) <= 2 * cap;
        });
        int number = 0;
        std::from_chars(line[i].text.data(), line[i].text.data() + line[i].text.size(), number);
        if (near == columns.end()) {
          columns.push_back({line[i].box.x, {number}});
        } else {
          near->numbers.push_back(number);
        }
      }
    }
  }
  for (const NumberColumn& column : columns) {
    const auto& numbers = column.numbers;
    const bool titled = table.quantity_left >= 0 && std::abs(column.left - table.quantity_left) <= 4 * cap;
    const auto small = std::count_if(numbers.begin(), numbers.end(), [](int number) { return number <= 20; });
    std::size_t rising = 0;
    for (std::size_t i = 1; i < numbers.size(); ++i) {
      rising += numbers[i] == numbers[i - 1] + 1 ? 1U : 0U;
    }
    const bool counts = numbers.size() > 2 && rising * 2 > numbers.size();
    const bool many = numbers.size() >= 3 && numbers.size() * 2 >= table.rows.size() &&
                      static_cast<std::size_t>(small) * 10 >= numbers.size() * 7;
    if (!counts && (titled || many)) {
      return column.left;
    }
  }
  return -1;
}

// A small number alone at the front of a row that has no designator is an item number, no part of the description.
bool IsItemNumber(const ListRow& row, const std::vector<Piece>& pieces, std::size_t line, std::size_t at, double cap) {
  return line == 0 && at == 0 && pieces.size() > 1 && IsSmallNumber(TrimmedView(pieces[0].text)) &&
         BeginsColumn(pieces, 1, cap) && (row.designators.empty() || pieces[0].box.x < row.designator_box.x);
}

// The piece of the row above whose place is nearest below this one's.
const Piece* Above(const Piece& ditto, const std::vector<Piece>& above) {
  const Piece* best = nullptr;
  int best_distance = 0;
  for (const Piece& piece : above) {
    const int distance = std::max({0, piece.box.x - ditto.box.right(), ditto.box.x - piece.box.right()});
    if (best == nullptr || distance < best_distance) {
      best = &piece;
      best_distance = distance;
    }
  }
  return best;
}

// A cell's pieces: everything from `at` on that stands close.
std::size_t CellEnd(const std::vector<Piece>& pieces, std::size_t at, double cap) {
  std::size_t end = at + 1;
  while (end < pieces.size() && !BeginsColumn(pieces, end, cap)) {
    ++end;
  }
  return end;
}

bool IsDitto(const std::vector<Piece>& line, std::size_t at, double cap, const Rules::Tables& tables) {
  return BeginsColumn(line, at, cap) && HasRole(ListWord(line[at].text), ListRole::kDitto, tables);
}

bool HasDitto(const RowLines& lines, double cap, const Rules::Tables& tables) {
  for (const auto& line : lines) {
    for (std::size_t i = 0; i < line.size(); ++i) {
      if (IsDitto(line, i, cap, tables)) {
        return true;
      }
    }
  }
  return false;
}

// The row's lines with signs of repetition replaced by the cells of the row above.
RowLines WithoutDittos(const RowLines& lines, const std::vector<Piece>& above, double cap,
                       const Rules::Tables& tables) {
  RowLines result;
  for (const auto& line : lines) {
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < line.size(); ++i) {
      const Piece* source = IsDitto(line, i, cap, tables) ? Above(line[i], above) : nullptr;
      if (source == nullptr) {
        pieces.push_back(line[i]);
        continue;
      }
      const auto at = static_cast<std::size_t>(source - above.data());
      std::size_t from = at;
      while (from > 0 && !BeginsColumn(above, from, cap)) {
        --from;
      }
      const std::size_t end = CellEnd(above, at, cap);
      for (std::size_t copy = from; copy < end; ++copy) {
        pieces.push_back(above[copy]);
        pieces.back().confidence = std::min(pieces.back().confidence, line[i].confidence);
      }
    }
    result.push_back(std::move(pieces));
  }
  return result;
}

std::string Tidy(std::string text) {
  constexpr std::string_view kLoose = " ,;:.-_*'\"|";
  const std::size_t end = text.find_last_not_of(" ,;:-_*|");
  text.erase(end == std::string::npos ? 0 : end + 1);
  std::size_t start = text.find_first_not_of(kLoose);
  if (start != std::string::npos && start > 0 && text[start - 1] == '.' && IsDigit(text[start])) {
    --start;  // .05
  }
  return start == std::string::npos ? std::string() : text.substr(start);
}

// Whether a row is for the next section of the part that the row above it has a section of: C1B below C1A.
bool IsNextSection(const ListRow& above, const ListRow& row) {
  if (above.designators.size() != 1 || row.designators.size() != 1) {
    return false;
  }
  const Designator& before = above.designators.front();
  const Designator& own = row.designators.front();
  return !before.suffix.empty() && before.letters == own.letters && before.number == own.number &&
         own.suffix.size() == 1 && own.suffix.front() == before.suffix.front() + 1;
}

// The row's own part number, taken out of the codes of the row: what the column of part numbers has, or the first code
// where a column of codes that is as full stands in front of it.
std::optional<PartCell> TakePart(std::optional<PartCell> found, const CodeColumns& columns,
                                 std::vector<PartCell>& codes) {
  const auto same = [&](const PartCell& code) {
    return found && code.line == found->line && code.from < found->from + found->count &&
           found->from < code.from + code.count;
  };
  const bool first_code =
      !codes.empty() && columns.InFullColumn(codes.front()) &&
      (!found || codes.front().box.x < found->box.x || (same(codes.front()) && codes.front().count > found->count));
  if (first_code) {
    found = codes.front();
  }
  std::erase_if(codes, same);
  return found;
}

}  // namespace

std::vector<RowParts> PartsOf(const TableRows& table, double cap, const Rules::Tables& tables) {
  std::vector<RowParts> all(table.rows.size());
  // Repetitions first, so that columns are counted on what they stand for.
  std::vector<const RowLines*> rows;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const RowLines& own = table.rows[i].lines;
    if (i > 0 && !rows.back()->empty() && HasDitto(own, cap, tables)) {
      all[i].repeated = WithoutDittos(own, rows.back()->front(), cap, tables);
    }
    rows.push_back(&all[i].LinesOf(table.rows[i]));
  }
  const PartColumn column(rows, cap, tables);
  const CodeColumns codes(rows, cap, tables);
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].others = codes.Find(*rows[i]);
    all[i].part = TakePart(column.Find(i), codes, all[i].others);
  }
  return all;
}

std::vector<RowFields> FieldsOf(const TableRows& table, const std::vector<RowParts>& parts, double cap) {
  const int quantity_left = QuantityLeft(table, parts, cap);
  std::vector<RowFields> all;
  for (std::size_t at = 0; at < table.rows.size(); ++at) {
    const ListRow& row = table.rows[at];
    const RowLines& lines = parts[at].LinesOf(row);
    const std::optional<PartCell>& part = parts[at].part;
    RowFields fields;
    fields.other_parts = parts[at].others;
    if (part) {
      fields.part_number = part->text;
      fields.part_box = part->box;
      fields.part_confidence = part->confidence;
    }
    std::vector<Piece> description;
    for (std::size_t line = 0; line < lines.size(); ++line) {
      const auto& pieces = lines[line];
      for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto holds = [&](const PartCell& cell) {
          return cell.line == line && i >= cell.from && i < cell.from + cell.count;
        };
        if ((part && holds(*part)) || std::any_of(fields.other_parts.begin(), fields.other_parts.end(), holds)) {
          continue;
        }
        const bool quantity = quantity_left >= 0 && fields.quantity.empty() && IsSmallNumber(pieces[i].text) &&
                              std::abs(pieces[i].box.x - quantity_left) <= 2 * cap;
        if (quantity) {
          fields.quantity = pieces[i].text;
        } else if (!IsItemNumber(row, pieces, line, i, cap)) {
          description.push_back(pieces[i]);
        }
      }
    }
    std::string text;
    for (const Piece& piece : description) {
      text += (text.empty() ? "" : " ") + piece.text;
    }
    fields.description = Tidy(text);
    if (fields.part_number.empty() && at > 0 && IsNextSection(table.rows[at - 1], row)) {
      fields.part_number = all.back().part_number;  // one can, one number
      fields.part_confidence = all.back().part_confidence;
    }
    fields.value = ValueOf(description, row.designators.empty() ? "" : row.designators.front().letters);
    all.push_back(std::move(fields));
  }
  return all;
}

}  // namespace benchleaf::extract
