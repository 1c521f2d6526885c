#include "record/cbor_items.h"

#include "record/utf8.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace benchleaf {

using nlohmann::json;

namespace {

std::int64_t InUnits(double fraction, double units) {
  if (!(fraction > 0)) return 0;  // also what is not a number
  return std::llround(std::min(fraction, 1.0) * units);
}

}  // namespace

json TextItem(const std::string& text) { return MendedUtf8(text); }

json NameItem(const std::string& name) {
  if (IsUtf8(name)) return name;
  return json::binary(std::vector<std::uint8_t>(name.begin(), name.end()));
}

json RealItem(double value) { return std::isfinite(value) ? value : 0.0; }

json ConfidenceItem(double confidence) { return InUnits(confidence, kConfidenceUnits); }

json FractionBoxItem(const FractionBox& box) {
  return json::array({InUnits(box.x, kFractionUnits), InUnits(box.y, kFractionUnits),
                      InUnits(box.width, kFractionUnits), InUnits(box.height, kFractionUnits)});
}

json FailureItem(const std::optional<Error>& failure) {
  if (!failure) return nullptr;
  return json::array(
      {std::string(Name(failure->code)), TextItem(failure->message), NameItem(failure->source), failure->page});
}

std::string CborBytes(const json& item) {
  std::string bytes;
  json::to_cbor(item, bytes);
  return bytes;
}

}  // namespace benchleaf
