// Plain tables for a terminal.

#ifndef BENCHLEAF_REPORT_TABLE_H_
#define BENCHLEAF_REPORT_TABLE_H_

#include <string>
#include <vector>

namespace benchleaf {

// How text is to look where it goes.
struct Look {
  bool color = false;  // escape sequences for bold and colours may be used
  int columns = 0;     // width of the terminal; 0: lines may be as long as they need
};

enum class Paint { kPlain, kStrong, kFaint, kWarning };

// The text between the escape sequences of the paint (ECMA-48, SGR), or as it is when the look has no colour.
std::string Painted(const std::string& text, Paint paint, const Look& look);

// One field: a line of text, or several. Foreign text is cleaned (CleanText) by the table.
struct Cell {
  std::vector<std::string> lines;
  Paint paint = Paint::kPlain;

  Cell(std::string text, Paint p = Paint::kPlain)  // NOLINT(google-explicit-constructor)
      : lines{std::move(text)}, paint(p) {}
  Cell(const char* text, Paint p = Paint::kPlain)  // NOLINT(google-explicit-constructor)
      : lines{text}, paint(p) {}
  Cell(std::vector<std::string> l, Paint p = Paint::kPlain)  // NOLINT(google-explicit-constructor)
      : lines(std::move(l)), paint(p) {}
};

struct Column {
  enum class Align { kLeft, kRight };
  enum class Fit {
    kWhole,  // always as wide as its widest field
    kWrap,   // broken into lines of 60 columns, or fewer when the terminal is too narrow
  };
  std::string title;
  Align align = Align::kLeft;
  Fit fit = Fit::kWhole;
};

// Collects rows, then gives them as text: a line of titles, a line of dashes, the rows; two spaces between columns and
// none at the end of a line. A column in which every field is empty is left out. Nothing is ever cut off: what does
// not fit the terminal is wrapped where columns allow it, and else makes lines longer than the terminal.
class Table {
 public:
  explicit Table(std::vector<Column> columns);

  // REQUIRES: as many cells as there are columns.
  void Add(std::vector<Cell> row);

  bool empty() const { return rows_.empty(); }

  // Every line ends in a newline. A table without rows gives no text.
  std::string Render(const Look& look) const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<Cell>> rows_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_TABLE_H_
