// Readings of pages kept in files, so that what works on words can be measured again without reading again.

#ifndef BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_
#define BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_

#include "scan-maker/made_page.h"

#include "benchleaf/reading/page_reader.h"
#include "benchleaf/reading/page_reading.h"

#include <filesystem>
#include <memory>
#include <string>

namespace benchleaf::bench {

class KeptReadings {
 public:
  // An empty folder keeps nothing; the folder is made when it is missing.
  explicit KeptReadings(std::filesystem::path folder);

  // The reading kept under that name, else one made now. Whoever changes the reader must empty the folder. Throws
  // std::runtime_error when the page cannot be read, or the file cannot be written or is damaged.
  PageReading Read(const scanmaker::ScannedPage& page, const std::string& name);

 private:
  PageReading ReadNow(const scanmaker::ScannedPage& page);

  std::filesystem::path folder_;
  std::unique_ptr<PageReader> reader_;  // made at the first page that is not kept
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_
