#include "clean/binding.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

constexpr int kBands = 12;             // of rows, each looked at on its own
constexpr int kFewestBands = 10;       // that must show the shadow
constexpr double kShaded = 0.8;        // of the paper's level, at the deepest
constexpr double kLit = 0.9;           // at both sides
constexpr double kLean = 0.1;          // of the page's height, by which the shadow may wander from top to foot
constexpr double kWidest = 0.06;       // of the page's width, from the deepest line to light
constexpr double kOuterZone = 0.17;    // of the page's width
constexpr double kInnerZone = 0.1;     // to either side of the middle
constexpr double kSpreadShape = 1.15;  // width over height of two pages side by side, at least

using Profile = std::vector<int>;

// How light each column of a band is, its ink left aside; the lightest of three neighbours, so that rules do not count.
Profile LightOf(const PageCells& cells, int band) {
  const int top = cells.height * band / kBands;
  const int bottom = cells.height * (band + 1) / kBands;
  Profile upper(static_cast<std::size_t>(cells.width));
  std::vector<std::uint8_t> column;
  for (int x = 0; x < cells.width; ++x) {
    column.clear();
    for (int y = top; y < bottom; ++y) {
      column.push_back(cells.level[cells.At(x, y)]);
    }
    const auto quarter = column.begin() + static_cast<std::ptrdiff_t>(column.size() * 3 / 4);
    std::nth_element(column.begin(), quarter, column.end());
    upper[static_cast<std::size_t>(x)] = *quarter;
  }
  Profile light = upper;
  for (std::size_t x = 1; x + 1 < upper.size(); ++x) {
    light[x] = std::max({upper[x - 1], upper[x], upper[x + 1]});
  }
  return light;
}

// Columns from `begin` to before `end`.
struct Columns {
  int begin = 0;
  int end = 0;
};

// The deepest column of a band within `zone`, if it is shade with light to both sides.
std::optional<int> Deepest(const Profile& light, const Columns& zone, int paper) {
  const auto begin = light.begin();
  const auto deepest = std::min_element(begin + zone.begin, begin + zone.end);
  const auto reach = static_cast<std::ptrdiff_t>(kWidest * static_cast<double>(light.size())) + 1;
  const auto left = deepest - std::min(reach, deepest - begin);
  const auto right = deepest + std::min(reach, light.end() - deepest);
  const bool between =
      *std::max_element(left, deepest + 1) >= kLit * paper && *std::max_element(deepest, right) >= kLit * paper;
  return *deepest < kShaded * paper && between ? std::optional(static_cast<int>(deepest - begin)) : std::nullopt;
}

// The shadow's deepest column in each band; those of bands that do not show it lie as in the band before.
std::optional<std::array<int, kBands>> ShadowIn(const std::array<Profile, kBands>& bands, const Columns& zone, int lean,
                                                int paper) {
  std::array<int, kBands> shadow{};
  int shown = 0;
  int least = zone.end;
  int most = zone.begin;
  for (std::size_t band = 0; band < kBands; ++band) {
    const std::optional<int> at = Deepest(bands[band], zone, paper);
    if (at) {
      ++shown;
      least = std::min(least, *at);
      most = std::max(most, *at);
    }
    shadow[band] = at ? *at : band == 0 ? (zone.begin + zone.end) / 2 : shadow[band - 1];
  }
  const bool found = shown >= kFewestBands && most - least <= lean;
  return found ? std::optional(shadow) : std::nullopt;
}

void Mark(const PageCells& cells, std::size_t band, const Columns& columns, CellMask& mask) {
  const int top = cells.height * static_cast<int>(band) / kBands;
  const int bottom = cells.height * (static_cast<int>(band) + 1) / kBands;
  for (int y = top; y < bottom; ++y) {
    for (int x = std::max(0, columns.begin); x < std::min(cells.width, columns.end); ++x) {
      mask[cells.At(x, y)] = 1;
    }
  }
}

// The shaded columns about the deepest one.
Columns ShadeAbout(const Profile& light, int deepest, int paper) {
  Columns shade{deepest, deepest + 1};
  while (shade.begin > 0 && light[static_cast<std::size_t>(shade.begin - 1)] < kShaded * paper) {
    --shade.begin;
  }
  while (shade.end < static_cast<int>(light.size()) && light[static_cast<std::size_t>(shade.end)] < kShaded * paper) {
    ++shade.end;
  }
  // The lightest of three was looked at: one more to each side is shade.
  return {shade.begin - 1, shade.end + 1};
}

}  // namespace

CellMask BindingShadows(const PageCells& cells) {
  constexpr int kFewestCells = 60;
  if (cells.width < kFewestCells || cells.height < kFewestCells) {
    return {};
  }
  std::array<Profile, kBands> bands;
  for (int band = 0; band < kBands; ++band) {
    bands[static_cast<std::size_t>(band)] = LightOf(cells, band);
  }
  const int outer = static_cast<int>(kOuterZone * cells.width);
  const int inner = static_cast<int>(kInnerZone * cells.width);
  const int middle = cells.width / 2;
  struct Zone {
    Columns columns;
    bool to_left = false;   // what lies left of the shadow is another page
    bool to_right = false;  // what lies right of it
  };
  std::vector<Zone> zones = {{{2, outer}, true, false}, {{cells.width - outer, cells.width - 2}, false, true}};
  if (cells.width > kSpreadShape * cells.height) {
    zones.push_back({{middle - inner, middle + inner}, false, false});
  }
  CellMask mask(cells.level.size(), 0);
  bool any = false;
  for (const Zone& zone : zones) {
    const auto shadow = ShadowIn(bands, zone.columns, static_cast<int>(kLean * cells.height), cells.paper);
    if (!shadow) {
      continue;
    }
    any = true;
    for (std::size_t band = 0; band < kBands; ++band) {
      Columns shade = ShadeAbout(bands[band], (*shadow)[band], cells.paper);
      shade.begin = zone.to_left ? 0 : shade.begin;
      shade.end = zone.to_right ? cells.width : shade.end;
      Mark(cells, band, shade, mask);
    }
  }
  return any ? mask : CellMask{};
}

}  // namespace benchleaf
