#include "record/cbor_reader.h"

#include "record/cbor_items.h"
#include "record/utf8.h"

#include <bit>
#include <cmath>

namespace benchleaf {

namespace {

constexpr char kNullByte = static_cast<char>(cbor::kSimple << 5U | cbor::kNull);

}  // namespace

void CborReader::Refuse() {
  ok_ = false;
  left_ = {};
}

CborReader::Head CborReader::NextHead() {
  if (left_.empty()) {
    Refuse();
    return {};
  }
  const auto first = static_cast<unsigned char>(left_.front());
  left_.remove_prefix(1);
  Head head;
  head.major = first >> 5U;
  head.low = first & 0x1FU;
  if (head.low < 24) {
    head.number = head.low;
    return head;
  }
  // 24 to 27: the number stands in the next 1, 2, 4 or 8 bytes. Above: unknown length, or no meaning.
  const std::size_t size = std::size_t{1} << (head.low - 24);
  if (head.low > 27 || left_.size() < size) {
    Refuse();
    return {};
  }
  for (const char byte : left_.substr(0, size)) head.number = head.number << 8U | static_cast<unsigned char>(byte);
  left_.remove_prefix(size);
  return head;
}

std::size_t CborReader::Array() {
  const Head head = NextHead();
  // Every item takes a byte at least, so a longer array cannot be true, and counts need no other bound.
  if (head.major != cbor::kArray || head.number > left_.size()) Refuse();
  return ok_ ? static_cast<std::size_t>(head.number) : 0;
}

void CborReader::Array(std::size_t length) {
  if (Array() != length) Refuse();
}

std::int64_t CborReader::Integer(std::int64_t least, std::int64_t most) {
  const Head head = NextHead();
  if (head.major > cbor::kNegative || !std::in_range<std::int64_t>(head.number)) Refuse();
  const auto number = static_cast<std::int64_t>(head.number);
  const std::int64_t value = head.major == cbor::kUnsigned ? number : -1 - number;
  if (value < least || value > most) Refuse();
  return ok_ ? value : 0;
}

int CborReader::Int(int least, int most) { return static_cast<int>(Integer(least, most)); }

double CborReader::Real() {
  const Head head = NextHead();
  double value = 0;
  if (head.major == cbor::kSimple && head.low == cbor::kDouble) {
    value = std::bit_cast<double>(head.number);
  } else if (head.major == cbor::kSimple && head.low == cbor::kSingle) {
    value = static_cast<double>(std::bit_cast<float>(static_cast<std::uint32_t>(head.number)));
  } else {
    Refuse();
  }
  if (!std::isfinite(value)) Refuse();
  return ok_ ? value : 0;
}

double CborReader::Confidence() {
  return static_cast<double>(Integer(0, static_cast<std::int64_t>(cbor::kConfidenceUnits))) / cbor::kConfidenceUnits;
}

bool CborReader::Bool() {
  const Head head = NextHead();
  if (head.major != cbor::kSimple || (head.low != cbor::kTrue && head.low != cbor::kFalse)) Refuse();
  return ok_ && head.low == cbor::kTrue;
}

std::string CborReader::NextString(unsigned major) {
  const Head head = NextHead();
  if (head.major != major || head.number > left_.size()) {
    Refuse();
    return {};
  }
  const auto size = static_cast<std::size_t>(head.number);
  std::string text(left_.substr(0, size));
  left_.remove_prefix(size);
  return text;
}

std::string CborReader::Text() {
  std::string text = NextString(cbor::kText);
  if (!IsUtf8(text)) {
    Refuse();
    text.clear();
  }
  return text;
}

unsigned CborReader::PeekMajor() const {
  return left_.empty() ? cbor::kSimple : static_cast<unsigned char>(left_.front()) >> 5U;
}

std::string CborReader::Name() { return PeekMajor() == cbor::kBytes ? NextString(cbor::kBytes) : Text(); }

bool CborReader::Null() {
  if (left_.empty() || left_.front() != kNullByte) return false;
  left_.remove_prefix(1);
  return true;
}

FractionBox CborReader::Box() {
  const auto fraction = [this] {
    return static_cast<double>(Integer(0, static_cast<std::int64_t>(cbor::kFractionUnits))) / cbor::kFractionUnits;
  };
  Array(4);
  FractionBox box;
  box.x = fraction();
  box.y = fraction();
  box.width = fraction();
  box.height = fraction();
  return box;
}

std::optional<Error> CborReader::Failure() {
  if (Null()) return std::nullopt;
  Array(4);
  Error error;
  error.code = ErrorCodeNamed(Text());
  error.message = Text();
  error.source = Name();
  error.page = Int(0);
  return error;
}

}  // namespace benchleaf
