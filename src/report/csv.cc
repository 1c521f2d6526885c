#include "benchleaf/report/csv.h"

#include <algorithm>

namespace benchleaf {
namespace {

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

bool IsQuantity(std::string_view text) {
  if (text.empty() || !(IsDigit(text.front()) || text.front() == '.')) return false;
  return std::all_of(text.begin(), text.end(), [](char c) {
    return IsDigit(c) || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '.' || c == '%';
  });
}

bool LooksLikeFormula(std::string_view text) {
  if (text.empty()) return false;
  switch (text.front()) {
    case '=':
    case '@':
    case '\t':
    case '\r':
      return true;
    case '+':
    case '-':
      return !IsQuantity(text.substr(1));
    default:
      return false;
  }
}

}  // namespace

std::string CsvField(std::string_view text) {
  std::string safe;
  if (LooksLikeFormula(text)) safe += '\'';
  safe += text;
  if (safe.find_first_of(",\"\r\n") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string CsvRecord(const std::vector<std::string>& fields) {
  std::string record;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) record += ',';
    record += CsvField(fields[i]);
  }
  return record + "\r\n";
}

}  // namespace benchleaf
