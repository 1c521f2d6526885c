#include "extract/list_words.h"

#include "extract/plain_text.h"

#include "benchleaf/core/edits.h"

#include <algorithm>

namespace benchleaf::extract {
namespace {

const std::vector<std::string>& PhrasesOf(ListRole role, const Rules::Tables& tables) {
  static const std::vector<std::string> kNone;
  const auto found = tables.list_words.find(role);
  return found == tables.list_words.end() ? kNone : found->second;
}

void ReplaceInside(std::string& text, const std::string& word, char sign) {
  // Only behind a figure or suffix and in front of a designator: STOP1 holds no "to".
  std::string upper = Upper(text);
  for (std::size_t at = upper.find(word, 2); at != std::string::npos; at = upper.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    const bool behind_number = IsDigit(text[at - 1]) || (IsUpper(text[at - 1]) && IsDigit(text[at - 2]));
    if (behind_number && end < text.size() && IsAlnum(text[end])) {
      text.replace(at, word.size(), 1, sign);
      upper.replace(at, word.size(), 1, sign);
    }
  }
}

}  // namespace

std::string ListWord(std::string_view plain) {
  if (plain == "\"" || plain == "''" || plain == ",,") {
    return std::string(plain);  // signs of repetition
  }
  std::string word(plain);
  std::erase_if(word, [](char c) { return c == '.' || c == '\'' || c == '"'; });
  const std::string_view trimmed = TrimmedView(word);
  word.erase(static_cast<std::size_t>(trimmed.data() + trimmed.size() - word.data()));
  word.erase(0, word.size() - trimmed.size());
  std::transform(word.begin(), word.end(), word.begin(), ToUpper);
  return word;
}

std::size_t PhraseAt(const std::vector<std::string>& words, std::size_t at, ListRole role,
                     const Rules::Tables& tables) {
  for (const std::string_view phrase : PhrasesOf(role, tables)) {
    std::size_t count = 0;
    std::size_t from = 0;
    bool fits = true;
    while (fits && from <= phrase.size()) {
      const std::size_t space = std::min(phrase.find(' ', from), phrase.size());
      fits = at + count < words.size() && words[at + count] == phrase.substr(from, space - from);
      from = space + 1;
      ++count;
    }
    if (fits) {
      return count;
    }
  }
  return 0;
}

Roles RolesOf(std::string_view word, const Rules::Tables& tables) {
  const auto found = tables.word_roles.find(word);
  return found == tables.word_roles.end() ? Roles() : found->second;
}

bool HasRole(std::string_view word, ListRole role, const Rules::Tables& tables) {
  return RolesOf(word, tables).Has(role);
}

bool MayHaveRole(const std::string& word, ListRole role, const Rules::Tables& tables) {
  return tables.misread_roles_known.Of(std::string(1, static_cast<char>(role)) + word, [&] {
    const auto& phrases = PhrasesOf(role, tables);
    return std::any_of(phrases.begin(), phrases.end(), [&](const std::string& phrase) {
      const int most = phrase.size() >= 7 ? 2 : phrase.size() >= 4 ? 1 : 0;
      return EditsBetween(word, phrase, most) <= most;
    });
  });
}

std::string WithSignsForWords(std::string_view plain, const Rules::Tables& tables) {
  std::string text(plain);
  if (std::none_of(text.begin(), text.end(), IsDigit)) {
    return text;  // there is no figure that a sign could stand behind
  }
  for (const std::string& word : PhrasesOf(ListRole::kRange, tables)) {
    ReplaceInside(text, word, '-');
  }
  for (const std::string& word : PhrasesOf(ListRole::kAnd, tables)) {
    ReplaceInside(text, word, ',');
  }
  return text;
}

}  // namespace benchleaf::extract
