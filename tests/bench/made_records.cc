#include "bench/made_records.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <random>
#include <string_view>
#include <utility>

namespace benchleaf::bench {
namespace {

constexpr int kCap = 24;    // px, height of capitals on the level page
constexpr int kChar = 18;   // px, from character to character
constexpr int kPitch = 44;  // px, from line to line

constexpr std::array<std::string_view, 48> kTubes = {
    "6AU6",  "12AX7", "6CB6", "6AL5",  "12AU7",  "6BQ6GT", "6SN7GT", "5U4G",  "6W4GT", "6BE6",  "6BA6",  "6AQ5",
    "12AT7", "6AV6",  "6X4",  "6V6GT", "6SL7GT", "1B3GT",  "6AX4GT", "6BK7A", "6BZ7",  "6J6",   "6K6GT", "6S4",
    "12BY7", "6AN8",  "6U8",  "5Y3GT", "6SA7",   "6SK7",   "6SQ7",   "35W4",  "50C5",  "12BE6", "12BA6", "12AV6",
    "6L6G",  "5881",  "6922", "5751",  "0A2",    "0B2",    "6C4",    "6H6",   "2D21",  "5651",  "807",   "6146"};

constexpr std::array<std::string_view, 40> kTradeWords = {
    "adjust",     "signal",     "voltage",   "connect",  "generator", "the",         "output",  "control",
    "and",        "meter",      "chassis",   "receiver", "tube",      "transformer", "to",      "circuit",
    "horizontal", "vertical",   "sync",      "of",       "maximum",   "response",    "through", "capacitor",
    "resistor",   "screen",     "grid",      "plate",    "cathode",   "with",        "turn",    "clockwise",
    "until",      "oscillator", "frequency", "switch",   "position",  "remove",      "cover",   "check"};

constexpr std::array<std::string_view, 24> kSyllables = {"ba",  "cor", "den", "el",  "fan", "gor", "hil", "im",
                                                         "ka",  "lor", "mer", "ne",  "ost", "pra", "qui", "ros",
                                                         "sil", "tan", "ur",  "vel", "wen", "yar", "zo",  "ther"};

struct Part {
  std::string designator;
  std::string description;
  std::string value;
  std::string number;
};

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}

  std::size_t Below(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }
  int Between(int least, int most) {
    return least + static_cast<int>(Below(static_cast<std::size_t>(most - least + 1)));
  }
  bool OneIn(std::size_t count) { return Below(count) == 0; }
  double Share() { return static_cast<double>(engine_() >> 11U) * 0x1p-53; }
  template <class Things>
  std::string Any(const Things& things) {
    return std::string(things[Below(things.size())]);
  }
  // A rank from 0 to `count` - 1, the first the likeliest: about the inverse of the rank.
  std::size_t Rank(std::size_t count) {
    return static_cast<std::size_t>(std::pow(static_cast<double>(count), Share())) - 1;
  }

 private:
  std::mt19937_64 engine_;
};

// A word of text: the trade's most often, then ever rarer ones.
std::string TextWord(Dice& dice) {
  constexpr std::size_t kVocabulary = 200000;
  std::size_t rank = dice.Rank(kVocabulary);
  if (rank < kTradeWords.size()) {
    return std::string(kTradeWords[rank]);
  }
  std::string word;
  for (; rank > 0; rank /= kSyllables.size()) {
    word += kSyllables[rank % kSyllables.size()];
  }
  return word;
}

std::string PartNumber(Dice& dice) {
  const auto figures = [&](int count) {
    std::string text;
    for (int i = 0; i < count; ++i) {
      text += static_cast<char>('0' + dice.Below(10));
    }
    return text;
  };
  return figures(2) + "-" + figures(4) + "-" + figures(1);
}

Part MakePart(const std::string& letters, int number, Dice& dice) {
  static constexpr std::array<std::string_view, 12> kMantissas = {"10", "15", "22", "27", "33", "39",
                                                                  "47", "56", "68", "82", "12", "18"};
  Part part;
  part.designator = letters + std::to_string(number);
  part.number = PartNumber(dice);
  if (letters == "R") {
    part.value = dice.Any(kMantissas) + (dice.OneIn(2) ? "K" : "0K");
    part.description = "Resistor carbon " + part.value + " 1/2W";
  } else if (letters == "C") {
    part.value = dice.OneIn(2) ? dice.Any(kMantissas) + "MMF" : "." + dice.Any(kMantissas) + "MFD";
    part.description = "Capacitor " + part.value + " 600V";
  } else if (letters == "V") {
    part.value = kTubes[dice.Rank(kTubes.size())];
    part.description = "Tube " + part.value;
  } else {
    part.description = letters == "L" ? "Coil peaking" : letters == "T" ? "Transformer output" : "Switch rotary";
  }
  return part;
}

