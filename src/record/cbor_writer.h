// Writes the items of a CBOR value one after the other, as CborReader reads them.

#ifndef BENCHLEAF_RECORD_CBOR_WRITER_H_
#define BENCHLEAF_RECORD_CBOR_WRITER_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf {

// Straight into bytes: a page has some thousand items, and a tree of them, as the JSON library builds it, takes ten
// times as long as the bytes. Every item has its shortest form, so that the same record always gives the same bytes.
class CborWriter {
 public:
  // Begins an array, whose `length` items are to follow.
  void Array(std::size_t length);
  void Integer(std::int64_t number);
  // A number that is no fraction, in half the bytes where these hold it exactly; 0 when it is not finite.
  void Real(double value);
  // Cut to 0..1.
  void Confidence(double confidence);
  void Bool(bool truth);
  void Null();
  // A text string, mended where it is not UTF-8.
  void Text(std::string_view text);
  // A name that must come back as it was, such as a path: a text string, or a byte string when it is not UTF-8.
  void Name(std::string_view name);
  // [x, y, width, height], cut to 0..1.
  void Box(const FractionBox& box);
  // null, or [code, message, source, page].
  void Failure(const std::optional<Error>& failure);

  // What was written.
  std::string Take() { return std::move(bytes_); }

 private:
  void Head(unsigned major, std::uint64_t number);
  // A first byte and `size` bytes of a number behind it, the highest first.
  void Following(unsigned major, unsigned low, std::uint64_t number, std::size_t size);
  void String(unsigned major, std::string_view bytes);
  void Fraction(double fraction, double units);

  std::string bytes_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_CBOR_WRITER_H_
