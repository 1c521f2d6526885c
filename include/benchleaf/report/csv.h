// Comma-separated values (RFC 4180) that are safe to open in a spreadsheet.

#ifndef BENCHLEAF_REPORT_CSV_H_
#define BENCHLEAF_REPORT_CSV_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// The record with its CR LF. Fields that hold a comma, a quote or a line break are quoted, quotes doubled
// (RFC 4180, section 2).
//
// Fields come from scans, so a spreadsheet must not take one for a formula: a field that begins with = @ + - tab or CR
// gets an apostrophe before it (OWASP, "CSV Injection"), which spreadsheets show as text. A plain quantity such as -5V
// or +.047MFD stays as it is: a sign followed by digits, points, letters and % alone can call nothing.
std::string CsvRecord(const std::vector<std::string>& fields);

// One field, quoted and made safe where needed.
std::string CsvField(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_CSV_H_