// So many parts of all classes, most of them capacitors and resistors.
std::vector<Part> MakeParts(int count, Dice& dice) {
  static constexpr std::array<std::pair<std::string_view, int>, 5> kShares = {
      {{"C", 36}, {"L", 6}, {"S", 2}, {"T", 3}, {"V", 7}}};  // in hundredths; the rest are resistors
  std::vector<Part> parts;
  const auto add = [&](std::string_view letters, int of_class) {
    for (int i = 1; i <= of_class; ++i) {
      parts.push_back(MakePart(std::string(letters), i, dice));
    }
  };
  for (const auto& [letters, share] : kShares) {
    add(letters, std::max(1, count * share / 100));
  }
  add("R", count - static_cast<int>(parts.size()));
  return parts;
}

// Lays words on a page as a reader of a middling scan gives them.
class Sheet {
 public:
  Sheet(Dice& dice, WordOrigin origin) : dice_(dice), origin_(origin) {}

  void Print(const std::string& text, int x, int y) {
    Word word;
    word.text = text;
    word.box = {x, y, kChar * static_cast<int>(text.size()), kCap};
    word.confidence = 0.7 + 0.3 * dice_.Share();
    word.origin = origin_;
    if (dice_.OneIn(4)) {
      word.alternatives.push_back({Misread(text), 0.3 * dice_.Share()});
    }
    if (dice_.OneIn(15)) {
      word.alternatives.push_back({text, 0.3 * dice_.Share()});
      word.text = Misread(text);
      word.confidence *= 0.6;
    }
    width_ = std::max(width_, word.box.right());
    height_ = std::max(height_, word.box.bottom());
    reading_.words.push_back(std::move(word));
  }

  // Words of a line from `x` on; gives where it ends.
  int PrintLine(std::string_view text, int x, int y) {
    while (!text.empty()) {
      const std::size_t end = std::min(text.find(' '), text.size());
      Print(std::string(text.substr(0, end)), x, y);
      x += kChar * static_cast<int>(end + 1);
      text.remove_prefix(std::min(end + 1, text.size()));
    }
    return x;
  }

  PageReading Take(double text_row_share) {
    const int width = width_ + 4 * kPitch;
    const int height = height_ + 4 * kPitch;
    reading_.frame = {width, height, 200, 0, 1, 0, width, height};
    reading_.measures.cap_height_px = kCap;
    reading_.measures.text_row_share = text_row_share;
    for (const Word& word : reading_.words) {
      reading_.measures.glyphs += static_cast<int>(word.text.size());
    }
    std::stable_sort(reading_.words.begin(), reading_.words.end(), [](const Word& a, const Word& b) {
      return std::pair(a.box.y, a.box.x) < std::pair(b.box.y, b.box.x);
    });
    return std::move(reading_);
  }

 private:
  std::string Misread(std::string text) {
    static constexpr std::array<std::pair<char, char>, 10> kConfused = {{{'0', 'O'},
                                                                         {'1', 'I'},
                                                                         {'5', 'S'},
                                                                         {'8', 'B'},
                                                                         {'6', 'G'},
                                                                         {'R', 'K'},
                                                                         {'C', 'G'},
                                                                         {'e', 'c'},
                                                                         {'o', 'a'},
                                                                         {'2', 'Z'}}};
    const std::size_t from = dice_.Below(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
      char& c = text[(from + i) % text.size()];
      for (const auto& [right, wrong] : kConfused) {
        if (c == right) {
          c = wrong;
          return text;
        }
      }
    }
    return text + ".";
  }

  Dice& dice_;
  WordOrigin origin_;
  PageReading reading_;
  int width_ = 0;
  int height_ = 0;
};

PageReading ListPage(const Part* first, const Part* last, Dice& dice) {
  constexpr double kRows = 0.95;
  Sheet sheet(dice, WordOrigin::kPage);
  sheet.PrintLine("PARTS LIST", 900, 80);
  int y = 80 + 3 * kPitch;
  for (; first != last; ++first, y += kPitch) {
    sheet.Print(first->designator, 120, y);
    sheet.PrintLine(first->description, 360, y);
    sheet.Print(first->number, 1300, y);
  }
  return sheet.Take(kRows);
}

