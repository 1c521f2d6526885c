#include "benchleaf/report/table.h"

#include "benchleaf/report/text.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace {

constexpr int kGap = 2;             // columns between two fields
constexpr int kNarrowestWrap = 10;  // a wrapped column is never made narrower
constexpr int kWidestWrap = 60;     // where no width is set, a wrapped column is only wider for a single word

std::string_view Sgr(Paint paint) {
  switch (paint) {
    case Paint::kStrong:
      return "\x1b[1m";
    case Paint::kFaint:
      return "\x1b[2m";
    case Paint::kWarning:
      return "\x1b[33m";
    case Paint::kPlain:
      break;
  }
  return "";
}

bool IsEmpty(const Cell& cell) {
  return std::all_of(cell.lines.begin(), cell.lines.end(), [](const std::string& line) { return line.empty(); });
}

std::vector<std::string> Fitted(const Cell& cell, int width) {
  std::vector<std::string> lines;
  for (const std::string& line : cell.lines) {
    if (DisplayWidth(line) <= width) {
      lines.push_back(line);
      continue;
    }
    for (std::string& part : Wrapped(line, width)) lines.push_back(std::move(part));
  }
  return lines;
}

// Takes columns from the widest wrapping column, again and again, until the table fits or none can give more.
void Shrink(const std::vector<Column>& columns, const std::vector<std::size_t>& shown, int available,
            std::vector<int>& widths) {
  int total = kGap * (static_cast<int>(shown.size()) - 1);
  for (const std::size_t i : shown) total += widths[i];
  while (total > available) {
    int* widest = nullptr;
    for (const std::size_t i : shown) {
      const bool may_give =
          columns[i].fit == Column::Fit::kWrap && widths[i] > std::max(kNarrowestWrap, DisplayWidth(columns[i].title));
      if (may_give && (widest == nullptr || widths[i] > *widest)) widest = &widths[i];
    }
    if (widest == nullptr) return;
    --*widest;
    --total;
  }
}

int LongestWord(std::string_view line) {
  int longest = 0;
  while (!line.empty()) {
    const std::size_t space = std::min(line.find(' '), line.size());
    longest = std::max(longest, DisplayWidth(line.substr(0, space)));
    line.remove_prefix(std::min(space + 1, line.size()));
  }
  return longest;
}

}  // namespace

std::string Painted(const std::string& text, Paint paint, const Look& look) {
  if (!look.color || paint == Paint::kPlain || text.empty()) return text;
  return std::string(Sgr(paint)) + text + "\x1b[0m";
}

Table::Table(std::vector<Column> columns) : columns_(std::move(columns)) {}

void Table::Add(std::vector<Cell> row) {
  assert(row.size() == columns_.size());
  for (Cell& cell : row) {
    for (std::string& line : cell.lines) line = CleanText(line);
  }
  rows_.push_back(std::move(row));
}

std::string Table::Render(const Look& look) const {
  if (rows_.empty()) return {};
  std::vector<std::size_t> shown;
  std::vector<int> widths(columns_.size(), 0);
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (std::all_of(rows_.begin(), rows_.end(), [i](const auto& row) { return IsEmpty(row[i]); })) continue;
    shown.push_back(i);
    widths[i] = DisplayWidth(columns_[i].title);
    const bool may_wrap = columns_[i].fit == Column::Fit::kWrap;
    for (const auto& row : rows_) {
      for (const std::string& line : row[i].lines) {
        const int whole = DisplayWidth(line);
        widths[i] = std::max(widths[i], may_wrap ? std::min(whole, std::max(kWidestWrap, LongestWord(line))) : whole);
      }
    }
  }
  if (look.columns > 0) Shrink(columns_, shown, look.columns, widths);

  std::string text;
  const auto add_row = [&](const std::vector<Cell>& row) {
    std::vector<std::vector<std::string>> fields(columns_.size());
    std::size_t height = 0;
    for (const std::size_t i : shown) {
      fields[i] = Fitted(row[i], widths[i]);
      height = std::max(height, fields[i].size());
    }
    for (std::size_t line = 0; line < height; ++line) {
      int owed = 0;  // spaces before the next text; never written at the end of a line
      for (const std::size_t i : shown) {
        const std::string field = line < fields[i].size() ? fields[i][line] : std::string();
        const int rest = widths[i] - DisplayWidth(field);
        const bool right = columns_[i].align == Column::Align::kRight;
        if (right) owed += rest;
        if (!field.empty()) {
          text.append(static_cast<std::size_t>(owed), ' ');
          text += Painted(field, row[i].paint, look);
          owed = 0;
        }
        owed += kGap + (right ? 0 : rest);
      }
      text += '\n';
    }
  };

  std::vector<Cell> titles;
  std::vector<Cell> dashes;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    titles.emplace_back(columns_[i].title, Paint::kStrong);
    dashes.emplace_back(std::string(static_cast<std::size_t>(widths[i]), '-'), Paint::kFaint);
  }
  add_row(titles);
  add_row(dashes);
  for (const auto& row : rows_) add_row(row);
  return text;
}

}  // namespace benchleaf
