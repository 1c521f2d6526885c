#include "benchleaf/core/csv_table.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

class CsvParser {
 public:
  CsvParser(std::string_view text, char separator) : text_(text), separator_(separator) {}

  CsvTable Parse() {
    while (at_ < text_.size()) {
      ParseRecord();
    }
    return std::move(table_);
  }

 private:
  bool AtLineEnd() const { return at_ >= text_.size() || text_[at_] == '\n' || text_[at_] == '\r'; }

  void TakeLineEnd() {
    if (at_ >= text_.size()) {
      return;
    }
    at_ += text_.substr(at_).starts_with("\r\n") ? 2U : 1U;
    ++line_;
  }

  void SkipLine() {
    while (!AtLineEnd()) {
      ++at_;
    }
    TakeLineEnd();
  }

  void ParseRecord() {
    CsvRow row{line_, {}};
    for (;;) {
      const int column = static_cast<int>(row.cells.size()) + 1;
      std::string cell;
      if (at_ < text_.size() && text_[at_] == '"') {
        const std::size_t begin = at_;
        const int begin_line = line_;
        if (!TakeQuoted(cell)) {
          at_ = begin;
          line_ = begin_line;
          table_.faults.push_back({line_, column, "a quote is opened and never closed"});
          SkipLine();
          return;
        }
        if (!AtLineEnd() && text_[at_] != separator_) {
          table_.faults.push_back({line_, column, "text follows a closing quote; write a quote within quotes twice"});
          SkipLine();
          return;
        }
      } else {
        while (!AtLineEnd() && text_[at_] != separator_) {
          cell += text_[at_++];
        }
      }
      row.cells.push_back(std::move(cell));
      if (AtLineEnd()) {
        TakeLineEnd();
        break;
      }
      ++at_;  // the separator
    }
    if (row.cells.size() > 1 || !row.cells.front().empty()) {
      table_.rows.push_back(std::move(row));
    }
  }

  // Takes a quoted cell with its quotes. Gives false when the text ends before the closing quote.
  bool TakeQuoted(std::string& cell) {
    ++at_;
    while (at_ < text_.size()) {
      if (text_[at_] == '"') {
        if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
          cell += '"';
          at_ += 2;
          continue;
        }
        ++at_;
        return true;
      }
      if (AtLineEnd()) {
        cell += '\n';
        TakeLineEnd();
        continue;
      }
      cell += text_[at_++];
    }
    return false;
  }

  std::string_view text_;
  char separator_;
  std::size_t at_ = 0;
  int line_ = 1;
  CsvTable table_;
};

}  // namespace

CsvTable ParseCsv(std::string_view text, char separator) {
  if (text.starts_with(kByteOrderMark)) {
    text.remove_prefix(kByteOrderMark.size());
  }
  return CsvParser(text, separator).Parse();
}

std::string TrimmedCell(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\n\r";
  const std::size_t begin = text.find_first_not_of(kBlanks);
  return begin == std::string_view::npos ? std::string()
                                         : std::string(text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1));
}

}  // namespace benchleaf
