#include "extract/semiconductor.h"

#include "extract/plain_text.h"

#include <cstddef>

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

}  // namespace benchleaf::extract
