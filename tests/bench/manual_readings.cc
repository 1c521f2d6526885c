#include "bench/manual_readings.h"

#include "bench/printed_reading.h"

#include <cstddef>
#include <string>
#include <utility>

namespace benchleaf::bench {

ReadManual ReadPages(const MadeManual& made, scanmaker::Grade grade, BenchleafReader& reader,
                     const KeptReadings& kept) {
  ReadManual manual;
  for (std::size_t i = 0; i < made.pages.size(); ++i) {
    scanmaker::ScannedPage page = scanmaker::DegradeMade(made.pages[i], grade, made.seed);
    PageRecord record;
    record.reading = kept.Get(std::string(scanmaker::Name(grade)) + "-" + made.name + "-" + std::to_string(i),
                              [&] { return reader.Read(page); });
    page.truth.file = made.name;
    manual.truth.push_back(std::move(page.truth));
    manual.pages.push_back(std::move(record));
  }
  return manual;
}

ReadManual PrintedPages(const MadeManual& made) {
  ReadManual manual;
  for (const scanmaker::MadePage& page : made.pages) {
    PageRecord record;
    record.reading = ReadingAsPrinted(page);
    manual.truth.push_back(scanmaker::DegradeMade(page, scanmaker::Grade::kClean, made.seed).truth);
    manual.truth.back().file = made.name;
    manual.pages.push_back(std::move(record));
  }
  return manual;
}

}  // namespace benchleaf::bench
