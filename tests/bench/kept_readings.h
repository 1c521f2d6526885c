// Readings of pages kept on disk, so that rules can be tried again and again without reading anew.

#ifndef BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_
#define BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_

#include "benchleaf/reading/page_reading.h"

#include <filesystem>
#include <functional>
#include <string>

namespace benchleaf::bench {

class KeptReadings {
 public:
  // Keeps nothing when the folder's name is empty; makes the folder otherwise.
  explicit KeptReadings(const std::filesystem::path& folder);

  // What is kept under that name, or else what `read` gives, which is kept then. Nobody asks whether the page or the
  // way of reading has changed: take a new folder for that. Throws std::runtime_error for a file that is damaged or
  // cannot be written.
  PageReading Get(const std::string& name, const std::function<PageReading()>& read) const;

 private:
  std::filesystem::path folder_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_KEPT_READINGS_H_
