#include "extract/look_alikes.h"

#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"
#include "benchleaf/extract/extract.h"

#include <cstddef>

namespace benchleaf {
namespace extract {

std::string Folded(std::string_view text, const Rules::Tables& tables) {
  // Capitals first: a person types 6bq7 for 6BQ7, and both must fold alike.
  const std::string upper = Upper(text);
  std::string folded;
  folded.reserve(upper.size());
  for (std::size_t at = 0; at < upper.size();) {
    const std::string_view character = std::string_view(upper).substr(at, CharacterLength(upper, at));
    at += character.size();
    const char fold = LookAlikeOf(character, tables).fold;
    if (fold == 0) {
      folded += character;
    } else {
      folded += fold;
    }
  }
  return folded;
}

std::optional<double> Unlikeness(const std::vector<std::string_view>& read, std::string_view meant,
                                 const Rules::Tables& tables) {
  constexpr double kSmallLetter = 0.1;
  constexpr double kEveryday = 0.5;
  if (read.size() != meant.size()) {
    return std::nullopt;
  }
  double sum = 0;
  for (std::size_t i = 0; i < meant.size(); ++i) {
    const std::string_view right = meant.substr(i, 1);
    if (read[i] == right) {
      continue;
    }
    if (Upper(read[i]) == right) {
      sum += kSmallLetter;
      continue;
    }
    const LookAlike seen = LookAlikeOf(read[i], tables);
    const LookAlike wanted = LookAlikeOf(right, tables);
    if (seen.fold == 0 || seen.fold != wanted.fold) {
      return std::nullopt;
    }
    sum += seen.sure && wanted.sure ? kEveryday : 1;
  }
  return sum;
}

}  // namespace extract

std::string FoldLookAlikes(const std::string& text, const Rules& rules) {
  return extract::Folded(text, rules.tables());
}

}  // namespace benchleaf
