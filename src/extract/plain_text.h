// Text as read, brought to the few characters that the rules know.

#ifndef BENCHLEAF_SRC_EXTRACT_PLAIN_TEXT_H_
#define BENCHLEAF_SRC_EXTRACT_PLAIN_TEXT_H_

#include <string>
#include <string_view>

namespace benchleaf::extract {

// Independent of the locale, unlike <cctype>.
constexpr bool IsDigit(char c) { return c >= '0' && c <= '9'; }
constexpr bool IsUpper(char c) { return c >= 'A' && c <= 'Z'; }
constexpr bool IsLower(char c) { return c >= 'a' && c <= 'z'; }
constexpr bool IsLetter(char c) { return IsUpper(c) || IsLower(c); }
constexpr bool IsAlnum(char c) { return IsLetter(c) || IsDigit(c); }
constexpr char ToUpper(char c) { return IsLower(c) ? static_cast<char>(c - 'a' + 'A') : c; }

// ASCII letters to capitals; everything else stays.
std::string Upper(std::string_view text);

// Typographic dashes, quotes, fractions, daggers, micro and ohm signs in their ASCII spelling ("-", "\"", "1/2", "*",
// "u", "OHM"); spaces of every kind left out; case kept; every other character kept.
std::string PlainText(std::string_view text);

// Without the punctuation round it that says nothing about a term: dots, commas, brackets, stars, quotes, dashes, bars.
// A leading dot before a figure stays (.05).
std::string Trimmed(std::string_view plain);
// The same as a view into `plain`.
std::string_view TrimmedView(std::string_view plain);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PLAIN_TEXT_H_
