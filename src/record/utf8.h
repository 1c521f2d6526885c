// Text that is certain to be UTF-8, as JSON and CBOR demand of their strings.

#ifndef BENCHLEAF_RECORD_UTF8_H_
#define BENCHLEAF_RECORD_UTF8_H_

#include "benchleaf/core/utf8.h"

#include <string>
#include <string_view>

namespace benchleaf {

// The text, with U+FFFD in place of whatever is not UTF-8.
std::string MendedUtf8(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_UTF8_H_
