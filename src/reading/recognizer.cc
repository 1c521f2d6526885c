#include "reading/recognizer.h"

#include <tesseract/baseapi.h>

#include <utility>

namespace benchleaf {
namespace {

constexpr const char* kModel = "eng";

// Null when the model, which tesseract's packages bring, cannot be used.
std::unique_ptr<tesseract::TessBaseAPI> Open() {
  auto engine = std::make_unique<tesseract::TessBaseAPI>();
  const std::vector<std::string> names = {"load_system_dawg", "load_freq_dawg",     "load_punc_dawg",
                                          "load_number_dawg", "load_bigram_dawg",   "load_unambig_dawg",
                                          "debug_file",       "tessedit_do_invert", "invert_threshold"};
  const std::vector<std::string> values = {"0", "0", "0", "0", "0", "0", "/dev/null", "0", "0.0"};
  if (engine->Init(nullptr, kModel, tesseract::OEM_LSTM_ONLY, nullptr, 0, &names, &values, false) != 0) {
    return nullptr;
  }
  return engine;
}

}  // namespace

Recognizer::Recognizer(std::unique_ptr<tesseract::TessBaseAPI> engine) : engine_(std::move(engine)) {}
Recognizer::~Recognizer() = default;

Result<std::unique_ptr<Recognizer>> Recognizer::Create() {
  auto engine = Open();
  if (!engine) {
    return Fail(ErrorCode::kMissing,
                "the reader's language data \"eng\" is not installed: install the package tesseract-ocr-eng, or set "
                "TESSDATA_PREFIX to the folder that holds eng.traineddata");
  }
  return std::unique_ptr<Recognizer>(new Recognizer(std::move(engine)));
}

std::vector<Token> Recognizer::ReadLine(const GreyImage& line) {
  engine_->SetPageSegMode(tesseract::PSM_SINGLE_LINE);
  return Read(line);
}

std::vector<Token> Recognizer::ReadSparse(const GreyImage& picture) {
  engine_->SetPageSegMode(tesseract::PSM_SPARSE_TEXT);
  return Read(picture);
}

std::vector<Token> Recognizer::Read(const GreyImage& picture) {
  std::vector<Token> tokens;
  if (picture.empty()) {
    return tokens;
  }
  engine_->SetImage(picture.pixels.data(), picture.width, picture.height, 1, picture.width);
  engine_->SetSourceResolution(300);
  if (engine_->Recognize(nullptr) == 0) {
    const std::unique_ptr<tesseract::ResultIterator> words(engine_->GetIterator());
    if (words) {
      do {
        const std::unique_ptr<char[]> text(words->GetUTF8Text(tesseract::RIL_WORD));
        int left = 0;
        int top = 0;
        int right = 0;
        int bottom = 0;
        if (text && text[0] != '\0' && words->BoundingBox(tesseract::RIL_WORD, &left, &top, &right, &bottom)) {
          tokens.push_back({text.get(),
                            {left, top, right - left, bottom - top},
                            static_cast<double>(words->Confidence(tesseract::RIL_WORD)) / 100});
        }
      } while (words->Next(tesseract::RIL_WORD));
    }
  }
  // Without this the engine keeps the last picture and its results until the next one comes.
  engine_->Clear();
  return tokens;
}

std::string Recognizer::Version() {
  return std::string("tesseract ") + tesseract::TessBaseAPI::Version() + " " + kModel;
}

}  // namespace benchleaf
