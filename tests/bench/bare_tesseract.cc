#include "bench/bare_tesseract.h"

#include "bench/one_thread.h"
#include "outside/designator_form.h"
#include "outside/term_forms.h"

// The one inclusion outside src/reading: the measure must not go through the code that is measured.
#include <tesseract/baseapi.h>
#include <tesseract/resultiterator.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>

namespace benchleaf::bench {
namespace {

std::string Canonical(const char* word) {
  std::string text = word == nullptr ? "" : word;
  const auto is_inner = [](unsigned char c) { return std::isalnum(c) != 0 || c >= 0x80; };
  const auto first = std::find_if(text.begin(), text.end(), is_inner);
  const auto last = std::find_if(text.rbegin(), std::make_reverse_iterator(first), is_inner).base();
  text = std::string(first, last);
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
  return text;
}

std::vector<Seen> WordsOf(const std::vector<Seen>& words, bool (*has_form)(std::string_view)) {
  std::vector<Seen> terms;
  std::copy_if(words.begin(), words.end(), std::back_inserter(terms),
               [has_form](const Seen& word) { return has_form(word.text); });
  return terms;
}

}  // namespace

struct BareTesseract::Engine {
  tesseract::TessBaseAPI api;
};

BareTesseract::BareTesseract() : engine_(std::make_unique<Engine>()) {
  if (engine_->api.Init(nullptr, "eng", tesseract::OEM_LSTM_ONLY) != 0) {
    throw std::runtime_error("Tesseract finds no English data: install tesseract-ocr-eng");
  }
  engine_->api.SetPageSegMode(tesseract::PSM_SPARSE_TEXT);
}

BareTesseract::~BareTesseract() = default;

std::vector<Seen> BareTesseract::Read(const GreyImage& image, double dpi) {
  engine_->api.SetImage(image.pixels.data(), image.width, image.height, 1, image.width);
  engine_->api.SetSourceResolution(static_cast<int>(std::lround(dpi)));
  if (engine_->api.Recognize(nullptr) != 0) {
    throw std::runtime_error("Tesseract could not read the page");
  }
  std::vector<Seen> words;
  const std::unique_ptr<tesseract::ResultIterator> at(engine_->api.GetIterator());
  if (at == nullptr) {
    return words;
  }
  do {
    int left = 0;
    int top = 0;
    int right = 0;
    int bottom = 0;
    const std::unique_ptr<const char[]> word(at->GetUTF8Text(tesseract::RIL_WORD));
    if (word != nullptr && at->BoundingBox(tesseract::RIL_WORD, &left, &top, &right, &bottom)) {
      const double width = image.width;
      const double height = image.height;
      words.push_back(
          {Canonical(word.get()), {left / width, top / height, (right - left) / width, (bottom - top) / height}});
    }
  } while (at->Next(tesseract::RIL_WORD));
  return words;
}

PageSeen BareTesseract::See(const scanmaker::ScannedPage& page) {
  const Stopwatch watch;
  PageSeen seen;
  seen.words = Read(page.image, page.dpi);
  seen.terms = {{"designator", WordsOf(seen.words, outside::HasDesignatorForm)},
                {"tube", WordsOf(seen.words, outside::HasTubeForm)},
                {"part-number", WordsOf(seen.words, outside::HasPartNumberForm)}};
  seen.seconds = watch.Seconds();
  return seen;
}

}  // namespace benchleaf::bench
