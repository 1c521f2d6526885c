#include "library/library_table.h"

#include "library/natural_order.h"

#include "benchleaf/core/csv_table.h"
#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

enum Column { kFile, kMaker, kModel, kVolume, kTitle, kColumns };
constexpr std::array<std::string_view, kColumns> kColumnNames = {"file", "maker", "model", "volume", "title"};

// The path without "./" and doubled or closing '/'; nothing when it leaves the library.
std::optional<std::string> TidyPath(std::string_view cell) {
  if (cell.starts_with('/')) {
    return std::nullopt;
  }
  std::string path;
  while (!cell.empty()) {
    const std::size_t end = std::min(cell.find('/'), cell.size());
    const std::string_view part = cell.substr(0, end);
    cell.remove_prefix(std::min(end + 1, cell.size()));
    if (part == "..") {
      return std::nullopt;
    }
    if (!part.empty() && part != ".") {
      path += path.empty() ? "" : "/";
      path += part;
    }
  }
  return path;
}

std::optional<int> VolumeNumber(std::string_view cell) {
  constexpr std::size_t kMostDigits = 3;
  if (cell.size() > kMostDigits ||
      !std::all_of(cell.begin(), cell.end(), [](char c) { return c >= '0' && c <= '9'; })) {
    return std::nullopt;
  }
  int value = 0;
  for (const char c : cell) {
    value = value * 10 + (c - '0');
  }
  return value == 0 ? std::nullopt : std::optional(value);
}

class TableReader {
 public:
  TableReader(const std::function<PathUse(const std::string&)>& use, std::vector<Error>& problems)
      : use_(use), problems_(problems) {}

  // Finds the columns. Gives false when there is none named "file".
  bool ReadHeader(const CsvRow& row) {
    width_ = row.cells.size();
    for (std::size_t i = 0; i < width_; ++i) {
      const std::string name = LowerAscii(TrimmedCell(row.cells[i]));
      const auto* const known = std::find(kColumnNames.begin(), kColumnNames.end(), name);
      if (known == kColumnNames.end()) {
        if (!name.empty()) {
          Complain(row.line, i, "is not known; the columns are file, maker, model, volume and title");
        }
        continue;
      }
      auto& position = positions_[static_cast<std::size_t>(known - kColumnNames.begin())];
      if (position) {
        Complain(row.line, i, "stands twice; the first one counts");
      } else {
        position = i;
        names_[i] = *known;
      }
    }
    if (!positions_[kFile]) {
      problems_.push_back({ErrorCode::kUsage,
                           "line " + std::to_string(row.line) +
                               ": no column is named file, so no row can be used; write the columns' names in the "
                               "first line, with commas between",
                           std::string(kLibraryTableName), 0});
    }
    return positions_[kFile].has_value();
  }

  void ReadRow(const CsvRow& row, std::map<std::string, StatedFacts>& rows) {
    if (std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& c) { return TrimmedCell(c).empty(); })) {
      return;
    }
    if (row.cells.size() != width_) {
      const bool longer = row.cells.size() > width_;
      Complain(row.line, std::min(row.cells.size(), width_),
               "the row has " + std::to_string(row.cells.size()) + " columns, the first line " +
                   std::to_string(width_) + (longer ? "; put a text that holds a comma in quotes" : ""));
      if (longer) {
        return;  // a comma too many shifts the cells behind it: none can be trusted
      }
    }
    const std::string cell = Cell(row, kFile);
    const auto path = TidyPath(cell);
    if (cell.empty() || !path) {
      Complain(row.line, *positions_[kFile],
               cell.empty() ? "is empty; name a file or folder of the library"
                            : "'" + cell + "' is not in the library; write the path from the library's folder");
      return;
    }
    const PathUse found = use_(*path);
    if (found == PathUse::kMissing || found == PathUse::kNoScan) {
      Complain(
          row.line, *positions_[kFile],
          "'" + cell + "' " + (found == PathUse::kMissing ? "is not in the library" : "is no scan and holds none"));
      return;
    }
    StatedFacts facts;
    facts.maker = Text(row, kMaker);
    facts.model = Text(row, kModel);
    facts.title = Text(row, kTitle);
    const std::string volume = Cell(row, kVolume);
    if (!volume.empty()) {
      if (const auto number = VolumeNumber(volume)) {
        facts.volume = *number;
      } else {
        Complain(row.line, *positions_[kVolume], "'" + volume + "' is no volume number; write 1 to 999");
      }
    }
    if (!rows.emplace(*path, std::move(facts)).second) {
      Complain(row.line, *positions_[kFile], "'" + cell + "' stands in an earlier line already, which counts");
    }
  }

  void Complain(int line, std::size_t column, const std::string& what) {
    std::string message = "line " + std::to_string(line) + ", column " + std::to_string(column + 1);
    if (const auto name = names_.find(column); name != names_.end()) {
      message += " (" + std::string(name->second) + ")";
    }
    problems_.push_back({ErrorCode::kUsage, message + ": " + what, std::string(kLibraryTableName), 0});
  }

 private:
  std::string Cell(const CsvRow& row, Column column) const {
    const auto position = positions_[column];
    return position && *position < row.cells.size() ? TrimmedCell(row.cells[*position]) : std::string();
  }

  // A cell that will be shown to people; empty, with a problem, when it is not UTF-8.
  std::string Text(const CsvRow& row, Column column) {
    std::string text = Cell(row, column);
    if (!IsUtf8(text)) {
      Complain(row.line, *positions_[column], "is not UTF-8; save the table as UTF-8");
      return {};
    }
    std::replace_if(
        text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, ' ');
    return text;
  }

  const std::function<PathUse(const std::string&)>& use_;
  std::vector<Error>& problems_;
  std::size_t width_ = 0;  // columns of the first line
  std::array<std::optional<std::size_t>, kColumns> positions_;
  std::map<std::size_t, std::string_view> names_;  // of the known columns, by position
};

void Override(StatedFacts& facts, const StatedFacts& with) {
  const auto take = [](std::string& text, const std::string& other) {
    if (!other.empty()) {
      text = other;
    }
  };
  take(facts.maker, with.maker);
  take(facts.model, with.model);
  take(facts.title, with.title);
  facts.volume = with.volume > 0 ? with.volume : facts.volume;
}

}  // namespace

LibraryTable LibraryTable::Parse(std::string_view text, const std::function<PathUse(const std::string&)>& use,
                                 std::vector<Error>& problems) {
  LibraryTable table;
  const CsvTable csv = ParseCsv(text);
  TableReader reader(use, problems);
  const bool usable = !csv.rows.empty() && reader.ReadHeader(csv.rows.front());
  for (const CsvFault& fault : csv.faults) {
    reader.Complain(fault.line, static_cast<std::size_t>(fault.column) - 1, fault.message);
  }
  for (std::size_t i = 1; usable && i < csv.rows.size(); ++i) {
    reader.ReadRow(csv.rows[i], table.rows_);
  }
  return table;
}

StatedFacts LibraryTable::For(const std::string& path) const {
  StatedFacts facts;
  const auto apply = [&](const std::string& prefix) {
    if (const auto row = rows_.find(prefix); row != rows_.end()) {
      Override(facts, row->second);
    }
  };
  apply("");
  for (std::size_t slash = path.find('/'); slash != std::string::npos; slash = path.find('/', slash + 1)) {
    apply(path.substr(0, slash));
  }
  apply(path);
  return facts;
}

}  // namespace benchleaf
