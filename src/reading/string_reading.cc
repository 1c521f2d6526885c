#include "reading/string_reading.h"

#include "reading/foreign_ends.h"
#include "reading/number_callouts.h"
#include "reading/one_string.h"
#include "reading/word_choice.h"

#include "benchleaf/clean/spaced_strings.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

// Longer rows are read as phrases, with their spaces and punctuation. On pages of rows so are short ones whose letters
// stand by themselves. On drawings, whose strings are read one by one as well, only notes are.
constexpr std::size_t kPhraseLetters = 8;
constexpr std::size_t kNoteLetters = 16;
constexpr std::size_t kMostLettersSpacedOut = 6;

// Designators that surely run down the page, from which on strings that read well upwards are read downwards as well: a
// fair 98 is R6. How sure these must be.
constexpr std::size_t kFewestDown = 2;
constexpr double kSurelyDown = 0.9;

// Whether the string lies in the middle of a callout's ring.
bool IsInARing(const CleanPage& page, const TextString& string) {
  constexpr double kMiddle = 0.3;  // of the ring's size
  return std::any_of(page.rings.begin(), page.rings.end(), [&](const Box& ring) {
    return std::abs(ring.center_x() - string.box.center_x()) < kMiddle * ring.width &&
           std::abs(ring.center_y() - string.box.center_y()) < kMiddle * ring.height;
  });
}

// A letter or figure by itself where such are met: on pages of rows (quantities, sections, voltages), at a page's head
// and foot (its number), in a callout's ring, and where the drawing calls its parts out by number. On other drawings
// they are scraps of symbols, and the numbers of pins.
bool IsLoneCharacter(const CleanPage& page, const TextString& string, bool numbered) {
  constexpr double kMargin = 0.1;  // of the page's height
  const double cap = page.measures.cap_height_px;
  const double height = page.frame.level_height;
  const bool placed = numbered || StandsInRows(page.measures) || string.box.bottom() < kMargin * height ||
                      string.box.y > (1 - kMargin) * height || IsInARing(page, string);
  const auto is_letter = [cap](int high, int wide) {
    return high >= 0.7 * cap && high <= 1.4 * cap && wide <= 1.2 * cap;
  };
  return placed && string.letters == 1 &&
         (is_letter(string.box.height, string.box.width) ||
          (numbered && is_letter(string.box.width, string.box.height)));
}

// Whether the character is one of two or three that run up or down the page: 5 is no callout where 53 stands.
bool IsPartOfANumber(const CleanPage& page, const TextString& string, const std::vector<TextString>& strings) {
  constexpr std::size_t kMostFigures = 3;
  return std::any_of(strings.begin(), strings.end(), [&](const TextString& other) {
    return other.standing && other.letters >= 2 && other.letters <= kMostFigures && IsReadable(page, other) &&
           std::find(other.members.begin(), other.members.end(), string.members.front()) != other.members.end();
  });
}

// Rows of few letters of which each stands by itself: designators that are spaced out, R 1 2. By `alone`, which
// components are strings of their own.
bool IsSpacedOut(const TextString& phrase, const std::vector<bool>& alone) {
  return phrase.members.size() > 1 && phrase.members.size() <= kMostLettersSpacedOut &&
         std::all_of(phrase.members.begin(), phrase.members.end(), [&](std::size_t member) { return alone[member]; });
}

std::vector<bool> ComponentsAlone(const CleanPage& page, const std::vector<TextString>& strings) {
  std::vector<bool> alone(page.components.items.size(), false);
  for (const TextString& string : strings) {
    if (!string.standing && string.members.size() == 1) {
      alone[string.members.front()] = true;
    }
  }
  return alone;
}

// A lone character is never read as two.
void DropLongerThanOne(std::vector<Word>& words) {
  std::erase_if(words, [](const Word& word) {
    return std::count_if(word.text.begin(), word.text.end(), [](unsigned char c) { return std::isalnum(c) != 0; }) > 1;
  });
}

// Standing text runs up the page (270) far more often than down; down is only tried where up reads badly.
std::vector<Word> ReadStanding(const CleanPage& page, const TextString& string, LineReader& reader) {
  constexpr double kReadsWell = 0.8;
  std::vector<Word> up = ReadOne(page, string, 270, reader);
  if (BestConfidence(up) >= kReadsWell) {
    return up;
  }
  std::vector<Word> down = ReadOne(page, string, 90, reader);
  return BestConfidence(down) > BestConfidence(up) ? down : up;
}

