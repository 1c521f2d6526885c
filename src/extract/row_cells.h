// Where in the lines of a table its rows' designators stand.

#ifndef BENCHLEAF_SRC_EXTRACT_ROW_CELLS_H_
#define BENCHLEAF_SRC_EXTRACT_ROW_CELLS_H_

#include "extract/list_table.h"
#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::extract {

// Capital heights from the column's edge within which its cells begin.
inline constexpr double kDesignatorReach = 4;

// What a line needs to know of the row above it. The pointers are null where that has no designator.
struct RowAbove {
  const Designator* first = nullptr;
  const Designator* last = nullptr;
  bool goes_on = false;     // it may have another line, and this one is close to it
  bool wants_more = false;  // its designators end in a comma or dash
  bool own_row = false;     // the line has a part number of its own, as the row above has
};

class RowCells {
 public:
  // `table` must outlive this.
  RowCells(const ListTable& table, double cap, const Rules::Tables& tables);

  bool InColumn(const Piece& piece) const;

  // The line's designators, when they stand in the column for them.
  std::optional<DesignatorCell> Find(const Line& line, const RowAbove& above) const;

  // Where the designators' cells end at the latest, px; 0 when that is not known.
  int right() const;

  // The left edge at which most rows go on behind their designators, px.
  int description_left() const { return description_left_; }

 private:
  int DescriptionLeft() const;

  const ListTable& table_;
  const double cap_;
  const Rules::Tables& tables_;
  int description_left_ = 0;
};

// "17,21", its figures perhaps read as strokes.
bool IsNumberList(const std::string& text);

// What the readers saw of a cell's first designator, surest first: the part in front of a sign that joins another. A
// cell whose numbers rise was hardly misread, whatever the readers thought of it.
std::vector<Alternative> ReadingsOf(const std::vector<Piece>& pieces, const DesignatorCell& cell);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ROW_CELLS_H_
