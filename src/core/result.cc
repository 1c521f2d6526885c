#include "benchleaf/core/result.h"

#include <array>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::array<std::pair<ErrorCode, std::string_view>, 12> kNames = {{
    {ErrorCode::kMissing, "missing"},
    {ErrorCode::kEmpty, "empty"},
    {ErrorCode::kDamaged, "damaged"},
    {ErrorCode::kLocked, "locked"},
    {ErrorCode::kUnsupported, "unsupported"},
    {ErrorCode::kTooLarge, "too large"},
    {ErrorCode::kBusy, "busy"},
    {ErrorCode::kForeign, "foreign"},
    {ErrorCode::kIo, "io"},
    {ErrorCode::kUsage, "usage"},
    {ErrorCode::kTimeout, "timeout"},
    {ErrorCode::kCrashed, "crashed"},
}};

}  // namespace

std::string_view Name(ErrorCode code) {
  for (const auto& [known, name] : kNames) {
    if (known == code) {
      return name;
    }
  }
  return "cancelled";
}

ErrorCode ErrorCodeNamed(std::string_view name) {
  for (const auto& [code, known] : kNames) {
    if (known == name) {
      return code;
    }
  }
  return name == Name(ErrorCode::kCancelled) ? ErrorCode::kCancelled : ErrorCode::kDamaged;
}

std::string Error::ToString() const {
  std::string text = source;
  if (page > 0) {
    text += (text.empty() ? "page " : ", page ") + std::to_string(page);
  }
  return text.empty() ? message : text + ": " + message;
}

}  // namespace benchleaf
