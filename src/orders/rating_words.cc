#include "orders/rating_words.h"

#include "extract/value.h"

#include "benchleaf/core/ascii.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf::orders {
namespace {

bool IsFigureAt(std::string_view text, std::size_t at) { return at < text.size() && IsDigit(text[at]); }

// Whether a comma or dot at `at` parts two things and is none of a number: the comma of "10,000" and the dot of ".05"
// are of numbers, the dot of "MFD.200" is not.
bool Parts(std::string_view text, std::size_t at) {
  if (text[at] == ',') {
    const bool thousands = at > 0 && IsDigit(text[at - 1]) && IsFigureAt(text, at + 1) && IsFigureAt(text, at + 2) &&
                           IsFigureAt(text, at + 3) && !IsFigureAt(text, at + 4);
    return !thousands;
  }
  if (text[at] == '.') {
    if (!IsFigureAt(text, at + 1)) return true;
    return at > 0 && IsLetter(text[at - 1]);
  }
  return !IsAlnum(text[at]) && text[at] != '/' && text[at] != '-' && text[at] != '%' && text[at] != '+';
}

// 500 of S00: letters that look like figures, in a word that holds a figure and nothing else.
std::string FiguresOf(const std::string& word) {
  std::string figures = word;
  for (char& c : figures) {
    if (c == 'S') c = '5';
    if (c == 'O') c = '0';
    if (c == 'I' || c == 'L') c = '1';
  }
  const bool all = std::all_of(figures.begin(), figures.end(), IsDigit);
  const bool some = std::any_of(word.begin(), word.end(), IsDigit);
  return all && some ? figures : word;
}

// V of V7 and Vv: a comma read as a 7, a blurred letter read twice.
std::string UnitOf(const std::string& word) {
  if (word.size() < 2 || IsDigit(word.front())) return word;
  const std::string shorter = word.substr(0, word.size() - 1);
  const bool blurred = word.back() == '7' || word.back() == shorter.back();
  return blurred && extract::IsValueUnit(shorter) && !extract::IsValueUnit(word) ? shorter : word;
}

// "500V" of "SO0V": figures in front of a unit.
std::string Mended(const std::string& word) {
  std::string unit = UnitOf(word);
  if (unit != word) return unit;
  // The dot of .1 often blurs into a dash.
  const bool dashed =
      word.size() > 1 && word.size() <= 4 && word.front() == '-' && std::all_of(word.begin() + 1, word.end(), IsDigit);
  if (dashed) return "." + word.substr(1);
  std::string figures = FiguresOf(word);
  if (figures != word) return figures;
  for (const std::string_view behind : {"V", "MMF", "MFD"}) {
    if (word.size() <= behind.size() || !std::string_view(word).ends_with(behind)) continue;
    const std::string front = word.substr(0, word.size() - behind.size());
    const std::string mended = FiguresOf(front);
    if (mended != front) return mended + std::string(behind);
  }
  return word;
}

}  // namespace

std::vector<std::string> RatingWords(std::string_view description, std::vector<std::string>& doubts) {
  std::vector<std::string> words(1);
  for (std::size_t i = 0; i < description.size(); ++i) {
    if (Parts(description, i)) {
      if (!words.back().empty()) words.emplace_back();
    } else {
      words.back() += ToUpper(description[i]);
    }
  }
  if (words.back().empty()) words.pop_back();
  for (std::string& word : words) {
    const std::string mended = Mended(word);
    if (mended == word) continue;
    // A unit with a blur behind it is no doubt about a figure.
    if (IsDigit(mended.back()) || IsDigit(mended.front())) {
      doubts.push_back(std::string("'").append(word).append("' taken for ").append(mended));
    }
    word = mended;
  }
  return words;
}

}  // namespace benchleaf::orders
