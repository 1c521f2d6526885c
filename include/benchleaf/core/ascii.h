// The characters that type numbers, designators and tables are written in. Independent of the locale, unlike <cctype>.

#ifndef BENCHLEAF_CORE_ASCII_H_
#define BENCHLEAF_CORE_ASCII_H_

namespace benchleaf {

constexpr bool IsDigit(char c) { return c >= '0' && c <= '9'; }
constexpr bool IsUpper(char c) { return c >= 'A' && c <= 'Z'; }
constexpr bool IsLower(char c) { return c >= 'a' && c <= 'z'; }
constexpr bool IsLetter(char c) { return IsUpper(c) || IsLower(c); }
constexpr bool IsAlnum(char c) { return IsLetter(c) || IsDigit(c); }
constexpr char ToUpper(char c) { return IsLower(c) ? static_cast<char>(c - 'a' + 'A') : c; }

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_ASCII_H_
