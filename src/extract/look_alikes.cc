#include "extract/look_alikes.h"

#include "extract/plain_text.h"

#include "benchleaf/extract/extract.h"

namespace benchleaf {
namespace extract {

LookAlike LookAlikeOf(const std::string& character, const Rules::Tables& tables) {
  const auto found = tables.look_alikes.find(character);
  return found == tables.look_alikes.end() ? LookAlike{} : found->second;
}

std::string Folded(std::string_view text, const Rules::Tables& tables) {
  // Capitals first: a person types 6bq7 for 6BQ7, and both must fold alike.
  const std::string upper = Upper(text);
  std::string folded;
  folded.reserve(upper.size());
  for (const std::string& character : Characters(upper)) {
    const char fold = LookAlikeOf(character, tables).fold;
    if (fold == 0) {
      folded += character;
    } else {
      folded += fold;
    }
  }
  return folded;
}

}  // namespace extract

std::string FoldLookAlikes(const std::string& text, const Rules& rules) {
  return extract::Folded(text, rules.tables());
}

}  // namespace benchleaf
