// Bytes that are, or may be, UTF-8.

#ifndef BENCHLEAF_CORE_UTF8_H_
#define BENCHLEAF_CORE_UTF8_H_

#include <cstddef>
#include <string_view>
#include <vector>

namespace benchleaf {

// Whether all bytes are below 0x80.
bool IsAscii(std::string_view text);

// Whether the bytes are UTF-8 as RFC 3629 defines it: shortest forms only, no surrogates, nothing over U+10FFFF.
bool IsUtf8(std::string_view text);

// The length in bytes of the UTF-8 character at `at`; 1 for a byte that begins none.
// REQUIRES: at < text.size()
std::size_t CharacterLength(std::string_view text, std::size_t at);
// The text cut into UTF-8 characters: views into it.
std::vector<std::string_view> Characters(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_UTF8_H_
