#include "extract/semiconductor.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <array>
#include <cstddef>
#include <vector>

namespace benchleaf::extract {
namespace {

bool Holds(std::string_view set, char c) { return set.find(c) != std::string_view::npos; }

// `least` to `most` figures at the front, then at most `letters` capitals and nothing else.
bool IsNumberWithSuffix(std::string_view text, std::size_t least, std::size_t most, std::size_t letters) {
  std::size_t figures = 0;
  while (figures < text.size() && IsDigit(text[figures])) {
    ++figures;
  }
  if (figures < least || figures > most || text.size() - figures > letters) {
    return false;
  }
  for (std::size_t i = figures; i < text.size(); ++i) {
    if (!IsUpper(text[i])) {
      return false;
    }
  }
  return text.front() != '0';
}

}  // namespace

bool IsSemiconductor(std::string_view text) {
  if (text.size() < 4 || text.size() > 9) {
    return false;
  }
  if (text[1] == 'N' && text[0] >= '1' && text[0] <= '6') {
    return IsNumberWithSuffix(text.substr(2), 2, 4, 2);
  }
  if (text[1] == 'S' && text[0] >= '1' && text[0] <= '3') {
    const bool class_letter = Holds("ABCDEFGHJKMRVZ", text[2]);
    return IsNumberWithSuffix(text.substr(class_letter ? 3 : 2), 2, 4, 1);
  }
  if (text[0] == 'O' && Holds("ACP", text[1])) {
    return IsNumberWithSuffix(text.substr(2), 2, 3, 1);
  }
  // The first letter gives the material, the second the function; the serial is three figures, or a letter from the
  // end of the alphabet and two.
  if (Holds("AB", text[0]) && Holds("ACDFLSUYZB", text[1])) {
    return Holds("WXYZ", text[2]) ? IsNumberWithSuffix(text.substr(3), 2, 2, 1)
                                  : IsNumberWithSuffix(text.substr(2), 3, 3, 1);
  }
  return false;
}

namespace {

// The figures and suffix that the rest of a type was read as; empty when it cannot be that. Adds to `unlike`.
std::string Serial(const std::vector<std::string_view>& read, std::size_t from, const Rules::Tables& tables,
                   double& unlike) {
  std::string serial;
  for (std::size_t i = from; i < read.size(); ++i) {
    const std::string_view character = read[i];
    if (character.size() == 1 && IsDigit(character.front())) {
      serial += character;
      continue;
    }
    const LookAlike alike = LookAlikeOf(character, tables);
    const bool last = i + 1 == read.size();
    if (last && i > from && character.size() == 1 && IsUpper(character.front())) {
      serial += character;
    } else if (alike.digit != 0) {
      serial += alike.digit;
      unlike += alike.sure ? 0.5 : 1;
    } else {
      return {};
    }
  }
  return serial;
}

}  // namespace

std::optional<RepairedType> SemiconductorLookingLike(std::string_view plain, const Rules::Tables& tables) {
  constexpr std::array<std::string_view, 13> kFronts = {"1N",  "2N",  "3N",  "1S",  "2SA", "2SB", "2SC",
                                                        "2SD", "2SF", "2SH", "2SJ", "2SK", "3SK"};
  constexpr double kMostUnlike = 1;
  const std::vector<std::string_view> read = Characters(plain);
  std::optional<RepairedType> best;
  double least = kMostUnlike + 1;
  for (const std::string_view front : kFronts) {
    if (read.size() < front.size() + 2) {
      continue;
    }
    if (read[front.size() - 1] != front.substr(front.size() - 1)) {
      continue;
    }
    const std::vector<std::string_view> start(read.begin(), read.begin() + static_cast<std::ptrdiff_t>(front.size()));
    auto unlike = Unlikeness(start, front, tables);
    if (!unlike) {
      continue;
    }
    const std::string type = std::string(front) + Serial(read, front.size(), tables, *unlike);
    if (*unlike <= kMostUnlike && *unlike < least && IsSemiconductor(type)) {
      least = *unlike;
      best = RepairedType{type, *unlike <= 0.5 ? 0.85 : 0.65};
    }
  }
  return best;
}

}  // namespace benchleaf::extract
