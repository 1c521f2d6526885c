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

std::string Written(const std::string& text) {
  using nlohmann::json;
  return json(text).dump(-1, ' ', false, json::error_handler_t::replace);
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
