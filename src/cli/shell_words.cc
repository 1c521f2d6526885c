#include "cli/shell_words.h"

namespace benchleaf {

std::string Quoted(const std::string& text) {
  std::string quoted = "'";
  for (const char c : text) {
    if (c == '\'') {
      quoted += "'\\''";
    } else {
      quoted += c;
    }
  }
  return quoted + "'";
}

std::string QuotedWords(const std::vector<std::string>& texts) {
  std::string words;
  for (const std::string& text : texts) words += (words.empty() ? "" : " ") + Quoted(text);
  return words;
}

}  // namespace benchleaf
