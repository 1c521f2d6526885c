// Antenna, converter, intermediate-frequency and detector stages.

#include "scan-maker/stage_drawings.h"

namespace benchleaf::scanmaker {
namespace {

constexpr double kS = kSignalY;

// An intermediate-frequency transformer in its can, from the plate wire at the left to the signal at the right.
void IfTransformer(Drawing& d, double x, const Part& part) {
  d.Transformer(x, 15, 20, false, part);
  d.Wire({{x - 2.6, kPlateY}, {x - 2.6, 22.2}, {x, 22.2}, {x, 20}});
  d.Wire({{x + 3, 15}, {x + 3, 13}, {x + 8, 13}, {x + 8, kS}});
  d.Wire({{x + 3, 20}, {x + 3, 23.5}});
  d.Ground({x + 3, 23.5});
}

void Antenna(Drawing& d, const Stage& s) {
  d.Antenna({4, 12});
  d.Wire({{4, 12}, {10, 12}, {17, 12}});
  d.Lay({4, 12}, {4, 25}, s.At("loop"));
  d.Lay({10, 12}, {10, 25}, s.At("tune"));
  d.Lay({17, 12}, {17, 25}, s.At("trim"));
  d.Wire({{4, 25}, {10, 25}, {17, 25}});
  d.Wire({{10, 25}, {10, 27}});
  d.Ground({10, 27});
  d.Lay({17, 12}, {22, 12}, s.At("couple"));
  d.Wire({{22, 12}, {23, 12}, {23, kS}, {26, kS}});
  d.Lay({23, kS}, {23, 28}, s.At("leak"));
  d.Ground({23, 28});
}

void Converter(Drawing& d, const Stage& s) {
  const TubeLeads tube = d.Tube(9, kS, {5, 1, true}, s.At("tube"), 3);
  d.Wire({{0, kS}, tube.third_grid});
  d.Wire({tube.grid, {4, tube.grid.y}, {4, 27}});
  d.Lay({4, 27}, {9, 27}, s.At("grid cap"));
  d.Lay({4, 27}, {4, 36}, s.At("grid leak"));
  d.Ground({4, 36});
  d.Wire({{9, 27}, {14, 27}, {21, 27}});
  d.Lay({14, 27}, {14, 37}, s.At("osc"));
  d.Lay({21, 27}, {21, 37}, s.At("tune"));
  d.Ground({14, 37});
  d.Ground({21, 37});
  d.Wire({tube.cathode, {8, 23.8}, {11, 23.8}, {11, 32}, {13.4, 32}});
  d.Wire({tube.screen, {15, tube.screen.y}});
  d.Lay({15, tube.screen.y}, {15, kBusY}, s.At("screen"));
  d.Lay({15, tube.screen.y}, {15, 24}, s.At("screen cap"));
  d.Ground({15, 24});
  d.Wire({tube.plate, {9, kPlateY}, {20.4, kPlateY}});
  IfTransformer(d, 23, s.At("if"));
  d.Wire({{23, 15}, {23, kBusY}});
  d.Wire({{31, kS}, {38, kS}});
}

void IfAmplifier(Drawing& d, const Stage& s) {
  const TubeLeads tube = d.Tube(7, kS, {3, 1, true}, s.At("tube"));
  d.Wire({{0, kS}, tube.grid});
  d.Wire({tube.cathode, {6, 24}, {11, 24}});
  d.Lay({6, 24}, {6, 32}, s.At("cathode"));
  d.Lay({11, 24}, {11, 32}, s.At("cathode cap"));
  d.Ground({6, 32});
  d.Ground({11, 32});
  d.Wire({tube.screen, {14, tube.screen.y}});
  d.Lay({14, tube.screen.y}, {14, kBusY}, s.At("screen"));
  d.Lay({14, tube.screen.y}, {14, 26}, s.At("screen cap"));
  d.Ground({14, 26});
  d.Wire({tube.plate, {7, kPlateY}, {18.4, kPlateY}});
  IfTransformer(d, 21, s.At("if"));
  d.Wire({{21, 15}, {21, 11}, {23, 11}});
  d.Lay({21, 11}, {21, kBusY}, s.At("feed"));
  d.Lay({23, 11}, {29, 11}, s.At("feed cap"));
  d.Wire({{29, 11}, {32, 11}});
  d.Ground({32, 11});
  d.Wire({{29, kS}, {36, kS}});
}

void DetectorTriode(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {3, kS}, {8, kS}});
  d.Lay({3, kS}, {3, 27}, s.At("rf cap"));
  d.Ground({3, 27});
  d.Lay({8, 30}, {8, kS}, s.At("volume"));
  d.Ground({8, 30});
  d.Wire({{10, 24}, {11, 24}});
  d.Lay({11, 24}, {16, 24}, s.At("in"));
  d.Lay({16, 24}, {16, 33}, s.At("leak"));
  d.Ground({16, 33});
  const TubeLeads tube = d.Tube(21, kS, {1, 1, true}, s.At("tube"));
  d.Wire({{16, 24}, {16, kS}, tube.grid});
  d.Wire({tube.cathode, {20, 25}});
  d.Ground({20, 25});
  d.Wire({tube.plate, {21, kPlateY}, {26, kPlateY}});
  d.Lay({21, kPlateY}, {21, kBusY}, s.At("plate"));
  d.Lay({26, kPlateY}, {26, 23}, s.At("plate cap"));
  d.Ground({26, 23});
  d.Lay({26, kPlateY}, {32, kPlateY}, s.At("load"));
  d.Wire({{32, kPlateY}, {33, kPlateY}, {33, kS}, {35, kS}});
}

