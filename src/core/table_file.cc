#include "benchleaf/core/table_file.h"

#include <algorithm>
#include <charconv>
#include <fstream>

namespace benchleaf {
namespace {

std::vector<std::string> Cells(const std::string& line) {
  std::vector<std::string> cells;
  std::size_t from = 0;
  while (true) {
    const std::size_t tab = line.find('\t', from);
    cells.push_back(line.substr(from, tab == std::string::npos ? tab : tab - from));
    if (tab == std::string::npos) {
      return cells;
    }
    from = tab + 1;
  }
}

}  // namespace

Result<TableFile> TableFile::Read(const std::filesystem::path& path, std::initializer_list<std::string_view> wanted) {
  std::ifstream in(path);
  if (!in) {
    return Fail(ErrorCode::kMissing, "this table of the project's data cannot be opened; give the folder that holds it",
                path.string());
  }
  TableFile table;
  table.path_ = path;
  std::string line;
  for (int number = 1; std::getline(in, line); ++number) {
    if (!line.empty() && line.back() == '\r') {
      line.pop_back();  // saved by an editor that ends lines in CR LF
    }
    if (line.empty() || line.front() == '#') {
      continue;
    }
    std::vector<std::string> cells = Cells(line);
    const std::string place = "line " + std::to_string(number);
    if (table.header_.empty()) {
      table.header_ = std::move(cells);
      for (const std::string_view column : wanted) {
        if (std::find(table.header_.begin(), table.header_.end(), column) == table.header_.end()) {
          return Fail(ErrorCode::kUsage, place + ": the header has no column '" + std::string(column) + "'; add it",
                      path.string());
        }
      }
    } else if (cells.size() != table.header_.size()) {
      return Fail(ErrorCode::kUsage,
                  place + ", column " + std::to_string(std::min(cells.size(), table.header_.size()) + 1) + ": " +
                      std::to_string(cells.size()) + " cells where the header has " +
                      std::to_string(table.header_.size()) + "; separate cells by one tab",
                  path.string());
    } else {
      table.rows_.push_back({number, std::move(cells)});
    }
  }
  if (table.header_.empty()) {
    return Fail(ErrorCode::kUsage, "line 1: the table has no header line; write the columns' names, tab-separated",
                path.string());
  }
  return table;
}

std::size_t TableFile::ColumnNamed(std::string_view column) const {
  return static_cast<std::size_t>(std::find(header_.begin(), header_.end(), column) - header_.begin());
}

const std::string& TableFile::Cell(std::size_t row, std::string_view column) const {
  return rows_.at(row).cells.at(ColumnNamed(column));
}

Result<double> TableFile::Number(std::size_t row, std::string_view column, double most) const {
  const std::string& cell = Cell(row, column);
  double number = -1;
  const auto [end, problem] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
  if (problem != std::errc() || end != cell.data() + cell.size() || !(number >= 0 && number <= most)) {
    return tl::unexpected<Error>(
        Complaint(row, column, "write a number from 0 to " + std::to_string(static_cast<int>(most))));
  }
  return number;
}

Result<bool> TableFile::Truth(std::size_t row, std::string_view column) const {
  const std::string& cell = Cell(row, column);
  if (cell != "yes" && cell != "no") {
    return tl::unexpected<Error>(Complaint(row, column, "write 'yes' or 'no'"));
  }
  return cell == "yes";
}

Error TableFile::Complaint(std::size_t row, std::string_view column, const std::string& what) const {
  return Error{ErrorCode::kUsage,
               "line " + std::to_string(rows_.at(row).line) + ", column '" + std::string(column) + "': '" +
                   Cell(row, column) + "' cannot be understood; " + what,
               path_.string(), 0};
}

}  // namespace benchleaf
