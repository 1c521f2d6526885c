#include "benchleaf/extract/sighting.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::array<std::pair<TermKind, std::string_view>, 6> kNames = {{
    {TermKind::kDesignator, "designator"},
    {TermKind::kTube, "tube"},
    {TermKind::kPartNumber, "part-number"},
    {TermKind::kSemiconductor, "semiconductor"},
    {TermKind::kValue, "value"},
    {TermKind::kItem, "item"},
}};

}  // namespace

std::string_view Name(TermKind kind) {
  return std::find_if(kNames.begin(), kNames.end(), [&](const auto& pair) { return pair.first == kind; })->second;
}

std::optional<TermKind> TermKindNamed(std::string_view name) {
  const auto* found = std::find_if(kNames.begin(), kNames.end(), [&](const auto& pair) { return pair.second == name; });
  if (found == kNames.end()) {
    return std::nullopt;
  }
  return found->first;
}

}  // namespace benchleaf
