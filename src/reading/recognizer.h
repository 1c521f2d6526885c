// Tesseract behind plain values. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_RECOGNIZER_H_
#define BENCHLEAF_SRC_READING_RECOGNIZER_H_

#include "reading/token.h"

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <memory>
#include <string>
#include <vector>

namespace tesseract {
class TessBaseAPI;
}

namespace benchleaf {

// Not safe for use by several threads.
class Recognizer {
 public:
  // The model that Debian's tesseract-ocr-eng installs, for lettering of all kinds. Without dictionaries: what stands
  // on drawings is no language. Fails with kMissing when the language data is not installed.
  static Result<std::unique_ptr<Recognizer>> Create();
  ~Recognizer();
  Recognizer(const Recognizer&) = delete;
  Recognizer& operator=(const Recognizer&) = delete;

  // One line of upright text with a light border.
  std::vector<Token> ReadLine(const GreyImage& line);

  // Whatever text stands on a picture, in no order.
  std::vector<Token> ReadSparse(const GreyImage& picture);

  // "tesseract 5.3.0 eng".
  static std::string Version();

 private:
  explicit Recognizer(std::unique_ptr<tesseract::TessBaseAPI> engine);
  std::vector<Token> Read(const GreyImage& picture);
  std::unique_ptr<tesseract::TessBaseAPI> engine_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_RECOGNIZER_H_
