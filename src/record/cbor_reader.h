// Reads the items of a CBOR value one after the other, checking each.

#ifndef BENCHLEAF_RECORD_CBOR_READER_H_
#define BENCHLEAF_RECORD_CBOR_READER_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/result.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf {

// Takes any bytes. Once an item is not what was asked for, `ok` is false for good and every further item reads as
// empty or zero: a record is read straight through and checked once at its end.
//
// The JSON library is not used to read them: it calls itself for every level of nesting, so that a few hundred
// kilobytes of hostile bytes overflow the stack. Here the caller asks for what its record holds, and nothing else is
// followed: no tags, no maps, no items of unknown length.
class CborReader {
 public:
  // `bytes` must outlive the reader.
  explicit CborReader(std::string_view bytes) : left_(bytes) {}

  // The length of the array that begins here, whose items follow; at most the number of bytes left.
  std::size_t Array();
  // An array of just that length.
  void Array(std::size_t length);

  std::int64_t Integer(std::int64_t least, std::int64_t most);
  int Int(int least = std::numeric_limits<int>::min(), int most = std::numeric_limits<int>::max());
  double Real();  // finite
  double Confidence();
  bool Bool();
  std::string Text();  // UTF-8
  std::string Name();  // text or bytes
  // Takes a null when one stands here.
  bool Null();
  FractionBox Box();
  std::optional<Error> Failure();

  // Marks the bytes as damaged, for a check that the reader does not know.
  void Refuse();

  bool ok() const { return ok_; }
  // Whether all was as asked for and nothing is left.
  bool Done() const { return ok_ && left_.empty(); }

 private:
  // What an item begins with (RFC 8949, section 3): its major type, the low five bits, and the number that they or the
  // bytes behind them give.
  struct Head {
    unsigned major = 0;
    unsigned low = 0;
    std::uint64_t number = 0;
  };
  Head NextHead();
  std::string NextString(unsigned major);
  unsigned PeekMajor() const;

  std::string_view left_;
  bool ok_ = true;
};

// The value that a record's reader has made, or why there is none. `what` names the record.
template <class T>
Result<T> Decoded(const CborReader& reader, T value, std::string_view what) {
  if (reader.Done()) return value;
  return Fail(ErrorCode::kDamaged, "the stored " + std::string(what) + " is damaged");
}

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_CBOR_READER_H_
