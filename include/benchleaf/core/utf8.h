// Whether bytes are text.

#ifndef BENCHLEAF_CORE_UTF8_H_
#define BENCHLEAF_CORE_UTF8_H_

#include <string_view>

namespace benchleaf {

// Whether all bytes are below 0x80.
bool IsAscii(std::string_view text);

// Whether the bytes are UTF-8 as RFC 3629 defines it: shortest forms only, no surrogates, nothing over U+10FFFF.
bool IsUtf8(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_UTF8_H_
