#include "reading/string_reading.h"

#include "reading/word_choice.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>
#include <iterator>
#include <numeric>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

// Longer rows are read as phrases, with their spaces.
constexpr std::size_t kPhraseLetters = 8;
constexpr double kLongestStringCaps = 22;

// The outline of a symbol: a triangle for ground or an amplifier reads as V7. A letter's hole is no longer than the
// letter, so that it takes less of a string of several.
bool IsOutline(const CleanPage& page, const TextString& string) {
  constexpr double kHoleOfAnOutline = 0.55;
  if (string.members.size() != 1) {
    return false;
  }
  const Box hole = LargestHole(page.components, string.members.front());
  return (string.standing ? hole.height : hole.width) > kHoleOfAnOutline * string.length();
}

// A few letters that touch: longer than one letter is.
bool MayBeSeveral(const CleanPage& page, const TextString& string) {
  return string.length() >= 1.1 * std::max<double>(string.breadth(), page.measures.cap_height_px) &&
         !IsOutline(page, string);
}

// Worth a reader's time: at least two letters, or a few that touch, and no longer than strings of drawings are.
bool IsReadable(const CleanPage& page, const TextString& string) {
  return string.length() <= kLongestStringCaps * page.measures.cap_height_px &&
         (string.members.size() >= 2 || MayBeSeveral(page, string));
}

// Sizes at which the reader errs differently than at its best one.
constexpr std::array<double, 2> kOtherCapsPx = {26, 20};

// Fragments that only closeness joins are seldom letters.
constexpr double kBrokenTrust = 0.8;

std::vector<Word> ReadAt(const CleanPage& page, const TextString& string, int turn, double cap_px,
                         Recognizer& recognizer) {
  const StringCrop crop = CutString(page, string, turn, cap_px);
  std::vector<Word> words;
  for (Token& token : recognizer.ReadLine(crop.image)) {
    const double confidence = token.confidence * (string.broken ? kBrokenTrust : 1);
    words.push_back({std::move(token.text), ToLevel(crop, token.box), turn, confidence, WordOrigin::kString, {}});
  }
  return words;
}

// The string as a class letter, taken from what it read as, and figures that are read on their own: beside a letter the
// reader takes 5 for S and 9 for g, alone it does not. Nothing unless the figures read surely.
std::vector<Word> ReadFiguresAlone(const CleanPage& page, const TextString& string, int turn, const Word& whole,
                                   Recognizer& recognizer) {
  constexpr double kSurely = 0.85;
  constexpr double kTrust = 0.8;  // in two readings put together
  const char first = static_cast<char>(std::toupper(static_cast<unsigned char>(whole.text.front())));
  if (first < 'A' || first > 'Z') {
    return {};
  }
  TextString figures = string;
  figures.members.erase(turn == 270 ? figures.members.end() - 1 : figures.members.begin());
  figures.box = BoxOf(page.components, figures.members);
  const std::vector<Word> read = ReadAt(page, figures, turn, kReaderCapPx, recognizer);
  if (read.size() != 1 || read.front().confidence < kSurely ||
      read.front().text.find_first_not_of("0123456789") != std::string::npos) {
    return {};
  }
  const double confidence = kTrust * std::min(whole.confidence, read.front().confidence);
  return {{first + read.front().text, string.box, turn, confidence, WordOrigin::kString, {}}};
}

// Reads a designator that is not sure again at another size. Scraps of symbols read differently every time.
void Confirm(const CleanPage& page, const TextString& string, int turn, Recognizer& recognizer,
             std::vector<Word>& words) {
  constexpr double kSure = 0.92;
  constexpr double kUnconfirmed = 0.75;
  if (std::all_of(words.begin(), words.end(), [&](const Word& word) { return word.confidence >= kSure; })) {
    return;
  }
  const std::vector<Word> again = ReadAt(page, string, turn, kOtherCapsPx.front(), recognizer);
  for (Word& word : words) {
    const auto same =
        std::find_if(again.begin(), again.end(), [&](const Word& other) { return other.text == word.text; });
    if (same != again.end()) {
      word.confidence = std::max(word.confidence, same->confidence);
    } else if (HasDesignatorForm(word.text)) {
      word.confidence *= kUnconfirmed;
    }
  }
}

