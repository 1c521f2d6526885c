#include "extract/misreading.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <numeric>
#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kLongest = 16;  // characters
constexpr double kNever = 50;

// Judged from readings of the development lists at 200 and 150 dpi.
constexpr double kSmallLetter = 0.3;
constexpr double kEveryday = 0.5;  // I for 1
constexpr double kLookAlike = 1;   // S for 5
constexpr double kPrintedAlike = 1.5;
constexpr double kOther = 2.5;
constexpr double kLost = 2.2;
constexpr double kAdded = 2.2;
constexpr double kSpeckAdded = 0.7;

// Pairs that blurred or broken print makes alike, beyond those that have one outline.
bool ArePrintedAlike(char a, char b) {
  constexpr std::array<std::string_view, 28> kPairs = {"06", "08", "09", "14", "17", "27", "35", "38", "39", "49",
                                                       "56", "58", "68", "89", "BR", "KR", "CG", "CO", "CL", "EF",
                                                       "VY", "IT", "IL", "LT", "OQ", "HR", "TY", "GO"};
  const std::array<char, 2> pair = {std::min(a, b), std::max(a, b)};
  return std::find(kPairs.begin(), kPairs.end(), std::string_view(pair.data(), pair.size())) != kPairs.end();
}

double ChangeCost(const std::string& read, char meant, const Rules::Tables& tables) {
  const std::string right(1, meant);
  if (read == right) {
    return 0;
  }
  if (Upper(read) == right) {
    return kSmallLetter;
  }
  const LookAlike seen = LookAlikeOf(read, tables);
  const LookAlike wanted = LookAlikeOf(right, tables);
  if (seen.fold != 0 && seen.fold == wanted.fold) {
    return seen.sure && wanted.sure ? kEveryday : kLookAlike;
  }
  return read.size() == 1 && ArePrintedAlike(ToUpper(read.front()), meant) ? kPrintedAlike : kOther;
}

double AddedCost(const std::string& character) {
  return character.size() > 1 || !IsAlnum(character.front()) ? kSpeckAdded : kAdded;
}

}  // namespace

double MisreadingCost(std::string_view read, std::string_view meant, const Rules::Tables& tables) {
  const std::vector<std::string> characters = Characters(read);
  if (characters.size() > kLongest || meant.size() > kLongest) {
    return kNever;
  }
  std::array<double, kLongest + 1> row{};
  for (std::size_t j = 1; j <= meant.size(); ++j) {
    row[j] = row[j - 1] + kLost;
  }
  for (const std::string& character : characters) {
    const double added = AddedCost(character);
    double corner = row[0];
    row[0] += added;
    for (std::size_t j = 1; j <= meant.size(); ++j) {
      const double changed = corner + ChangeCost(character, meant[j - 1], tables);
      corner = row[j];
      row[j] = std::min({row[j] + added, row[j - 1] + kLost, changed});
    }
  }
  return row[meant.size()];
}

bool MayHold(std::string_view read, char meant, const Rules::Tables& tables) {
  const std::vector<std::string> characters = Characters(read);
  return std::any_of(characters.begin(), characters.end(), [&](const std::string& character) {
    return ChangeCost(character, meant, tables) <= kPrintedAlike;
  });
}

}  // namespace benchleaf::extract
