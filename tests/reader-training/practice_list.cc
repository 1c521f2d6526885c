#include "reader-training/practice_list.h"

#include "reader-training/practice_text.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/sheet.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::SeededRandom;
using scanmaker::Sheet;
using scanmaker::TextStyle;
using scanmaker::Token;

constexpr int kWidth = 2550;   // px, letter paper standing
constexpr int kHeight = 3300;  // px
constexpr double kMargin = 120;

TextStyle StyleOf(const TextStyle& lettering, SeededRandom& random) {
  TextStyle style = lettering;
  style.cap_height_px = random.Between(19, 32);
  style.stroke_px = style.cap_height_px * random.Between(0.08, 0.16);
  style.letter_space = random.Between(-0.04, 0.14);
  style.word_space = random.Between(0.6, 1.4);
  style.stretch = random.Between(0.85, 1.15);
  style.seed = random.Next();
  return style;
}

// What stands in one column of a row: a description, designators, values, numbers of one maker or of several abreast.
std::string Phrase(SeededRandom& random) {
  const double kind = random.Unit();
  const int words = random.Whole(1, kind < 0.5 ? 6 : 3);
  std::string phrase;
  for (int i = 0; i < words; ++i) {
    phrase += i > 0 ? " " : "";
    if (kind < 0.5) {
      phrase += PracticeWord(random);
    } else if (kind < 0.65) {
      phrase += random.Unit() < 0.6 ? PracticeText(random) : PracticeGroup(random);
    } else if (kind < 0.75) {
      phrase += i == 0 ? PracticeWord(random) : PracticePartNumber(random, false);
    } else {
      phrase += PracticePartNumber(random, kind < 0.85);
    }
  }
  return phrase;
}

// Each word as a term of its own, since every one is to be learnt; TermBook takes plain words for no terms.
std::vector<Token> Words(const std::string& phrase) {
  std::vector<Token> words;
  std::size_t at = 0;
  while (at < phrase.size()) {
    const std::size_t end = std::min(phrase.find(' ', at), phrase.size());
    const std::string word = phrase.substr(at, end - at);
    words.push_back({"text", word, {word}});
    at = end + 1;
  }
  return words;
}

}  // namespace

scanmaker::MadePage MakePracticeList(const scanmaker::TextStyle& lettering, std::uint64_t seed) {
  SeededRandom random(seed);
  const TextStyle style = StyleOf(lettering, random);
  const double cap = style.cap_height_px;
  const double pitch = cap * random.Between(1.6, 2.6);
  const bool ruled = random.Unit() < 0.25;
  Sheet sheet(kWidth, kHeight);
  for (double y = kMargin + cap; y < kHeight - kMargin; y += pitch) {
    double x = kMargin + (random.Unit() < 0.2 ? random.Between(0, 300) : 0);
    while (x < kWidth - kMargin - 10 * cap) {
      const std::vector<Token> phrase = Words(Phrase(random));
      if (x + RowAdvance(phrase, style) > kWidth - kMargin) {
        break;
      }
      x = sheet.PutRow(x, y, phrase, style).right() + cap * random.Between(2.2, 5);
    }
    if (ruled) {
      sheet.Line(kMargin, y + 0.3 * pitch, kWidth - kMargin, y + 0.3 * pitch, 0.1 * cap);
    }
  }
  return sheet.Take("parts list", "");
}

}  // namespace benchleaf::training
