// Tesseract behind plain values. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_RECOGNIZER_H_
#define BENCHLEAF_SRC_READING_RECOGNIZER_H_

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace tesseract {
class TessBaseAPI;
}

namespace benchleaf {

// A word as the recognizer gives it.
struct Token {
  std::string text;       // UTF-8
  Box box;                // px of the image that was read
  double confidence = 0;  // 0 to 1
};

// What the model for drawings reads scraps of symbols and wires as.
inline constexpr const char* kNoText = "~";

// Holds one model. Not safe for use by several threads.
class Recognizer {
 public:
  // The model that Debian's tesseract-ocr-eng installs, for lettering of all kinds. Without dictionaries: what stands
  // on drawings is no language. Fails with kMissing when the language data is not installed.
  static Result<std::unique_ptr<Recognizer>> CreateGeneral();
  // Our own model for the lettering of drawings, `config`/lettering.traineddata. It reads ink that is no lettering as
  // kNoText. Fails with kMissing when the file is not there or cannot be used.
  static Result<std::unique_ptr<Recognizer>> CreateForLettering(const std::filesystem::path& config);
  // The file of that model.
  static std::filesystem::path LetteringModel(const std::filesystem::path& config);
  ~Recognizer();
  Recognizer(const Recognizer&) = delete;
  Recognizer& operator=(const Recognizer&) = delete;

  // One line of upright text with a light border.
  std::vector<Token> ReadLine(const GreyImage& line);

  // Whatever text stands on a picture, in no order.
  std::vector<Token> ReadSparse(const GreyImage& picture);

  // "tesseract 5.3.0 eng".
  static std::string GeneralVersion();

 private:
  explicit Recognizer(std::unique_ptr<tesseract::TessBaseAPI> engine);
  std::vector<Token> Read(const GreyImage& picture);
  std::unique_ptr<tesseract::TessBaseAPI> engine_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_RECOGNIZER_H_
