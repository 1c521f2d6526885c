#include "record/utf8.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace benchleaf {

namespace {

// Nearly all words are plain ASCII; only the others take the way through the JSON library, which mends as it writes.
bool IsAscii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

}  // namespace

std::string MendedUtf8(std::string_view text) {
  if (IsAscii(text)) return std::string(text);
  using nlohmann::json;
  const std::string written = json(text).dump(-1, ' ', false, json::error_handler_t::replace);
  return json::parse(written).get<std::string>();
}

}  // namespace benchleaf
