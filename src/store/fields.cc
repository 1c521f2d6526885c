#include "store/fields.h"

#include <xapian.h>

namespace benchleaf::store {

void ThrowDamaged() { throw Xapian::DatabaseCorruptError("a document of the index is damaged"); }

// Numbers: 7 bits a byte from the lowest, the top bit set on all but the last.
void FieldWriter::Number(std::uint64_t number) {
  while (number >= 0x80) {
    data_ += static_cast<char>((number & 0x7FU) | 0x80U);
    number >>= 7U;
  }
  data_ += static_cast<char>(number);
}

void FieldWriter::Text(std::string_view text) {
  Number(text.size());
  data_ += text;
}

std::uint64_t FieldReader::Number() {
  std::uint64_t number = 0;
  for (unsigned shift = 0; shift < 64 && !left_.empty(); shift += 7) {
    const auto byte = static_cast<unsigned char>(left_.front());
    left_.remove_prefix(1);
    number |= static_cast<std::uint64_t>(byte & 0x7FU) << shift;
    if (byte < 0x80) return number;
  }
  ThrowDamaged();
}

std::uint64_t FieldReader::Number(std::uint64_t most) {
  const std::uint64_t number = Number();
  if (number > most) ThrowDamaged();
  return number;
}

std::uint64_t FieldReader::Count() {
  const std::uint64_t count = Number();
  if (count > left_.size()) ThrowDamaged();
  return count;
}

std::string_view FieldReader::Text() {
  const std::uint64_t size = Count();
  const std::string_view text = left_.substr(0, size);
  left_.remove_prefix(size);
  return text;
}

}  // namespace benchleaf::store
