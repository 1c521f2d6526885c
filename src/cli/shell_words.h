// Text as a word of a shell script.

#ifndef BENCHLEAF_SRC_CLI_SHELL_WORDS_H_
#define BENCHLEAF_SRC_CLI_SHELL_WORDS_H_

#include <string>
#include <vector>

namespace benchleaf {

// In single quotes, by the rules of POSIX shells.
std::string Quoted(const std::string& text);

// The texts, each quoted, with spaces between.
std::string QuotedWords(const std::vector<std::string>& texts);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_SHELL_WORDS_H_
