// Where a parts list has its part numbers, and what they look like there.

#ifndef BENCHLEAF_SRC_EXTRACT_PART_COLUMN_H_
#define BENCHLEAF_SRC_EXTRACT_PART_COLUMN_H_

#include "extract/list_rows.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::extract {

// A part number in a row, and the pieces it is made of.
struct PartCell {
  std::string text;  // canonical
  std::size_t line = 0;
  std::size_t from = 0;
  std::size_t count = 0;
  Box box;
  double confidence = 0;
};

// Learns from all rows of a table, then finds each row's part number: a number that fits a known form at the usual
// place first, then one elsewhere, then whatever stands at the usual place and can be put right to look like the
// others.
class PartColumn {
 public:
  // The rows must outlive this.
  PartColumn(const std::vector<const RowLines*>& rows, double cap, const Rules::Tables& tables);

  // That of a row, by its number.
  std::optional<PartCell> Find(std::size_t row) const;

 private:
  struct Match {
    PartCell cell;
    double sure = 0;
  };

  void CountLostDashes();
  std::vector<Match> Matches(const RowLines& row) const;
  bool AtUsualPlace(const Box& box) const;
  std::string PutRight(const std::string& text) const;
  std::size_t CountOf(const std::string& shape) const;
  std::optional<PartCell> Spoiled(const RowLines& row) const;

  const std::vector<const RowLines*>& rows_;
  const double cap_;
  const Rules::Tables& tables_;
  std::vector<std::vector<Match>> matches_;  // by row
  int left_ = -1;                            // px, -1 when no place is usual
  std::size_t matched_ = 0;
  std::map<std::string, std::size_t> shapes_;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PART_COLUMN_H_
