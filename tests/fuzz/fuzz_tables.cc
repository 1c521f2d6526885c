// Tables that a restorer writes: library.csv, tubes on hand, and the TSV of config/.

#include "fuzz/fuzz_input.h"
#include "library/library_table.h"
#include "places/places.h"
#include "tubes/shipped_table.h"

#include "benchleaf/core/csv_table.h"
#include "benchleaf/core/table_file.h"
#include "benchleaf/stock/stock_list.h"

#include <sys/mman.h>
#include <unistd.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  const std::string_view text = Bytes(data, size);
  for (const char separator : {',', ';', '\t'}) {
    for (const CsvRow& row : ParseCsv(text, separator).rows) {
      Promise(row.line > 0 && !row.cells.empty());
    }
  }
  std::vector<Error> problems;
  LibraryTable::Parse(
      text, [](const std::string&) { return PathUse::kScan; }, problems)
      .For("a/b.pdf");
  static const StockWords words = *StockWords::Load({SourceFolder() / "config/stock-words.tsv"});
  if (const auto list = ParseStock(text, "stock.csv", words, ShippedTubes())) {
    for (const StockRow& row : list->rows) {
      Promise(row.count >= 1 && !row.type.empty());
    }
  }
  const int file = ::memfd_create("table", MFD_CLOEXEC);
  Promise(::write(file, data, size) == static_cast<ssize_t>(size));
  if (const auto table = TableFile::Read("/proc/self/fd/" + std::to_string(file), {"type", "source"})) {
    for (std::size_t row = 0; row < table->size(); ++row) {
      table->Number(row, "type", 1);
    }
  }
  ::close(file);
  return 0;
}
