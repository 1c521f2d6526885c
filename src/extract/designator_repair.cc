#include "extract/designator.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf::extract {
namespace {

// What each kind of repair takes from the certainty. Judged from readings of scans, where a stroke for a 1 and a ring
// for a 0 are everyday and the rest are seldom.
constexpr double kLowerCase = 0.97;
constexpr double kSureLetter = 0.85;
constexpr double kSureFigure = 0.92;
constexpr double kUnsureFigure = 0.75;
constexpr double kOnlyLookAlikes = 0.7;

bool IsFigure(std::string_view character) { return character.size() == 1 && IsDigit(character.front()); }

// The letters of a class from the first `count` characters, or nothing. Lowers `sure`.
std::string Letters(const std::vector<std::string_view>& characters, std::size_t count, const Rules::Tables& tables,
                    double& sure) {
  std::string letters;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string_view character = characters[i];
    if (character.size() == 1 && IsUpper(character.front())) {
      letters += character;
    } else if (character.size() == 1 && IsLower(character.front()) && character != "l") {
      letters += ToUpper(character.front());
      sure *= kLowerCase;
    } else {
      const LookAlike alike = LookAlikeOf(character, tables);
      if (alike.letter == 0 || !alike.sure || IsFigure(character)) {
        return {};
      }
      letters += alike.letter;
      sure *= kSureLetter;
    }
  }
  return letters;
}

// The number and suffix from the rest, or nothing. Lowers `sure`; counts the figures that really stand there.
std::string Number(const std::vector<std::string_view>& characters, std::size_t from, const Rules::Tables& tables,
                   double& sure, std::size_t& real) {
  std::string number;
  for (std::size_t i = from; i < characters.size(); ++i) {
    const std::string_view character = characters[i];
    if (IsFigure(character)) {
      number += character;
      ++real;
      continue;
    }
    const bool last = i + 1 == characters.size();
    const bool after_figure = i > from && IsFigure(characters[i - 1]);
    const LookAlike alike = LookAlikeOf(character, tables);
    const bool between_figures = after_figure && !last && IsFigure(characters[i + 1]);
    const bool no_suffix = last && after_figure && (character == "S" || character == "Z" || character == "?");
    if (alike.digit != 0 && (alike.sure || between_figures || no_suffix)) {
      number += alike.digit;
      sure *= alike.sure ? kSureFigure : kUnsureFigure;
    } else if (last && after_figure && character.size() == 1 && IsUpper(character.front())) {
      number += character;
    } else {
      return {};
    }
  }
  return number;
}

// A designator behind a stroke that was read as a letter, where both letters together are no class: JC14, VL1. Ticks of
// pencils and ends of wires are read so.
std::optional<Designator> BehindAStroke(std::string_view plain, const Rules::Tables& tables) {
  constexpr std::string_view kStrokes = "JVIY/(";
  constexpr double kSureClass = 0.95;
  constexpr double kSureBehind = 0.6;
  if (plain.size() < 3 || kStrokes.find(plain.front()) == std::string_view::npos) {
    return std::nullopt;
  }
  auto designator = ParseDesignator(plain.substr(1), tables);
  if (!designator || designator->sure < kSureClass || !designator->suffix.empty()) {
    return std::nullopt;
  }
  designator->sure *= kSureBehind;
  return designator;
}

}  // namespace

std::optional<Designator> RepairDesignator(std::string_view plain, const Rules::Tables& tables,
                                           LoneStrokes lone_strokes) {
  if (auto strict = ParseDesignator(plain, tables)) {
    return strict;
  }
  constexpr std::size_t kFewest = 2;
  constexpr std::size_t kMost = 8;
  constexpr std::size_t kBytesOfCharacter = 4;
  if (plain.size() < kFewest || plain.size() > kMost * kBytesOfCharacter) {
    return std::nullopt;  // whatever its characters are
  }
  const std::vector<std::string_view> characters = Characters(plain);
  if (characters.size() < kFewest || characters.size() > kMost) {
    return std::nullopt;
  }
  std::optional<Designator> best;
  bool ambiguous = false;
  for (std::size_t count = 1; count <= 4 && count < characters.size(); ++count) {
    double sure = 1;
    std::size_t real = 0;
    const std::string letters = Letters(characters, count, tables, sure);
    const auto known = tables.designator_classes.find(letters);
    if (letters.empty() || known == tables.designator_classes.end()) {
      continue;
    }
    const std::string number = Number(characters, count, tables, sure, real);
    const auto designator = number.empty() ? std::nullopt : ParseDesignator(letters + number, tables);
    if (!designator || number.front() == '0') {
      continue;
    }
    if (real == 0) {
      // CI may be C1, but "is" and "so" are words, and SECTION VI is a number of its own.
      const bool plain_strokes = std::all_of(characters.begin() + static_cast<std::ptrdiff_t>(count), characters.end(),
                                             [&](const auto& c) { return LookAlikeOf(c, tables).sure; });
      const bool small = lone_strokes == LoneStrokes::kAllowSmall;
      if (lone_strokes == LoneStrokes::kRefuse || (known->second < 0.95 && !small) || count > 2 || sure < 0.7 ||
          !plain_strokes || (!IsUpper(plain.front()) && !small)) {
        continue;
      }
      sure *= kOnlyLookAlikes;
    }
    Designator repaired = *designator;
    repaired.sure *= sure;
    if (!best || repaired.sure > best->sure) {
      ambiguous = best && best->Text() != repaired.Text() && best->sure > 0.8 * repaired.sure;
      best = repaired;
    } else if (repaired.Text() != best->Text() && repaired.sure > 0.8 * best->sure) {
      ambiguous = true;
    }
  }
  if (!best && !ambiguous) {
    return BehindAStroke(plain, tables);
  }
  return ambiguous ? std::nullopt : best;
}

}  // namespace benchleaf::extract
