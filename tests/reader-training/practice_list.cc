#include "reader-training/practice_list.h"

#include "reader-training/practice_text.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/sheet.h"

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

TextStyle StyleOf(scanmaker::Lettering lettering, SeededRandom& random) {
  TextStyle style;
  style.lettering = lettering;
  style.cap_height_px = random.Between(19, 32);
  style.stroke_px = style.cap_height_px * random.Between(0.08, 0.16);
  style.letter_space = random.Between(-0.03, 0.12);
  style.stretch = random.Between(0.85, 1.15);
  style.seed = random.Next();
  return style;
}

std::vector<Token> Phrase(int words, SeededRandom& random) {
  std::vector<Token> phrase;
  for (int i = 0; i < words; ++i) {
    const std::string word = i == 0 && random.Unit() < 0.4 ? PracticeText(random) : PracticeWord(random);
    phrase.push_back({"text", word, {word}});
  }
  return phrase;
}

}  // namespace

scanmaker::MadePage MakePracticeList(scanmaker::Lettering lettering, std::uint64_t seed) {
  SeededRandom random(seed);
  const TextStyle style = StyleOf(lettering, random);
  const double cap = style.cap_height_px;
  const double pitch = cap * random.Between(1.6, 2.6);
  const bool ruled = random.Unit() < 0.25;
  Sheet sheet(kWidth, kHeight);
  for (double y = kMargin + cap; y < kHeight - kMargin; y += pitch) {
    double x = kMargin + (random.Unit() < 0.2 ? random.Between(0, 300) : 0);
    while (x < kWidth - kMargin - 10 * cap) {
      const std::vector<Token> phrase = Phrase(random.Whole(1, 6), random);
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
