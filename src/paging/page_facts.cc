#include "benchleaf/paging/page_facts.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::array<std::pair<PageKind, std::string_view>, 13> kNames = {{
    {PageKind::kSchematic, "schematic"},
    {PageKind::kPartsList, "parts list"},
    {PageKind::kPartsLocator, "parts locator"},
    {PageKind::kText, "text"},
    {PageKind::kCover, "cover"},
    {PageKind::kContents, "contents"},
    {PageKind::kSpecifications, "specifications"},
    {PageKind::kAlignment, "alignment"},
    {PageKind::kBlockDiagram, "block diagram"},
    {PageKind::kWaveforms, "waveforms"},
    {PageKind::kTubeLayout, "tube layout"},
    {PageKind::kTroubleshooting, "troubleshooting"},
    {PageKind::kOther, "other"},
}};

}  // namespace

std::string_view Name(PageKind kind) {
  return std::find_if(kNames.begin(), kNames.end(), [&](const auto& pair) { return pair.first == kind; })->second;
}

std::optional<PageKind> PageKindNamed(std::string_view name) {
  const auto* found = std::find_if(kNames.begin(), kNames.end(), [&](const auto& pair) { return pair.second == name; });
  if (found == kNames.end()) {
    return std::nullopt;
  }
  return found->first;
}

bool MayShowParts(PageKind kind) {
  return kind == PageKind::kSchematic || kind == PageKind::kPartsLocator || kind == PageKind::kOther;
}

}  // namespace benchleaf
