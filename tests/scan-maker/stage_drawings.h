// How each kind of stage is drawn: a cell of its own width, signal in at the left and out at the right.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_STAGE_DRAWINGS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_STAGE_DRAWINGS_H_

#include "scan-maker/circuit.h"
#include "scan-maker/drawing.h"

namespace benchleaf::scanmaker {

// Heights in a cell, units of Drawing::kUnit.
inline constexpr double kBusY = 4;       // the supply, along the whole row
inline constexpr double kSignalY = 18;   // where signals come in and go out
inline constexpr double kPlateY = 13.5;  // the wire from the plate
inline constexpr double kCellHeight = 40;

struct StageCell {
  double width = 0;   // units
  bool takes = true;  // a signal at (0, kSignalY)
  bool gives = true;  // a signal at (width, kSignalY)
};

StageCell CellOf(const Stage& stage, const Circuit& circuit);

// Draws the stage from the drawing's origin.
void DrawStage(Drawing& drawing, const Stage& stage, const Circuit& circuit);

// Families of stages, each in its own file.
void DrawReceiverStage(Drawing& drawing, const Stage& stage);
void DrawAmplifierStage(Drawing& drawing, const Stage& stage);
void DrawTelevisionStage(Drawing& drawing, const Stage& stage);
void DrawSupplyStage(Drawing& drawing, const Stage& stage, const Circuit& circuit);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_STAGE_DRAWINGS_H_
