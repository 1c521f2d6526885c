// Power supplies, regulators and heaters.

#include "scan-maker/stage_drawings.h"

namespace benchleaf::scanmaker {
namespace {

constexpr double kS = kSignalY;
const Box kPlugReach{-72, -72, 72, 144};

void HalfWave(Drawing& d, const Stage& s) {
  d.Symbol({4, kS}, PlugSymbol, kPlugReach, s.At("plug"));
  d.Lay({4, 16}, {10, 16}, s.At("switch"));
  d.Wire({{10, 16}, {11, 16}, {11, 12}});
  d.Wire({{4, 20}, {5, 20}, {5, 28}, {11, 28}, {11, 29}});
  d.Ground({11, 29});
  d.Lay({11, 16}, {11, 28}, s.At("line cap"));
  d.Lay({11, 12}, {17, 12}, s.At("surge"));
  const TubeLeads tube = d.Tube(19, kS, {0, 1, true}, s.At("tube"));
  d.Wire({{17, 12}, {19, 12}, tube.plate});
  d.Wire({tube.cathode, {18, 24}, {24, 24}});
  d.Lay({24, 24}, {24, 33}, s.At("first"));
  d.Ground({24, 33});
  d.Lay({24, 24}, {31, 24}, s.At("filter"));
  d.Lay({31, 24}, {31, 33}, s.At("second"));
  d.Ground({31, 33});
  d.Wire({{31, 24}, {34, 24}, {34, kBusY}});
  d.Lay({40, 14}, {40, 24}, s.At("lamp"));
  d.Wire({{40, 14}, {40, 13}});
  d.Terminal({40, 13}, "HEATERS", 270);
  d.Ground({40, 24});
}

void FullWave(Drawing& d, const Stage& s) {
  d.Symbol({4, kS}, PlugSymbol, kPlugReach, s.At("plug"));
  d.Lay({4, 16}, {9.5, 16}, s.At("switch"));
  d.Lay({9.5, 16}, {14.5, 16}, s.At("fuse"));
  d.Wire({{14.5, 16}, {15.5, 16}, {15.5, 13}, {17, 13}, {17, 14.5}});
  d.Wire({{4, 20}, {5, 20}, {5, 24}, {17, 24}, {17, 21.5}});
  d.Winding(17, 14.5, 21.5, false);
  d.Core(18.6, 9, 31);
  d.Winding(20.2, 10, 22, true);
  d.Symbol(
      {18.6, 20}, [](cairo_t*) {}, {-60, -285, 120, 570}, s.At("power"));
  d.Wire({{20.8, 16}, {23, 16}});
  d.Ground({23, 16});
  d.Winding(20.2, 26, 31, true);
  d.Wire({{20.2, 26}, {24, 26}});
  d.Terminal({24, 26}, "6.3 V", 0);
  d.Wire({{20.2, 31}, {22, 31}});
  d.Ground({22, 31});
  const TubeLeads tube = d.Tube(31, kS, {0, 2, true}, s.At("tube"));
  d.Wire({{20.2, 10}, {29.8, 10}, tube.plate});
  d.Wire({{20.2, 22}, {26, 22}, {26, 12}, {32.2, 12}, tube.second_plate});
  d.Wire({tube.cathode, {30, 28}, {38, 28}});
  d.Lay({38, 28}, {38, 36}, s.At("first"));
  d.Ground({38, 36});
  d.Lay({38, 28}, {46, 28}, s.At("choke"));
  d.Lay({46, 28}, {46, 36}, s.At("second"));
  d.Ground({46, 36});
  d.Wire({{46, 28}, {52, 28}, {52, kBusY}});
  d.Lay({52, 28}, {52, 37}, s.At("bleeder"));
  d.Ground({52, 37});
}

void Regulator(Drawing& d, const Stage& s) {
  d.Lay({6, kBusY}, {6, 12.5}, s.At("series"));
  const TubeLeads tube = d.Tube(6, kS, {0, 1, false}, s.At("tube"));
  d.Wire({{6, 12.5}, tube.plate});
  d.Wire({tube.cathode, {5, 25}});
  d.Ground({5, 25});
  d.Wire({{6, 12.5}, {13, 12.5}, {15, 12.5}});
  d.Lay({13, 12.5}, {13, 24}, s.At("bypass"));
  d.Ground({13, 24});
  d.Terminal({15, 12.5}, "+150 V", 0);
}

// All heaters of the circuit on two rows.
void HeaterString(Drawing& d, const Stage& s, const Circuit& circuit) {
  std::vector<Part> tubes;
  for (const Part& part : ListedParts(circuit)) {
    if (part.part_class == PartClass::kTube) {
      tubes.push_back(part);
    }
  }
  const std::size_t per_row = (tubes.size() + 1) / 2;
  for (std::size_t i = 0; i < tubes.size(); ++i) {
    const double x = 7 + 6 * static_cast<double>(i % per_row);
    const double y = i < per_row ? 13 : 27;
    d.Heater({x, y}, tubes[i]);
    d.Wire({{x - 0.8, y}, {x - 0.8, y + 2.5}});
    d.Wire({{x + 0.8, y}, {x + 0.8, y + 1}});
    d.Ground({x + 0.8, y + 1});
  }
  const double right = 7 + 6 * static_cast<double>(per_row - 1);
  for (const double y : {15.5, 29.5}) {
    d.Wire({{2, y}, {right - 0.8, y}});
  }
  d.Lay({2, 15.5}, {2, 29.5}, s.At("first choke"));
  d.Lay({2, 29.5}, {2, 36}, s.At("first cap"));
  d.Ground({2, 36});
  d.Lay({9.5, 29.5}, {9.5, 36}, s.At("second cap"));
  d.Ground({9.5, 36});
  d.Wire({{2, 15.5}, {2, 12}});
  d.Terminal({2, 12}, "HEATERS", 270);
}

}  // namespace

void DrawSupplyStage(Drawing& drawing, const Stage& stage, const Circuit& circuit) {
  switch (stage.kind) {
    case StageKind::kHalfWaveSupply:
      return HalfWave(drawing, stage);
    case StageKind::kFullWaveSupply:
      return FullWave(drawing, stage);
    case StageKind::kRegulator:
      return Regulator(drawing, stage);
    default:
      return HeaterString(drawing, stage, circuit);
  }
}

}  // namespace benchleaf::scanmaker
