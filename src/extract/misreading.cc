#include "extract/misreading.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <array>
#include <cstddef>

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

// Pairs that blurred or broken print makes alike, beyond those that have one outline.
constexpr std::array<std::string_view, 28> kPairs = {"06", "08", "09", "14", "17", "27", "35", "38", "39", "49",
                                                     "56", "58", "68", "89", "BR", "KR", "CG", "CO", "CL", "EF",
                                                     "VY", "IT", "IL", "LT", "OQ", "HR", "TY", "GO"};

// Every two characters of a word are compared, so the pairs lie in a table.
constexpr std::size_t kCharacters = 128;
constexpr auto kPrintedAlikeTable = [] {
  std::array<std::array<bool, kCharacters>, kCharacters> table{};
  for (const std::string_view pair : kPairs) {
    const auto one = static_cast<std::size_t>(static_cast<unsigned char>(pair[0]));
    const auto other = static_cast<std::size_t>(static_cast<unsigned char>(pair[1]));
    table[one][other] = true;
    table[other][one] = true;
  }
  return table;
}();

double ChangeCost(std::string_view read, char meant, const Rules::Tables& tables) {
  const bool single = read.size() == 1;
  if (single && read.front() == meant) {
    return 0;
  }
  if (single && ToUpper(read.front()) == meant) {
    return kSmallLetter;
  }
  const LookAlike seen = LookAlikeOf(read, tables);
  const LookAlike wanted = LookAlikeOf(std::string_view(&meant, 1), tables);
  if (seen.fold != 0 && seen.fold == wanted.fold) {
    return seen.sure && wanted.sure ? kEveryday : kLookAlike;
  }
  return single && ArePrintedAlike(ToUpper(read.front()), meant) ? kPrintedAlike : kOther;
}

double AddedCost(std::string_view character) {
  return character.size() > 1 || !IsAlnum(character.front()) ? kCostOfASpeck : kAdded;
}

// The costs of having read what was read so far, up to every place in what is meant.
class CostRow {
 public:
  // REQUIRES: meant.size() <= kLongest
  CostRow(std::string_view meant, const Rules::Tables& tables) : meant_(meant), tables_(tables) {
    for (std::size_t j = 1; j <= meant.size(); ++j) {
      row_[j] = row_[j - 1] + kLost;
    }
  }

  // Reads one character more; gives the least cost of all places.
  double Add(std::string_view character) {
    const double added = AddedCost(character);
    double corner = row_[0];
    row_[0] += added;
    double least = row_[0];
    for (std::size_t j = 1; j <= meant_.size(); ++j) {
      const double changed = corner + ChangeCost(character, meant_[j - 1], tables_);
      corner = row_[j];
      row_[j] = std::min({row_[j] + added, row_[j - 1] + kLost, changed});
      least = std::min(least, row_[j]);
    }
    return least;
  }

  double Whole() const { return row_[meant_.size()]; }

 private:
  std::string_view meant_;
  const Rules::Tables& tables_;
  std::array<double, kLongest + 1> row_{};
};

}  // namespace

bool ArePrintedAlike(char a, char b) {
  const std::size_t one = static_cast<unsigned char>(a);
  const std::size_t other = static_cast<unsigned char>(b);
  return one < kCharacters && other < kCharacters && kPrintedAlikeTable[one][other];
}

double MisreadingCost(std::string_view read, std::string_view meant, const Rules::Tables& tables, double enough) {
  if (meant.size() > kLongest) {
    return kNever;
  }
  // Cut first: texts with too many characters have no cost, however soon it is enough.
  std::array<std::string_view, kLongest> characters;
  std::size_t count = 0;
  std::size_t letters = 0;  // and figures
  for (std::size_t at = 0; at < read.size(); ++count) {
    if (count == kLongest) {
      return kNever;
    }
    const std::string_view character = read.substr(at, CharacterLength(read, at));
    characters.at(count) = character;
    letters += AddedCost(character) == kAdded ? 1U : 0U;
    at += character.size();
  }
  // What the lengths alone cost.
  const double too_few = count < meant.size() ? kLost * static_cast<double>(meant.size() - count) : 0;
  const double too_many = letters > meant.size() ? kAdded * static_cast<double>(letters - meant.size()) : 0;
  if (std::max(too_few, too_many) >= enough) {
    return std::max(too_few, too_many);
  }
  CostRow row(meant, tables);
  for (std::size_t i = 0; i < count; ++i) {
    if (const double least = row.Add(characters[i]); least >= enough) {
      return least;
    }
  }
  return row.Whole();
}

double LeastMisreadingCost(std::string_view beginning, std::string_view meant, const Rules::Tables& tables) {
  if (meant.size() > kLongest) {
    return kNever;
  }
  CostRow row(meant, tables);
  double least = 0;
  std::size_t count = 0;
  for (std::size_t at = 0; at < beginning.size(); ++count) {
    if (count == kLongest) {
      return kNever;
    }
    const std::string_view character = beginning.substr(at, CharacterLength(beginning, at));
    least = row.Add(character);
    at += character.size();
  }
  return least;
}

bool MayHold(std::string_view read, char meant, const Rules::Tables& tables) {
  for (std::size_t at = 0; at < read.size();) {
    const std::string_view character = read.substr(at, CharacterLength(read, at));
    if (ChangeCost(character, meant, tables) <= kPrintedAlike) {
      return true;
    }
    at += character.size();
  }
  return false;
}

}  // namespace benchleaf::extract
