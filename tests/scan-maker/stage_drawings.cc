#include "scan-maker/stage_drawings.h"

namespace benchleaf::scanmaker {
namespace {

int TubesOf(const Circuit& circuit) {
  int tubes = 0;
  for (const Part& part : ListedParts(circuit)) {
    tubes += part.part_class == PartClass::kTube ? 1 : 0;
  }
  return tubes;
}

}  // namespace

StageCell CellOf(const Stage& stage, const Circuit& circuit) {
  switch (stage.kind) {
    case StageKind::kAntenna:
      return {26, false, true};
    case StageKind::kConverter:
      return {38, true, true};
    case StageKind::kIfAmplifier:
      return {36, true, true};
    case StageKind::kRcPentode:
      return {33, true, true};
    case StageKind::kRcTriode:
      return {28, true, true};
    case StageKind::kDetectorTriode:
      return {35, true, true};
    case StageKind::kTwinDiode:
      return {27, true, true};
    case StageKind::kPowerOutput:
      return {42, true, false};
    case StageKind::kHalfWaveSupply:
      return {46, false, false};
    case StageKind::kFullWaveSupply:
      return {58, false, false};
    case StageKind::kHeaterString:
      return {8.0 + 6 * ((TubesOf(circuit) + 1) / 2), false, false};
    case StageKind::kCascode:
      return {38, true, true};
    case StageKind::kMultivibrator:
      return {42, true, true};
    case StageKind::kHorizontalOutput:
      return {52, true, false};
    case StageKind::kPictureTube:
      return {38, true, false};
    case StageKind::kRegulator:
      return {22, false, false};
    case StageKind::kDiodeProbe:
      return {30, false, true};
    case StageKind::kTransistor:
      return {30, true, true};
    case StageKind::kCathodeFollower:
      return {30, true, true};
  }
  return {};
}

void DrawStage(Drawing& drawing, const Stage& stage, const Circuit& circuit) {
  switch (stage.kind) {
    case StageKind::kAntenna:
    case StageKind::kConverter:
    case StageKind::kIfAmplifier:
    case StageKind::kDetectorTriode:
    case StageKind::kTwinDiode:
    case StageKind::kDiodeProbe:
      DrawReceiverStage(drawing, stage);
      break;
    case StageKind::kRcPentode:
    case StageKind::kRcTriode:
    case StageKind::kPowerOutput:
    case StageKind::kTransistor:
    case StageKind::kCathodeFollower:
      DrawAmplifierStage(drawing, stage);
      break;
    case StageKind::kCascode:
    case StageKind::kMultivibrator:
    case StageKind::kHorizontalOutput:
    case StageKind::kPictureTube:
      DrawTelevisionStage(drawing, stage);
      break;
    case StageKind::kHalfWaveSupply:
    case StageKind::kFullWaveSupply:
    case StageKind::kHeaterString:
    case StageKind::kRegulator:
      DrawSupplyStage(drawing, stage, circuit);
      break;
  }
}

}  // namespace benchleaf::scanmaker
