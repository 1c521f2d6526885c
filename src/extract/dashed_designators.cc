#include "extract/dashed_designators.h"

#include "extract/designator.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <functional>
#include <iterator>
#include <map>
#include <set>

namespace benchleaf::extract {
namespace {

// `letters` tells of which it is a designator's dash.
template <class Letters>
std::string Without(std::string_view plain, const Letters& letters, std::string_view dashes) {
  std::string text;
  bool begins = true;  // a term may begin here
  for (std::size_t at = 0; at < plain.size();) {
    const std::string_view rest = plain.substr(at);
    const std::size_t dash = begins ? DashBehindLetters(rest, dashes) : 0;
    if (dash > 0 && letters(rest.substr(0, dash))) {
      text += rest.substr(0, dash);
      at += dash + 1;
    }
    begins = !IsAlnum(plain[at]);
    text += plain[at++];
  }
  return text;
}

// What a dash is read as.
constexpr std::string_view kReadForDashes = "-.=_~";

// The numbers of the page's dashed designators, by their letters.
using Numbers = std::map<std::string, std::set<int>, std::less<>>;

// How many of the numbers are as low as if they counted `parts`, or have a neighbour among them.
int CountingParts(const std::set<int>& numbers, int parts) {
  constexpr int kNeighbour = 2;
  int counting = 0;
  for (auto number = numbers.begin(); number != numbers.end(); ++number) {
    const auto next = std::next(number);
    const bool beside = (next != numbers.end() && *next - *number <= kNeighbour) ||
                        (number != numbers.begin() && *number - *std::prev(number) <= kNeighbour);
    counting += *number <= 2 * parts || beside ? 1 : 0;
  }
  return counting;
}

// The classes of which the page prints designators with a dash.
std::set<std::string, std::less<>> DashedClasses(const std::vector<Piece>& pieces, const Rules::Tables& tables) {
  constexpr int kFewest = 4;
  int dashed = 0;
  double sure_dashed = 0;
  double sure_plain = 0;  // scraps of a badly read page look like designators, but are read less surely
  Numbers numbers;
  for (const Piece& piece : pieces) {
    std::string_view text = TrimmedView(piece.text);
    text = text.substr(0, text.find_first_of(",/&~:"));  // of several, the first
    if (ParseDesignator(text, tables)) {
      sure_plain += piece.confidence;
    } else if (DashBehindLetters(text) > 0) {
      if (const auto designator = ParseDesignator(WithoutDesignatorDashes(text, tables), tables)) {
        ++dashed;
        sure_dashed += piece.confidence;
        numbers[designator->letters].insert(NumberOf(*designator));
      }
    }
  }
  if (dashed < kFewest || sure_dashed <= sure_plain) {
    return {};
  }
  int parts = 0;
  for (const auto& [letters, own] : numbers) parts += static_cast<int>(own.size());
  int counting_parts = 0;
  std::set<std::string, std::less<>> classes;
  for (const auto& [letters, own] : numbers) {
    const int counting = CountingParts(own, parts);
    counting_parts += counting;
    if (2 * counting >= static_cast<int>(own.size())) {
      classes.insert(letters);
    }
  }
  return 5 * counting_parts >= 3 * parts ? classes : std::set<std::string, std::less<>>();
}

}  // namespace

std::size_t DashBehindLetters(std::string_view text, std::string_view dashes) {
  constexpr std::ptrdiff_t kMostFigures = 3;
  const auto* const dash = std::find_if_not(text.begin(), text.end(), IsUpper);
  if (dash == text.begin() || dash == text.end() || dashes.find(*dash) == std::string_view::npos) {
    return 0;
  }
  const auto figures = std::find_if_not(dash + 1, text.end(), IsDigit) - (dash + 1);
  return figures > 0 && figures <= kMostFigures ? static_cast<std::size_t>(dash - text.begin()) : 0;
}

std::string WithoutDesignatorDashes(std::string_view plain, const Rules::Tables& tables) {
  return Without(
      plain, [&](std::string_view letters) { return IsDesignatorClass(letters, tables); }, "-");
}

std::vector<Piece> UndashedPiecesOf(const PageReading& reading, const Rules::Tables& tables) {
  std::vector<Piece> pieces = PiecesOf(reading);
  const auto classes = DashedClasses(pieces, tables);
  if (classes.empty()) {
    return pieces;
  }
  const auto without = [&](const std::string& text) {
    return Without(
        text, [&](std::string_view letters) { return classes.count(letters) != 0; }, kReadForDashes);
  };
  for (Piece& piece : pieces) {
    piece.text = without(piece.text);
    for (Alternative& other : piece.alternatives) other.text = without(other.text);
  }
  return pieces;
}

}  // namespace benchleaf::extract