// A short string that reads as no designator is read again at other sizes, and at last with its figures on their own.
std::vector<Word> ReadOne(const CleanPage& page, const TextString& string, int turn, Recognizer& recognizer) {
  constexpr std::size_t kShort = 5;
  std::vector<Word> words = ReadAt(page, string, turn, kReaderCapPx, recognizer);
  if (HasDesignatorForm(words)) {
    Confirm(page, string, turn, recognizer, words);
    return words;
  }
  if (string.members.size() > kShort) {
    return words;
  }
  std::vector<Word> again;
  for (const double cap_px : kOtherCapsPx) {
    if (again = ReadAt(page, string, turn, cap_px, recognizer); HasDesignatorForm(again)) {
      break;
    }
    again.clear();
  }
  if (again.empty() && words.size() == 1 && string.members.size() >= 2) {
    again = ReadFiguresAlone(page, string, turn, words.front(), recognizer);
  }
  words.insert(words.end(), std::make_move_iterator(again.begin()), std::make_move_iterator(again.end()));
  return words;
}

// A letter or figure by itself where such are met: on pages of rows (quantities, sections, voltages) and at a page's
// head and foot (its number). On drawings they are scraps of symbols, and the numbers of pins.
bool IsLoneCharacter(const CleanPage& page, const TextString& string) {
  constexpr double kRowsOfAPageOfText = 0.6;
  constexpr double kMargin = 0.1;  // of the page's height
  const double cap = page.measures.cap_height_px;
  const double height = page.frame.level_height;
  const bool placed = page.measures.text_row_share >= kRowsOfAPageOfText || string.box.bottom() < kMargin * height ||
                      string.box.y > (1 - kMargin) * height;
  return placed && string.members.size() == 1 && string.box.height >= 0.7 * cap && string.box.height <= 1.4 * cap &&
         string.box.width <= 1.2 * cap;
}

double MeanConfidence(const std::vector<Word>& words) {
  const double sum =
      std::accumulate(words.begin(), words.end(), 0.0, [](double s, const Word& word) { return s + word.confidence; });
  return words.empty() ? 0 : sum / static_cast<double>(words.size());
}

// Standing text runs up the page (270) far more often than down; down is only tried where up reads badly.
std::vector<Word> ReadStanding(const CleanPage& page, const TextString& string, Recognizer& recognizer) {
  constexpr double kReadsWell = 0.8;
  std::vector<Word> up = ReadOne(page, string, 270, recognizer);
  if (MeanConfidence(up) >= kReadsWell && HasDesignatorForm(up)) {
    return up;
  }
  std::vector<Word> down = ReadOne(page, string, 90, recognizer);
  const auto rank = [](const std::vector<Word>& words) {
    return MeanConfidence(words) + (HasDesignatorForm(words) ? 0.3 : 0);
  };
  return rank(down) > rank(up) ? down : up;
}

// Whether most of the string already stands in a word that was read well.
bool IsReadAlready(const TextString& string, const std::vector<Word>& words) {
  constexpr double kReadsWell = 0.85;
  return std::any_of(words.begin(), words.end(), [&](const Word& word) {
    return word.confidence >= kReadsWell && OverlapOfSmaller(word.box, string.box) > 0.7 &&
           word.box.width * word.box.height * 2 > string.box.width * string.box.height;
  });
}

bool IsInAWord(const TextString& string, const std::vector<Word>& words) {
  return std::any_of(words.begin(), words.end(),
                     [&](const Word& word) { return OverlapOfSmaller(word.box, string.box) > 0.3; });
}

}  // namespace

std::vector<Word> ReadStrings(const CleanPage& page, Recognizer& recognizer) {
  std::vector<Word> words;
  const auto add = [&words](std::vector<Word> more) {
    words.insert(words.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  };
  std::vector<bool> in_phrase(page.components.items.size(), false);
  for (const TextString& phrase : FindStrings(page, kPhraseGaps)) {
    if (phrase.members.size() >= kPhraseLetters) {
      add(ReadOne(page, phrase, 0, recognizer));
      for (const std::size_t member : phrase.members) {
        in_phrase[member] = true;
      }
    }
  }
  std::vector<TextString> strings = FindStrings(page, kStringGaps);
  std::erase_if(strings, [&](const TextString& string) {
    return std::all_of(string.members.begin(), string.members.end(), [&](std::size_t m) { return in_phrase[m]; });
  });
  for (const TextString& string : strings) {
    if (!string.standing && IsReadable(page, string)) {
      add(ReadOne(page, string, 0, recognizer));
    }
  }
  for (const TextString& string : strings) {
    if (string.standing && IsReadable(page, string) && !IsReadAlready(string, words)) {
      add(ReadStanding(page, string, recognizer));
    }
  }
  for (const TextString& string : FindBrokenStrings(page)) {
    if (!IsReadAlready(string, words)) {
      add(string.standing ? ReadStanding(page, string, recognizer) : ReadOne(page, string, 0, recognizer));
    }
  }
  for (const TextString& string : strings) {
    if (!string.standing && IsLoneCharacter(page, string) && !IsInAWord(string, words)) {
      add(ReadAt(page, string, 0, kReaderCapPx, recognizer));
    }
  }
  return ChooseWords(std::move(words));
}

}  // namespace benchleaf
