// The fields that messages are made of; protocol.h tells their forms.

#ifndef BENCHLEAF_SRC_WORK_MESSAGE_FIELDS_H_
#define BENCHLEAF_SRC_WORK_MESSAGE_FIELDS_H_

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace benchleaf {

inline constexpr std::size_t kNumberBytes = 4;

void PutByte(std::string& out, std::uint8_t value);
void PutNumber(std::string& out, std::uint32_t value);
void PutText(std::string& out, std::string_view text);

// REQUIRES: kNumberBytes bytes.
std::uint32_t NumberAt(std::string_view bytes);

// Takes fields from the front of a body. After the first field that does not fit, every further one is empty and
// Finished() is false, so that a caller checks once, at the end.
class Fields {
 public:
  explicit Fields(std::string_view body) : rest_(body) {}

  std::uint8_t Byte() {
    const std::string_view bytes = Take(1);
    return bytes.empty() ? std::uint8_t{0} : static_cast<std::uint8_t>(bytes[0]);
  }

  std::uint32_t Number() {
    const std::string_view bytes = Take(kNumberBytes);
    return bytes.empty() ? 0 : NumberAt(bytes);
  }

  std::string_view Text() { return Take(Number()); }

  // What a field holds makes no sense.
  void Refuse() { fits_ = false; }

  // Whether a field did not fit.
  bool failed() const { return !fits_; }

  // Whether every field fitted and nothing is left.
  bool Finished() const { return fits_ && rest_.empty(); }

 private:
  std::string_view Take(std::size_t size) {
    if (!fits_ || size > rest_.size()) {
      fits_ = false;
      return {};
    }
    const std::string_view taken = rest_.substr(0, size);
    rest_.remove_prefix(size);
    return taken;
  }

  std::string_view rest_;
  bool fits_ = true;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_MESSAGE_FIELDS_H_
