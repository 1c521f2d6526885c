#include "work/message_fields.h"

namespace benchleaf {

void PutByte(std::string& out, std::uint8_t value) { out.push_back(static_cast<char>(value)); }

void PutNumber(std::string& out, std::uint32_t value) {
  for (unsigned shift = 0; shift < 32; shift += 8) {
    PutByte(out, static_cast<std::uint8_t>(value >> shift));
  }
}

void PutText(std::string& out, std::string_view text) {
  PutNumber(out, static_cast<std::uint32_t>(text.size()));
  out.append(text);
}

std::uint32_t NumberAt(std::string_view bytes) {
  std::uint32_t value = 0;
  for (std::size_t i = kNumberBytes; i-- > 0;) {
    value = (value << 8U) | static_cast<std::uint8_t>(bytes[i]);
  }
  return value;
}

}  // namespace benchleaf
