#include "record/cbor_writer.h"

#include "record/cbor_items.h"
#include "record/utf8.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <limits>

namespace benchleaf {

namespace {

char FirstByte(unsigned major, unsigned low) { return static_cast<char>(major << 5U | low); }

// Whether a number of half the size holds the value exactly.
bool IsSingle(double value) {
  return std::abs(value) <= static_cast<double>(std::numeric_limits<float>::max()) &&
         static_cast<double>(static_cast<float>(value)) == value;
}

}  // namespace

void CborWriter::Following(unsigned major, unsigned low, std::uint64_t number, std::size_t size) {
  std::array<char, 1 + sizeof(number)> item{FirstByte(major, low)};
  for (std::size_t i = size; i > 0; --i) {
    item[i] = static_cast<char>(number & 0xFFU);
    number >>= 8U;
  }
  bytes_.append(item.data(), 1 + size);
}

void CborWriter::Head(unsigned major, std::uint64_t number) {
  if (number < 24) {
    bytes_ += FirstByte(major, static_cast<unsigned>(number));
    return;
  }
  // 24 to 27: the number stands in the next 1, 2, 4 or 8 bytes.
  const unsigned low = number <= 0xFF ? 24 : number <= 0xFFFF ? 25 : number <= 0xFFFFFFFF ? 26 : 27;
  Following(major, low, number, std::size_t{1} << (low - 24));
}

void CborWriter::String(unsigned major, std::string_view bytes) {
  Head(major, bytes.size());
  bytes_ += bytes;
}

void CborWriter::Fraction(double fraction, double units) {
  // What is not a number is no more than 0.
  Integer(fraction > 0 ? std::llround(std::min(fraction, 1.0) * units) : 0);
}

void CborWriter::Array(std::size_t length) { Head(cbor::kArray, length); }

void CborWriter::Integer(std::int64_t number) {
  if (number >= 0) {
    Head(cbor::kUnsigned, static_cast<std::uint64_t>(number));
  } else {
    Head(cbor::kNegative, static_cast<std::uint64_t>(-1 - number));
  }
}

void CborWriter::Real(double value) {
  const double finite = std::isfinite(value) ? value : 0.0;
  if (IsSingle(finite)) {
    Following(cbor::kSimple, cbor::kSingle, std::bit_cast<std::uint32_t>(static_cast<float>(finite)), sizeof(float));
  } else {
    Following(cbor::kSimple, cbor::kDouble, std::bit_cast<std::uint64_t>(finite), sizeof(double));
  }
}

void CborWriter::Confidence(double confidence) { Fraction(confidence, cbor::kConfidenceUnits); }

void CborWriter::Bool(bool truth) { bytes_ += FirstByte(cbor::kSimple, truth ? cbor::kTrue : cbor::kFalse); }

void CborWriter::Null() { bytes_ += FirstByte(cbor::kSimple, cbor::kNull); }

void CborWriter::Text(std::string_view text) {
  if (IsUtf8(text)) {
    String(cbor::kText, text);
  } else {
    String(cbor::kText, MendedUtf8(text));
  }
}

void CborWriter::Name(std::string_view name) { String(IsUtf8(name) ? cbor::kText : cbor::kBytes, name); }

void CborWriter::Box(const FractionBox& box) {
  Array(4);
  for (const double fraction : {box.x, box.y, box.width, box.height}) Fraction(fraction, cbor::kFractionUnits);
}

void CborWriter::Failure(const std::optional<Error>& failure) {
  if (!failure) {
    Null();
    return;
  }
  Array(4);
  Text(benchleaf::Name(failure->code));
  Text(failure->message);
  Name(failure->source);
  Integer(failure->page);
}

}  // namespace benchleaf
