// A JSON value to build answers with, so that reports need no JSON library of their own.

#ifndef BENCHLEAF_RECORD_JSON_H_
#define BENCHLEAF_RECORD_JSON_H_

#include "benchleaf/core/geometry.h"

#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace benchleaf {

// A JSON value; objects keep the order in which their fields are set.
class Json {
 public:
  Json() : value_(nullptr) {}
  Json(bool value) : value_(value) {}                            // NOLINT(google-explicit-constructor)
  Json(int value) : value_(static_cast<std::int64_t>(value)) {}  // NOLINT(google-explicit-constructor)
  Json(std::int64_t value) : value_(value) {}                    // NOLINT(google-explicit-constructor)
  Json(double value) : value_(value) {}                          // NOLINT(google-explicit-constructor)
  Json(std::string value) : value_(std::move(value)) {}          // NOLINT(google-explicit-constructor)
  Json(const char* value) : value_(std::string(value)) {}        // NOLINT(google-explicit-constructor)

  static Json Array(std::vector<Json> items = {});
  static Json Object(std::vector<std::pair<std::string, Json>> fields = {});

  // REQUIRES: this is an array.
  void Add(Json item);
  // Sets a field, in its old place when there is one of that name.
  // REQUIRES: this is an object.
  void Set(std::string name, Json value);

  // On one line, without a newline at its end. Text that is not UTF-8 is mended with U+FFFD; numbers are written with
  // at most 4 decimals.
  std::string Dump() const;

 private:
  using Items = std::vector<Json>;
  using Fields = std::vector<std::pair<std::string, Json>>;

  void Append(std::string& text) const;

  std::variant<std::nullptr_t, bool, std::int64_t, double, std::string, Items, Fields> value_;
};

// [x, y, width, height], as in the export.
Json ToJson(const FractionBox& box);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_JSON_H_
