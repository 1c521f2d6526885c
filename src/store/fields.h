// The frame of a document's data: fields one after the other, texts with their length before them, so that a query
// steps over what it does not need without decoding it.

#ifndef BENCHLEAF_STORE_FIELDS_H_
#define BENCHLEAF_STORE_FIELDS_H_

#include <cstdint>
#include <string>
#include <string_view>

namespace benchleaf::store {

class FieldWriter {
 public:
  void Number(std::uint64_t number);
  void Text(std::string_view text);
  std::string Take() { return std::move(data_); }

 private:
  std::string data_;
};

// Throws Xapian::DatabaseCorruptError when a field is not there: documents are read where Xapian's own errors are
// expected too. The texts are views into `data`, which must outlive them.
class FieldReader {
 public:
  explicit FieldReader(std::string_view data) : left_(data) {}

  std::uint64_t Number();
  // A number that fits: at most `most`.
  std::uint64_t Number(std::uint64_t most);
  // A number of things that take a byte each at least.
  std::uint64_t Count();
  std::string_view Text();
  // What has not been read yet.
  std::string_view left() const { return left_; }

 private:
  std::string_view left_;
};

[[noreturn]] void ThrowDamaged();

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_FIELDS_H_
