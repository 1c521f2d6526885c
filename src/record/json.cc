#include "benchleaf/record/json.h"

#include <nlohmann/json.hpp>

#include <array>
#include <charconv>
#include <cmath>

namespace benchleaf {

namespace {

// At most 4 decimals, none that are zero at the end: 0.5, 0.0123, 3. JSON has no word for what is not finite.
std::string Written(double value) {
  if (!std::isfinite(value)) return "null";
  // The largest double has 309 digits before the point.
  std::array<char, 320> digits{};
  const auto [end, code] =
      std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed, 4);
  std::string text(digits.data(), end);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

// A string literal. What a terminal would obey is escaped: JSON asks that of the controls below U+0020 only, but U+007F
// to U+009F are controls too (ISO/IEC 6429).
std::string Written(const std::string& text) {
  using nlohmann::json;
  std::string plain = json(text).dump(-1, ' ', false, json::error_handler_t::replace);
  if (plain.find_first_of("\x7F\xC2") == std::string::npos) return plain;
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string escaped;
  for (std::size_t i = 0; i < plain.size(); ++i) {
    const auto next = i + 1 < plain.size() ? static_cast<unsigned char>(plain[i + 1]) : 0U;
    const bool two_bytes = plain[i] == '\xC2' && next >= 0x80 && next < 0xA0;
    if (!two_bytes && plain[i] != '\x7F') {
      escaped += plain[i];
      continue;
    }
    const unsigned code = two_bytes ? next : 0x7FU;
    escaped += "\\u00";
    escaped += kDigits[code >> 4U];
    escaped += kDigits[code & 15U];
    if (two_bytes) ++i;
  }
  return escaped;
}

}  // namespace

Json Json::Array(std::vector<Json> items) {
  Json json;
  json.value_ = std::move(items);
  return json;
}

Json Json::Object(std::vector<std::pair<std::string, Json>> fields) {
  Json json;
  json.value_ = Fields();
  for (std::pair<std::string, Json>& field : fields) json.Set(std::move(field.first), std::move(field.second));
  return json;
}

void Json::Add(Json item) { std::get<Items>(value_).push_back(std::move(item)); }

void Json::Set(std::string name, Json value) {
  Fields& fields = std::get<Fields>(value_);
  for (auto& [known, old] : fields) {
    if (known == name) {
      old = std::move(value);
      return;
    }
  }
  fields.emplace_back(std::move(name), std::move(value));
}

std::string Json::Dump() const {
  std::string text;
  Append(text);
  return text;
}

void Json::Append(std::string& text) const {
  if (const bool* truth = std::get_if<bool>(&value_)) {
    text += *truth ? "true" : "false";
  } else if (const std::int64_t* integer = std::get_if<std::int64_t>(&value_)) {
    text += std::to_string(*integer);
  } else if (const double* real = std::get_if<double>(&value_)) {
    text += Written(*real);
  } else if (const std::string* words = std::get_if<std::string>(&value_)) {
    text += Written(*words);
  } else if (const Items* items = std::get_if<Items>(&value_)) {
    text += '[';
    for (const Json& item : *items) {
      if (&item != &items->front()) text += ',';
      item.Append(text);
    }
    text += ']';
  } else if (const Fields* fields = std::get_if<Fields>(&value_)) {
    text += '{';
    for (const auto& field : *fields) {
      if (&field != &fields->front()) text += ',';
      text += Written(field.first) + ':';
      field.second.Append(text);
    }
    text += '}';
  } else {
    text += "null";
  }
}

Json ToJson(const FractionBox& box) { return Json::Array({box.x, box.y, box.width, box.height}); }

}  // namespace benchleaf
