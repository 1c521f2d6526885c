// From a page's picture to its words. The only part of the program that knows how pages are read.

#ifndef BENCHLEAF_READING_PAGE_READER_H_
#define BENCHLEAF_READING_PAGE_READER_H_

#include "benchleaf/clean/page_steps.h"
#include "benchleaf/core/result.h"
#include "benchleaf/raster/page_source.h"
#include "benchleaf/reading/page_reading.h"

#include <filesystem>
#include <memory>
#include <string>

namespace benchleaf {

enum class ReadingMode {
  kFull,   // every step
  kPlain,  // only the whole page in one pass: for a page on which the full way crashed or ran out of time
};

// Names the readers, their versions, the model in `config` and the method; a page read under another fingerprint is
// read again. Fails with kIo when the model cannot be read.
Result<std::string> ReadingFingerprint(const std::filesystem::path& config);

// Reads pages, one after the other. Holds the reader's models; make one a process and use it again. Not safe for use
// by several threads.
class PageReader {
 public:
  // `config` is the folder with the project's data; `steps` are those of the full way that are done. Fails with
  // kMissing when a reader's model is not there.
  static Result<std::unique_ptr<PageReader>> Create(const std::filesystem::path& config, const PageSteps& steps = {});
  ~PageReader();
  PageReader(const PageReader&) = delete;
  PageReader& operator=(const PageReader&) = delete;

  // A page without text gives a reading without words; that is no failure.
  Result<PageReading> Read(const RasterPage& page, ReadingMode mode);

 private:
  class Impl;
  explicit PageReader(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_READING_PAGE_READER_H_