// Whether a designator was read beyond doubt.
bool IsSureDesignator(const std::vector<Word>& words) {
  constexpr double kSure = 0.95;
  return BestConfidence(words) >= kSure && HasDesignatorForm(words);
}

// The words with a designator's form that the string holds when it is read at this turn, at least so sure.
std::vector<Word> ReadDesignators(const CleanPage& page, const TextString& string, int turn, double least,
                                  LineReader& reader) {
  std::vector<Word> words = ReadOne(page, string, turn, reader);
  std::erase_if(words, [&](const Word& word) { return !HasDesignatorForm(word.text) || word.confidence < least; });
  return words;
}

// What the string holds without ink at its ends that is no letter, where that is surely a designator; else `read`.
std::vector<Word> WithoutForeignInk(const CleanPage& page, const TextString& string, std::vector<Word> read,
                                    LineReader& reader) {
  constexpr double kSure = 0.8;
  if (read.empty()) {
    return read;
  }
  const Word& best = *Surest(read);
  for (const TextString& cut : WithoutForeignEnds(page, string, best)) {
    std::vector<Word> words = ReadDesignators(page, cut, best.turn, kSure, reader);
    if (!words.empty()) {
      return words;
    }
  }
  return read;
}

// Lying strings of a designator's length and height that may stand upside down.
struct PerhapsUpended {
  std::vector<TextString> likely;    // that read badly
  std::vector<TextString> unlikely;  // that read well, but as no sure designator: R9 upside down is a fair 68
};

void NoteUpended(const CleanPage& page, const TextString& string, const std::vector<Word>& words,
                 PerhapsUpended& upended) {
  constexpr double kReadsWell = 0.8;
  constexpr std::size_t kMostLetters = 5;
  const double cap = page.measures.cap_height_px;
  if (words.empty() || string.letters < 2 || string.letters > kMostLetters || string.breadth() < 0.7 * cap ||
      string.breadth() > 1.4 * cap) {
    return;
  }
  if (BestConfidence(words) < kReadsWell) {
    upended.likely.push_back(string);
  } else if (!IsSureDesignator(words)) {
    upended.unlikely.push_back(string);
  }
}

// Designators that stand upside down. A few of the likely strings from all over the page are tried, and as many more
// for each designator that turns up beyond doubt; where such are met, the unlikely ones as well.
std::vector<Word> ReadUpended(const CleanPage& page, const PerhapsUpended& upended, LineReader& reader) {
  constexpr std::size_t kSample = 12;
  constexpr std::size_t kFewestSure = 2;
  constexpr double kSure = 0.9;
  std::vector<Word> found;
  std::size_t sure = 0;
  const auto read = [&](const TextString& string, double least) {
    for (Word& word : ReadDesignators(page, string, 180, least, reader)) {
      sure += word.confidence >= kSure ? 1 : 0;
      found.push_back(std::move(word));
    }
  };
  const std::size_t stride = std::max<std::size_t>(1, upended.likely.size() / kSample);
  std::size_t tried = 0;
  for (std::size_t start = 0; start < stride; ++start) {
    for (std::size_t i = start; i < upended.likely.size() && tried++ < kSample * (sure + 1); i += stride) {
      read(upended.likely[i], 0);
    }
  }
  if (sure < kFewestSure) {
    return {};
  }
  for (const TextString& string : upended.unlikely) read(string, kSure);
  return found;
}

// Whether most of the string already stands in a word that was read well.
bool IsReadAlready(const TextString& string, const std::vector<Word>& words) {
  constexpr double kReadsWell = 0.85;
  return std::any_of(words.begin(), words.end(), [&](const Word& word) {
    return word.confidence >= kReadsWell && OverlapOfSmaller(word.box, string.box) > 0.7 &&
           word.box.width * word.box.height * 2 > string.box.width * string.box.height;
  });
}

// Whether a string that has been read, well or badly, fills the blob: reading the same ink again tells nothing new.
bool IsFilled(const CleanPage& page, const TextString& blob, const std::vector<TextString>& strings) {
  constexpr double kFills = 0.75;  // of the box round both
  const auto area = [](const Box& box) { return static_cast<double>(box.width) * box.height; };
  return std::any_of(strings.begin(), strings.end(), [&](const TextString& string) {
    return string.standing == blob.standing &&
           area(Intersection(string.box, blob.box)) >= kFills * area(Union(string.box, blob.box)) &&
           IsReadable(page, string);
  });
}

