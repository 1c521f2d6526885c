// One table of config/: tab-separated, a header line, '#' comments.

#ifndef BENCHLEAF_CORE_TABLE_FILE_H_
#define BENCHLEAF_CORE_TABLE_FILE_H_

#include "benchleaf/core/result.h"

#include <cstddef>
#include <filesystem>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// The rows of a table. Columns are found by the name that the header gives them; columns that nobody asks for are
// allowed, so that a restorer may add notes.
class TableFile {
 public:
  // Fails with kMissing when the file cannot be opened, with kUsage when a wanted column is not in the header or a row
  // has another number of cells than the header. The message names line and column, the source the file.
  static Result<TableFile> Read(const std::filesystem::path& path, std::initializer_list<std::string_view> wanted);

  std::size_t size() const { return rows_.size(); }

  // REQUIRES: row < size(); `column` was wanted.
  const std::string& Cell(std::size_t row, std::string_view column) const;
  // The cell as a number from 0 to `most`, or an error that names its place.
  Result<double> Number(std::size_t row, std::string_view column, double most) const;
  // "yes" or "no", or an error that names its place.
  Result<bool> Truth(std::size_t row, std::string_view column) const;
  // An error about a cell.
  Error Complaint(std::size_t row, std::string_view column, const std::string& what) const;

 private:
  struct Row {
    int line = 0;  // counts from 1
    std::vector<std::string> cells;
  };

  std::size_t ColumnNamed(std::string_view column) const;

  std::filesystem::path path_;
  std::vector<std::string> header_;
  std::vector<Row> rows_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_TABLE_FILE_H_
