// Resistance-coupled, output, follower and transistor stages.

#include "scan-maker/stage_drawings.h"

namespace benchleaf::scanmaker {
namespace {

constexpr double kS = kSignalY;

// Coupling capacitor and grid resistor: from the signal's way in to (7, kS).
void GridInput(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("in"));
  d.Wire({{6, kS}, {7, kS}});
  d.Lay({7, kS}, {7, 28}, s.At("leak"));
  d.Ground({7, 28});
}

// Bias resistor with its bypass beside it.
void CathodeBias(Drawing& d, const Stage& s, const TubeLeads& tube) {
  const double x = tube.cathode.x;
  d.Wire({tube.cathode, {x, 24}, {x + 5.5, 24}});
  d.Lay({x, 24}, {x, 32}, s.At("cathode"));
  d.Lay({x + 5.5, 24}, {x + 5.5, 32}, s.At("cathode cap"));
  d.Ground({x, 32});
  d.Ground({x + 5.5, 32});
}

void RcPentode(Drawing& d, const Stage& s) {
  GridInput(d, s);
  const TubeLeads tube = d.Tube(14, kS, {3, 1, true}, s.At("tube"));
  d.Wire({{7, kS}, tube.grid});
  CathodeBias(d, s, tube);
  d.Wire({tube.screen, {21, tube.screen.y}});
  d.Lay({21, tube.screen.y}, {21, kBusY}, s.At("screen"));
  d.Lay({21, tube.screen.y}, {21, 26}, s.At("screen cap"));
  d.Ground({21, 26});
  d.Lay({14, kPlateY}, {14, kBusY}, s.At("plate"));
  d.Wire({tube.plate, {14, kPlateY}, {29, kPlateY}, {29, kS}, {33, kS}});
}

void RcTriode(Drawing& d, const Stage& s) {
  GridInput(d, s);
  const TubeLeads tube = d.Tube(14, kS, {1, 1, true}, s.At("tube"));
  d.Wire({{7, kS}, tube.grid});
  CathodeBias(d, s, tube);
  d.Lay({14, kPlateY}, {14, kBusY}, s.At("plate"));
  d.Wire({tube.plate, {14, kPlateY}, {24, kPlateY}, {24, kS}, {28, kS}});
}

void PowerOutput(Drawing& d, const Stage& s) {
  GridInput(d, s);
  const TubeLeads tube = d.Tube(14, kS, {3, 1, true}, s.At("tube"));
  d.Wire({{7, kS}, tube.grid});
  CathodeBias(d, s, tube);
  d.Wire({tube.screen, {18.6, tube.screen.y}, {18.6, kBusY}});
  d.Wire({tube.plate, {14, kPlateY}, {22, kPlateY}, {26, kPlateY}, {26, 14}});
  d.Lay({22, kPlateY}, {22, 23}, s.At("tone cap"));
  d.Wire({{22, 23}, {26, 23}, {26, 21}});
  d.Transformer(26, 14, 21, true, s.At("output"));
  d.Wire({{26, 23}, {26, 25}});
  d.Terminal({26, 25}, "B+", 90);
  d.Wire({{29, 14}, {34, 14}, {34, 16.6}, {36, 16.6}});
  d.Wire({{29, 21}, {34, 21}, {34, 18.4}, {36, 18.4}});
  d.Symbol({36, 17.5}, SpeakerSymbol, {0, -60, 60, 120}, s.At("speaker"));
}

void TransistorStage(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("in"));
  d.Wire({{6, kS}, {8, kS}, {11, kS}});
  d.Lay({8, kS}, {8, kBusY}, s.At("upper"));
  d.Lay({8, kS}, {8, 28}, s.At("lower"));
  d.Ground({8, 28});
  d.Symbol({13, kS}, TransistorSymbol, {-42, -50, 100, 100}, s.At("transistor"));
  d.Wire({{14, kS - 3}, {14, kPlateY}, {25, kPlateY}, {25, kS}, {30, kS}});
  d.Lay({14, kPlateY}, {14, kBusY}, s.At("collector"));
  d.Wire({{14, kS + 3}, {14, 24}, {19.5, 24}});
  d.Lay({14, 24}, {14, 32}, s.At("emitter"));
  d.Lay({19.5, 24}, {19.5, 32}, s.At("emitter cap"));
  d.Ground({14, 32});
  d.Ground({19.5, 32});
}

void CathodeFollower(Drawing& d, const Stage& s) {
  GridInput(d, s);
  d.Lay({7, kS}, {13, kS}, s.At("stopper"));
  const TubeLeads tube = d.Tube(17, kS, {1, 1, true}, s.At("tube"));
  d.Wire({{13, kS}, tube.grid});
  d.Wire({tube.plate, {17, kBusY}});
  d.Wire({tube.cathode, {16, 25}, {18, 25}});
  d.Lay({16, 25}, {16, 34}, s.At("cathode"));
  d.Ground({16, 34});
  d.Lay({18, 25}, {24, 25}, s.At("out"));
  d.Wire({{24, 25}, {26, 25}, {26, kS}, {30, kS}});
}

}  // namespace

void DrawAmplifierStage(Drawing& drawing, const Stage& stage) {
  switch (stage.kind) {
    case StageKind::kRcPentode:
      return RcPentode(drawing, stage);
    case StageKind::kRcTriode:
      return RcTriode(drawing, stage);
    case StageKind::kPowerOutput:
      return PowerOutput(drawing, stage);
    case StageKind::kTransistor:
      return TransistorStage(drawing, stage);
    default:
      return CathodeFollower(drawing, stage);
  }
}

}  // namespace benchleaf::scanmaker
