#include "bench/benchleaf_reader.h"

#include "bench/one_thread.h"
#include "places/places.h"

#include "benchleaf/extract/extract.h"

#include <stdexcept>
#include <string>
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

BenchleafReader::BenchleafReader(const PageSteps& steps)
    : reader_(OrThrow(PageReader::Create(SourceFolder() / "config", steps))),
      rules_(OrThrow(Rules::Load(SourceFolder() / "config"))) {}

PageSeen BenchleafReader::See(const scanmaker::ScannedPage& page) {
  const Stopwatch watch;
  PageSeen seen = Extract(Read(page));
  seen.seconds = watch.Seconds();
  return seen;
}

PageReading BenchleafReader::Read(const scanmaker::ScannedPage& page) {
  return OrThrow(reader_->Read({page.image, page.dpi, {}}, ReadingMode::kFull));
}

PageSeen BenchleafReader::Extract(const PageReading& reading) const {
  PageSeen seen;
  ListState state;
  const std::vector<Sighting> sightings = ExtractSightings(reading, *rules_);
  seen.entries = ExtractEntries(reading, *rules_, state);
  for (const Word& word : reading.words)
    seen.words.push_back({word.text, ToScan(reading.frame, word.box), word.confidence});
  for (const Sighting& sighting : sightings) {
    seen.terms[std::string(Name(sighting.kind))].push_back({sighting.text, sighting.box, sighting.confidence});
  }
  return seen;
}

}  // namespace benchleaf::bench
