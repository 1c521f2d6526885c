// Cascode tuner, multivibrator, horizontal output and picture tube.

#include "scan-maker/stage_drawings.h"

namespace benchleaf::scanmaker {
namespace {

constexpr double kS = kSignalY;

void Cascode(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {3, kS}});
  d.Lay({3, kS}, {3, 28}, s.At("input"));
  d.Ground({3, 28});
  d.Lay({3, kS}, {9, kS}, s.At("in cap"));
  const TubeLeads lower = d.Tube(15, kS, {1, 1, true}, s.At("lower"));
  d.Wire({{9, kS}, {10, kS}, lower.grid});
  d.Lay({10, kS}, {10, 28}, s.At("leak"));
  d.Ground({10, 28});
  d.Wire({lower.cathode, {14, 25}});
  d.Ground({14, 25});
  const TubeLeads upper = d.Tube(29, kS, {1, 1, true}, s.At("upper"));
  d.Wire({lower.plate, {15, kPlateY}, {20, kPlateY}, {20, 28}, {28, 28}, upper.cathode});
  d.Lay({15, kPlateY}, {15, 6.5}, s.At("neutral"));
  d.Wire({{15, 6.5}, {17, 6.5}});
  d.Ground({17, 6.5});
  d.Wire({{24, kS}, upper.grid});
  d.Lay({24, kS}, {24, kBusY}, s.At("divider"));
  d.Lay({24, kS}, {24, 25}, s.At("divider cap"));
  d.Ground({24, 25});
  d.Lay({29, kPlateY}, {29, kBusY}, s.At("plate coil"));
  d.Wire({upper.plate, {29, kPlateY}, {35, kPlateY}, {35, kS}, {38, kS}});
}

void Multivibrator(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("in"));
  const TubeLeads left = d.Tube(11, kS, {1, 1, true}, s.At("left"));
  const TubeLeads right = d.Tube(30, kS, {1, 1, true}, s.At("right"));
  d.Wire({{6, kS}, left.grid});
  d.Wire({left.cathode, {10, 24}});
  d.Lay({10, 24}, {10, 33}, s.At("cathode"));
  d.Ground({10, 33});
  d.Lay({11, kPlateY}, {11, kBusY}, s.At("left plate"));
  d.Wire({left.plate, {11, kPlateY}, {16, kPlateY}});
  d.Lay({16, kPlateY}, {22, kPlateY}, s.At("cross"));
  d.Wire({{22, kPlateY}, {23, kPlateY}, {23, kS}, right.grid});
  d.Lay({23, kS}, {23, 26}, s.At("leak"));
  d.Lay({23, 35}, {23, 26}, s.At("hold"));
  d.Wire({{25, 30.5}, {26, 30.5}, {26, 35}, {23, 35}});
  d.Wire({{23, 35}, {23, 36}});
  d.Ground({23, 36});
  d.Wire({right.cathode, {29, 25}});
  d.Ground({29, 25});
  d.Lay({30, kPlateY}, {30, kBusY}, s.At("right plate"));
  d.Wire({right.plate, {30, kPlateY}, {37, kPlateY}, {37, kS}, {42, kS}});
}

void HorizontalOutput(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("in"));
  const TubeLeads output = d.Tube(13, kS, {3, 1, true}, s.At("output"));
  d.Wire({{6, kS}, {7, kS}, output.grid});
  d.Lay({7, kS}, {7, 28}, s.At("leak"));
  d.Ground({7, 28});
  d.Wire({output.cathode, {12, 24}});
  d.Lay({12, 24}, {12, 33}, s.At("cathode"));
  d.Ground({12, 33});
  d.Wire({output.screen, {19, output.screen.y}});
  d.Lay({19, output.screen.y}, {19, kBusY}, s.At("screen"));
  d.Lay({19, output.screen.y}, {19, 25}, s.At("screen cap"));
  d.Ground({19, 25});
  d.Wire({output.plate, {13, kPlateY}, {32, kPlateY}});

  // The output transformer is one long winding with taps.
  d.Winding(32, 9, 31, false);
  d.Core(33.6, 9, 31);
  const Box reach{-26, -275, 80, 550};
  d.Symbol(
      {32, 20}, [](cairo_t*) {}, reach, s.At("flyback"));
  const TubeLeads damper = d.Tube(26, 26, {0, 1, true}, s.At("damper"));
  d.Wire({damper.plate, {26, 20.5}, {23, 20.5}});
  d.Terminal({23, 20.5}, "B+", 180);
  d.Wire({damper.cathode, {25, 32}, {29.5, 32}, {29.5, 27}, {31.4, 27}});
  d.Wire({{32, 31}, {32, 32}});
  d.Lay({32, 32}, {32, 37}, s.At("boost"));
  d.Ground({32, 37});

  const TubeLeads rectifier = d.Tube(41, 15, {0, 1, true}, s.At("rectifier"));
  d.Wire({{32, 9}, {41, 9}, rectifier.plate});
  d.Wire({rectifier.cathode, {40, 23}});
  d.Lay({40, 23}, {46, 23}, s.At("drop"));
  d.Lay({46, 23}, {46, 33}, s.At("high volt"));
  d.Ground({46, 33});
  d.Wire({{46, 23}, {48, 23}, {48, 20}});
  d.Terminal({48, 20}, "ANODE", 270);
}

void PictureTube(Drawing& d, const Stage& s) {
  d.Wire({{0, kS}, {1, kS}});
  d.Lay({1, kS}, {6, kS}, s.At("couple"));
  d.Wire({{6, kS}, {8, kS}, {18, kS}});
  d.Lay({8, kS}, {8, 28}, s.At("cathode"));
  d.Ground({8, 28});
  d.Symbol({24, kS}, PictureTubeSymbol, {-150, -120, 300, 240}, s.At("tube"));
  d.Wire({{20.8, 19.3}, {20.8, 25}, {15, 25}});
  d.Lay({15, 25}, {15, 35}, s.At("limit"));
  d.Ground({15, 35});
  d.Lay({22, 35}, {22, 25}, s.At("bright"));
  d.Wire({{22, 25}, {20.8, 25}});
  d.Wire({{22, 35}, {22, 36}});
  d.Ground({22, 36});
  d.Wire({{24, 30}, {26, 30}, {26, 27}});
  d.Terminal({26, 27}, "B+", 270);
  d.Lay({27, 14.8}, {27, 7.5}, s.At("anode"));
  d.Wire({{27, 7.5}, {30, 7.5}});
  d.Terminal({30, 7.5}, "H.V.", 0);
}

}  // namespace

void DrawTelevisionStage(Drawing& drawing, const Stage& stage) {
  switch (stage.kind) {
    case StageKind::kCascode:
      return Cascode(drawing, stage);
    case StageKind::kMultivibrator:
      return Multivibrator(drawing, stage);
    case StageKind::kHorizontalOutput:
      return HorizontalOutput(drawing, stage);
    default:
      return PictureTube(drawing, stage);
  }
}

}  // namespace benchleaf::scanmaker
