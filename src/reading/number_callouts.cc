#include "reading/number_callouts.h"

#include "reading/one_string.h"
#include "reading/word_choice.h"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <iterator>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

bool IsOneFigure(const std::string& text) { return text.size() == 1 && text[0] >= '1' && text[0] <= '9'; }

// Two or three figures.
bool IsNumber(const std::string& text) {
  return text.size() >= 2 && text.size() <= 3 &&
         std::all_of(text.begin(), text.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
}

bool IsLoneLetter(const Word& word) {
  return word.text.size() == 1 && std::isalpha(static_cast<unsigned char>(word.text.front())) != 0;
}

bool OnOnePlace(const Box& a, const Box& b) { return OverlapOfSmaller(a, b) > 0.3; }

}  // namespace

bool CallsOutByNumber(const std::vector<Word>& words) {
  constexpr std::size_t kFewest = 5;
  constexpr double kSure = 0.5;
  std::size_t numbers = 0;
  std::size_t designators = 0;
  for (const Word& word : words) {
    numbers += word.confidence >= kSure && IsNumber(word.text) ? 1U : 0U;
    designators += word.confidence >= kSure && HasDesignatorForm(word.text) ? 1U : 0U;
  }
  return numbers >= kFewest && designators * 2 < numbers;
}

std::vector<Word> ReadFigure(const CleanPage& page, const TextString& string, LineReader& reader) {
  constexpr double kReadsWell = 0.8;
  std::vector<Word> figure;
  for (const int turn : {0, 270, 90}) {
    TextString as_turned = string;
    as_turned.standing = turn != 0;
    std::vector<Word> read = ReadOne(page, as_turned, turn, reader);
    std::erase_if(read, [](const Word& word) { return !IsOneFigure(word.text); });
    if (BestConfidence(read) > BestConfidence(figure)) {
      figure = std::move(read);
    }
    if (BestConfidence(figure) >= kReadsWell) {
      break;
    }
  }
  return figure;
}

void TurnNumbers(const CleanPage& page, const std::vector<TextString>& strings, LineReader& reader,
                 std::vector<Word>& words) {
  constexpr std::size_t kMostFigures = 3;
  constexpr double kSure = 0.8;
  std::erase_if(words, IsLoneLetter);
  for (const TextString& string : strings) {
    const bool told = std::any_of(words.begin(), words.end(), [&](const Word& word) {
      const bool number = word.confidence >= kSure && IsNumber(word.text);
      return (number || HasDesignatorForm(word.text)) && OnOnePlace(word.box, string.box);
    });
    if (!string.standing || string.letters < 2 || string.letters > kMostFigures || told || !IsReadable(page, string)) {
      continue;
    }
    std::vector<Word> down = ReadOne(page, string, 90, reader);
    std::erase_if(down, [](const Word& word) { return word.confidence < kSure || !IsNumber(word.text); });
    if (!down.empty()) {
      std::erase_if(words, [&](const Word& word) { return OnOnePlace(word.box, string.box); });
      words.push_back(std::move(down.front()));
    }
  }
}

}  // namespace benchleaf