// Whether the string is part of a word. A column of figures may have been tried as a word that stands, and reads badly.
bool IsInAWord(const TextString& string, const std::vector<Word>& words) {
  constexpr double kReadsFairly = 0.5;
  return std::any_of(words.begin(), words.end(), [&](const Word& word) {
    return (word.turn == 0 || word.confidence >= kReadsFairly) && OverlapOfSmaller(word.box, string.box) > 0.3;
  });
}

}  // namespace

std::vector<Word> ReadStrings(const CleanPage& page, LineReader& reader) {
  std::vector<Word> words;
  const auto add = [&words](std::vector<Word> more) {
    words.insert(words.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  };
  std::vector<TextString> strings = FindStrings(page, kStringGaps);
  const std::vector<bool> alone = ComponentsAlone(page, strings);
  std::vector<bool> in_phrase(page.components.items.size(), false);
  const bool rows = StandsInRows(page.measures);
  for (const TextString& phrase : FindStrings(page, kPhraseGaps)) {
    const bool long_row = phrase.members.size() >= (rows ? kPhraseLetters : kNoteLetters);
    if (page.steps.phrases && (long_row || (rows && IsSpacedOut(phrase, alone)))) {
      add(ReadOne(page, phrase, 0, reader));
      // On a drawing, what stands in a row need not belong together: a value, a designator, the end of a wire.
      for (const std::size_t member : phrase.members) {
        in_phrase[member] = rows;
      }
    }
  }
  if (page.steps.spaced) {
    for (const TextString& string : FindSpacedStrings(page, strings)) {
      add(ReadSpaced(page, CutString(page, string, 0), string, reader));
    }
  }
  std::erase_if(strings, [&](const TextString& string) {
    if (string.standing && !page.steps.standing) {
      return true;
    }
    return std::all_of(string.members.begin(), string.members.end(), [&](std::size_t m) { return in_phrase[m]; });
  });
  PerhapsUpended perhaps_upended;
  for (const TextString& string : strings) {
    if (!string.standing && IsReadable(page, string)) {
      std::vector<Word> read = WithoutForeignInk(page, string, ReadOne(page, string, 0, reader), reader);
      if (page.steps.upended) {
        NoteUpended(page, string, read, perhaps_upended);
      }
      add(std::move(read));
    }
  }
  add(ReadUpended(page, perhaps_upended, reader));
  std::vector<TextString> perhaps_down;
  std::size_t surely_down = 0;
  for (const TextString& string : strings) {
    if (string.standing && IsReadable(page, string) && !IsReadAlready(string, words)) {
      std::vector<Word> read = WithoutForeignInk(page, string, ReadStanding(page, string, reader), reader);
      const bool down = !read.empty() && read.front().turn == 90;
      surely_down += down && IsSureDesignator(read) ? 1U : 0U;
      if (!down && !read.empty() && !IsSureDesignator(read)) {
        perhaps_down.push_back(string);
      }
      add(std::move(read));
    }
  }
  if (surely_down >= kFewestDown) {
    for (const TextString& string : perhaps_down) add(ReadDesignators(page, string, 90, kSurelyDown, reader));
  }
  for (const TextString& string : page.steps.broken ? FindBrokenStrings(page) : std::vector<TextString>()) {
    if (!IsReadAlready(string, words) && !IsFilled(page, string, strings)) {
      add(string.standing ? ReadStanding(page, string, reader) : ReadOne(page, string, 0, reader));
    }
  }
  const bool numbered = !rows && CallsOutByNumber(words);
  if (numbered) {
    TurnNumbers(page, strings, reader, words);
  }
  for (const TextString& string : strings) {
    if (!string.standing && IsLoneCharacter(page, string, numbered) && !IsInAWord(string, words) &&
        !(numbered && IsPartOfANumber(page, string, strings))) {
      std::vector<Word> read = numbered ? ReadFigure(page, string, reader) : ReadOne(page, string, 0, reader);
      DropLongerThanOne(read);
      add(std::move(read));
    }
  }
  return ChooseWords(std::move(words));
}

}  // namespace benchleaf
