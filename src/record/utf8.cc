#include "record/utf8.h"

#include "benchleaf/core/utf8.h"

#include <nlohmann/json.hpp>

namespace benchleaf {

std::string MendedUtf8(std::string_view text) {
  // Nearly all words are plain ASCII; only the others take the way through the JSON library, which mends as it writes.
  if (IsAscii(text)) return std::string(text);
  using nlohmann::json;
  const std::string written = json(text).dump(-1, ' ', false, json::error_handler_t::replace);
  return json::parse(written).get<std::string>();
}

}  // namespace benchleaf