PageReading Drawing(const Part* first, const Part* last, Dice& dice) {
  constexpr double kRows = 0.1;
  constexpr int kAcross = 12;
  Sheet sheet(dice, WordOrigin::kString);
  for (int i = 0; first != last; ++first, ++i) {
    const int x = 150 + i % kAcross * 360 + dice.Between(0, 90);
    const int y = 150 + i / kAcross * 300 + dice.Between(0, 90);
    sheet.Print(first->designator, x, y);
    if (!first->value.empty()) {
      sheet.Print(first->value, x, y + kPitch);
    }
  }
  sheet.PrintLine("SCHEMATIC DIAGRAM", 1500, 90);
  return sheet.Take(kRows);
}

PageReading TextPage(const std::vector<Part>& parts, Dice& dice) {
  constexpr double kRows = 0.98;
  constexpr int kLines = 38;
  constexpr int kWords = 9;
  Sheet sheet(dice, WordOrigin::kPage);
  for (int line = 0; line < kLines; ++line) {
    int x = 150;
    for (int i = 0; i < kWords; ++i) {
      const std::string word =
          dice.OneIn(40) ? dice.Any(std::vector{parts[dice.Below(parts.size())].designator}) : TextWord(dice);
      sheet.Print(word, x, 150 + line * kPitch);
      x += kChar * static_cast<int>(word.size() + 1);
    }
  }
  return sheet.Take(kRows);
}

std::string ModelName(std::uint64_t number) {
  std::string maker;
  for (std::uint64_t rest = number % 300 + 24; rest > 0; rest /= kSyllables.size()) {
    maker += kSyllables[rest % kSyllables.size()];
  }
  maker.front() = static_cast<char>(maker.front() - 'a' + 'A');
  return maker + " " + std::to_string(number);
}

// A manual goes on in parts of ten pages: two drawings and the two lists of what is on them, and text.
constexpr int kPagesOfAPart = 10;
constexpr int kRowsOfPage = 40;

int PartsOf(int pages) { return (pages + kPagesOfAPart - 1) / kPagesOfAPart * 2 * kRowsOfPage; }

}  // namespace

PageReading MakeListPage(std::uint64_t seed, int rows) {
  Dice dice(seed);
  const std::vector<Part> parts = MakeParts(rows, dice);
  return ListPage(parts.data(), parts.data() + parts.size(), dice);
}

PageReading MakeDrawing(std::uint64_t seed, int count) {
  Dice dice(seed);
  const std::vector<Part> parts = MakeParts(count, dice);
  return Drawing(parts.data(), parts.data() + parts.size(), dice);
}

MadeTerms MakeTerms(std::uint64_t number, int pages) {
  Dice dice(number);
  MadeTerms terms;
  terms.set = ModelName(number);
  for (const Part& part : MakeParts(PartsOf(pages), dice)) {
    terms.designators.push_back(part.designator);
    terms.part_numbers.push_back(part.number);
    if (part.designator.front() == 'V') {
      terms.tubes.push_back(part.value);
    }
  }
  return terms;
}

MadeRecord MakeRecord(std::uint64_t number, int pages) {
  Dice dice(number);
  MadeRecord made;
  made.head.set = ModelName(number);
  made.head.maker = made.head.set.substr(0, made.head.set.find(' '));
  made.head.model = std::to_string(number);
  made.head.manual = "service manual";
  const std::string file = made.head.set + "/manual.pdf";
  const std::vector<Part> parts = MakeParts(PartsOf(pages), dice);
  for (int i = 0; i < pages; ++i) {
    PageRecord page;
    page.file = file;
    page.page = i + 1;
    page.content_key = file + ":" + std::to_string(i) + ":made";
    const int kind = i % kPagesOfAPart;
    const Part* const first = parts.data() + (i / kPagesOfAPart * 2 + (kind & 1)) * kRowsOfPage;
    if (kind < 2) {
      page.reading = Drawing(first, first + kRowsOfPage, dice);
    } else if (kind < 4) {
      page.reading = ListPage(first, first + kRowsOfPage, dice);
    } else {
      page.reading = TextPage(parts, dice);
    }
    made.pages.push_back(std::move(page));
  }
  made.head.files.push_back({file, "made-" + std::to_string(number), 0, 1, pages, std::nullopt});
  return made;
}

}  // namespace benchleaf::bench
