#include "benchleaf/reading/page_reader.h"

#include "reading/layer_words.h"
#include "reading/lettering_reader.h"
#include "reading/line_reader.h"
#include "reading/orientation.h"
#include "reading/recognizer.h"
#include "reading/string_reading.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/core/fnv.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// Changed whenever a step of reading changes what is read.
constexpr const char* kMethod = "two-readers-19";

std::vector<Word> ReadWhole(const CleanPage& page, Recognizer& recognizer) {
  std::vector<Word> words;
  for (Token& token : recognizer.ReadSparse(page.grey)) {
    words.push_back({std::move(token.text), token.box, 0, token.confidence, WordOrigin::kPage, {}});
  }
  return words;
}

}  // namespace

Result<std::string> ReadingFingerprint(const std::filesystem::path& config) {
  Fnv model;
  if (Result<void> added = model.AddFile(LetteringReader::Model(config)); !added) {
    return tl::unexpected(std::move(added.error()));
  }
  return Recognizer::Version() + " lettering " + model.Hex() + " " + kMethod;
}

class PageReader::Impl {
 public:
  Impl(std::unique_ptr<LineReader> reader, const PageSteps& steps) : reader_(std::move(reader)), steps_(steps) {}

  PageReading Read(const RasterPage& raster, ReadingMode mode) {
    CleanPage page = MakeCleanPage(raster.image, raster.dpi, 0, steps_);
    PageReading reading;
    if (mode == ReadingMode::kPlain) {
      reading.words = ReadWhole(page, reader_->general());
    } else {
      const int orientation = FindOrientation(page, reader_->general());
      if (orientation != 0) {
        page = {};  // a fold-out must not be held twice
        page = MakeCleanPage(raster.image, raster.dpi, orientation, steps_);
      }
      reading.words = ReadStrings(page, *reader_);
    }
    reading.frame = page.frame;
    reading.measures = page.measures;
    AddLayerWords(raster.layer, reading);
    std::sort(reading.words.begin(), reading.words.end(),
              [](const Word& a, const Word& b) { return std::pair(a.box.y, a.box.x) < std::pair(b.box.y, b.box.x); });
    return reading;
  }

 private:
  std::unique_ptr<LineReader> reader_;
  PageSteps steps_;
};

PageReader::PageReader(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
PageReader::~PageReader() = default;

Result<std::unique_ptr<PageReader>> PageReader::Create(const std::filesystem::path& config, const PageSteps& steps) {
  Result<std::unique_ptr<LineReader>> reader = LineReader::Create(config, steps);
  if (!reader) {
    return tl::unexpected(std::move(reader.error()));
  }
  return std::unique_ptr<PageReader>(new PageReader(std::make_unique<Impl>(std::move(*reader), steps)));
}

Result<PageReading> PageReader::Read(const RasterPage& page, ReadingMode mode) {
  if (page.image.empty()) {
    return Fail(ErrorCode::kEmpty, "the page holds no picture");
  }
  return impl_->Read(page, mode);
}

}  // namespace benchleaf
