// Two readers of one line, and what they say together. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_LINE_READER_H_
#define BENCHLEAF_SRC_READING_LINE_READER_H_

#include "reading/lettering_reader.h"
#include "reading/recognizer.h"
#include "reading/trust.h"

#include "benchleaf/clean/page_steps.h"
#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace benchleaf {

// Not safe for use by several threads.
class LineReader {
 public:
  // Fails with kMissing when a model is not there.
  static Result<std::unique_ptr<LineReader>> Create(const std::filesystem::path& config, const PageSteps& steps = {});

  // One line of upright text with a light border, cut from a string of that look. Nothing for ink that is no lettering.
  // Tokens of the two readers may claim one place with different texts; a token's confidence is the chance that its
  // text is right.
  std::vector<Token> Read(const GreyImage& line, const StringLook& look);

  // The reader for lettering of all kinds.
  Recognizer& general() { return *general_; }

 private:
  LineReader(std::unique_ptr<Recognizer> general, std::unique_ptr<LetteringReader> lettering, const PageSteps& steps);
  std::unique_ptr<Recognizer> general_;
  std::unique_ptr<LetteringReader> lettering_;
  PageSteps steps_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_LINE_READER_H_
