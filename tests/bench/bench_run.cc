#include "bench/bench_run.h"

#include "benchleaf/extract/extract.h"

#include <unistd.h>

#include <cstdlib>
#include <stdexcept>
#include <string_view>
#include <utility>

namespace benchleaf::bench {
namespace {

template <class T>
T OrThrow(Result<T> result) {
  if (!result) {
    throw std::runtime_error(result.error().ToString());
  }
  return std::move(*result);
}

}  // namespace

void KeepToOneThread(char** argv) {
  const char* limit = std::getenv("OMP_THREAD_LIMIT");
  if (limit != nullptr && std::string_view(limit) == "1") {
    return;
  }
  setenv("OMP_THREAD_LIMIT", "1", 1);
  execv("/proc/self/exe", argv);
  throw std::runtime_error("cannot start anew with OMP_THREAD_LIMIT=1: set it in the shell");
}

Benchleaf::Benchleaf()
    : reader_(OrThrow(PageReader::Create(BENCHLEAF_SOURCE_DIR "/config"))),
      rules_(OrThrow(Rules::Load(BENCHLEAF_SOURCE_DIR "/config"))) {}

PageReading Benchleaf::Read(const scanmaker::ScannedPage& page) {
  return OrThrow(reader_->Read(RasterPage{page.image, page.dpi, {}}, ReadingMode::kFull));
}

PageSeen Benchleaf::See(const scanmaker::ScannedPage& page) {
  const Stopwatch watch;
  const PageReading reading = Read(page);
  const std::vector<Sighting> sightings = ExtractSightings(reading, *rules_);
  PageSeen seen;
  seen.seconds = watch.Seconds();
  for (const Word& word : reading.words) seen.words.push_back({word.text, ToScan(reading.frame, word.box)});
  for (const Sighting& sighting : sightings) {
    if (sighting.kind == TermKind::kDesignator) {
      seen.designators.push_back({sighting.text, sighting.box});
    }
  }
  return seen;
}

}  // namespace benchleaf::bench
