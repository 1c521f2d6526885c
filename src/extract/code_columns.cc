#include "extract/code_columns.h"

#include "extract/designator.h"
#include "extract/list_table.h"
#include "extract/part_number.h"
#include "extract/plain_text.h"
#include "extract/semiconductor.h"
#include "extract/tube_type.h"
#include "extract/value.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {
namespace {

constexpr double kColumnReach = 1.5;    // capital heights
constexpr double kCodeByPlace = 0.8;    // how sure a code is that only its column tells
constexpr std::size_t kShortest = 4;    // characters
constexpr std::size_t kMostPieces = 4;  // groups of one number

bool AllDigits(std::string_view text) { return std::all_of(text.begin(), text.end(), IsDigit); }

// A value, type or unit: things with a form of their own.
bool IsSomethingElse(const std::string& text, const Rules::Tables& tables) {
  if (ParseValue(text) || IsValueUnit(text) || IsSemiconductor(text)) {
    return true;
  }
  const auto tube = ParseTubeType(text, tables, TubeContext::kNone);
  return tube && tube->known;  // an unknown type may as well be a number
}

// Between groups a scan makes dashes of spaces.
std::string WithoutDashes(std::string text) {
  std::erase(text, '-');
  return text;
}

// The groups of a number: figures, or a few letters in front of figures ("4822 124 20391", "UHF 10").
bool AreGroups(const std::vector<Piece>& pieces, std::size_t from, std::size_t count) {
  constexpr std::size_t kMostLetters = 3;
  for (std::size_t i = from; i < from + count; ++i) {
    const std::string text = WithoutDashes(Trimmed(pieces[i].text));
    const bool letters = i == from && text.size() <= kMostLetters && std::all_of(text.begin(), text.end(), IsUpper);
    if (text.empty() || IsValueUnit(text) || !(AllDigits(text) || letters)) {
      return false;
    }
  }
  return true;
}

// The cell as a code, or nothing.
std::optional<std::string> Code(const std::vector<Piece>& pieces, std::size_t from, std::size_t count,
                                const Rules::Tables& tables) {
  constexpr std::size_t kFiguresAlone = 5;  // fewer are a quantity, an item or a value
  if (count > kMostPieces) {
    return std::nullopt;
  }
  const std::string text = Trimmed(Joined(pieces, from, count).text);
  const auto figures = static_cast<std::size_t>(std::count_if(text.begin(), text.end(), IsDigit));
  const bool letters = std::any_of(text.begin(), text.end(), IsUpper);
  const bool signs = std::all_of(text.begin(), text.end(), [](char c) { return IsUpper(c) || IsDigit(c) || c == '-'; });
  if (text.size() < kShortest || !signs || figures < (letters ? 2 : kFiguresAlone) || IsSomethingElse(text, tables) ||
      (count > 1 && !AreGroups(pieces, from, count))) {
    return std::nullopt;
  }
  return count > 1 ? WithoutDashes(text) : text;
}

template <class Each>
void ForCells(const RowLines& row, double cap, const Each& each) {
  for (std::size_t line = 0; line < row.size(); ++line) {
    const auto& pieces = row[line];
    for (std::size_t from = 0; from < pieces.size();) {
      std::size_t end = from + 1;
      while (end < pieces.size() && !BeginsColumn(pieces, end, cap)) {
        ++end;
      }
      each(line, from, end - from);
      from = end;
    }
  }
}

}  // namespace

CodeColumns::CodeColumns(const std::vector<const RowLines*>& rows, double cap, const Rules::Tables& tables)
    : cap_(cap), tables_(tables) {
  for (const RowLines* row : rows) {
    ForCells(*row, cap_, [&](std::size_t line, std::size_t from, std::size_t count) {
      const int left = (*row)[line][from].box.x;
      const std::size_t at = At(left);
      if (at == columns_.size()) {
        columns_.push_back({left});
      }
      ++(Code((*row)[line], from, count, tables_) ? columns_[at].codes : columns_[at].others);
    });
  }
  constexpr std::size_t kFewest = 3;
  std::erase_if(columns_, [](const Column& column) {
    return column.codes < kFewest || column.codes * 10 < (column.codes + column.others) * 7;
  });
}

std::size_t CodeColumns::At(int left) const {
  const auto found = std::find_if(columns_.begin(), columns_.end(), [&](const Column& column) {
    return std::abs(column.left - left) <= kColumnReach * cap_;
  });
  return static_cast<std::size_t>(found - columns_.begin());
}

std::vector<PartCell> CodeColumns::Find(const RowLines& row) const {
  std::vector<PartCell> cells;
  ForCells(row, cap_, [&](std::size_t line, std::size_t from, std::size_t count) {
    const auto& pieces = row[line];
    if (At(pieces[from].box.x) == columns_.size()) {
      return;
    }
    if (auto code = Code(pieces, from, count, tables_)) {
      const Piece joined = Joined(pieces, from, count);
      cells.push_back({std::move(*code), line, from, count, joined.box, joined.confidence * kCodeByPlace});
    }
  });
  return cells;
}

bool CodeColumns::InFullColumn(const PartCell& cell) const {
  std::size_t most = 0;
  for (const Column& column : columns_) {
    most = std::max(most, column.codes);
  }
  const std::size_t at = At(cell.box.x);
  return at < columns_.size() && columns_[at].codes * 10 >= most * 9;
}

}  // namespace benchleaf::extract