void TwinDiode(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("in"));
  d.Wire({{6, kS}, {6, 12.8}, {11.8, 12.8}});
  const TubeLeads tube = d.Tube(13, kS, {0, 2, true}, s.At("tube"));
  d.Wire({{11.8, 12.8}, tube.plate});
  d.Wire({tube.second_plate, {14.2, 12.8}, {18.5, 12.8}});
  d.Wire({{18.5, 12.8}, {18.5, 14.5}});
  d.Ground({18.5, 14.5});
  d.Lay({6, kS}, {6, 28}, s.At("top"));
  d.Ground({6, 28});
  d.Wire({tube.cathode, {12, 25}, {17, 25}});
  d.Lay({12, 25}, {12, 34}, s.At("bottom"));
  d.Ground({12, 34});
  d.Lay({17, 25}, {23, 25}, s.At("out"));
  d.Wire({{23, 25}, {24, 25}, {24, kS}, {27, kS}});
}

void DiodeProbe(Drawing& d, const Stage& s) {
  d.Symbol({3, kS}, JackSymbol, {-50, -26, 50, 52}, s.At("jack"));
  d.Lay({3, kS}, {9, kS}, s.At("in"));
  d.Lay({9, kS}, {17, kS}, s.At("diode"));
  d.Wire({{17, kS}, {22, kS}});
  d.Lay({18, kS}, {18, 28}, s.At("load"));
  d.Ground({18, 28});
  d.Lay({22, kS}, {28, kS}, s.At("out"));
  d.Wire({{28, kS}, {30, kS}});
}

}  // namespace

void DrawReceiverStage(Drawing& drawing, const Stage& stage) {
  switch (stage.kind) {
    case StageKind::kAntenna:
      return Antenna(drawing, stage);
    case StageKind::kConverter:
      return Converter(drawing, stage);
    case StageKind::kIfAmplifier:
      return IfAmplifier(drawing, stage);
    case StageKind::kDetectorTriode:
      return DetectorTriode(drawing, stage);
    case StageKind::kTwinDiode:
      return TwinDiode(drawing, stage);
    default:
      return DiodeProbe(drawing, stage);
  }
}

}  // namespace benchleaf::scanmaker
