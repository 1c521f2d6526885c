#include "scan-maker/symbols.h"

#include <cairo.h>

#include <cmath>
#include <initializer_list>
#include <numbers>

namespace benchleaf::scanmaker {
namespace {

constexpr double kPi = std::numbers::pi;

void Stroke(cairo_t* cairo, double width = kSymbolPen) {
  cairo_set_line_width(cairo, width);
  cairo_stroke(cairo);
}

void Segment(cairo_t* cairo, double x1, double y1, double x2, double y2, double width = kSymbolPen) {
  cairo_move_to(cairo, x1, y1);
  cairo_line_to(cairo, x2, y2);
  Stroke(cairo, width);
}

void Circle(cairo_t* cairo, double x, double y, double radius) {
  cairo_new_sub_path(cairo);
  cairo_arc(cairo, x, y, radius, 0, 2 * kPi);
}

// A head that points along (dx, dy), a unit vector, with its tip at (x, y).
void ArrowHead(cairo_t* cairo, double x, double y, double dx, double dy) {
  cairo_move_to(cairo, x, y);
  cairo_line_to(cairo, x - 16 * dx - 6 * dy, y - 16 * dy + 6 * dx);
  cairo_line_to(cairo, x - 16 * dx + 6 * dy, y - 16 * dy - 6 * dx);
  cairo_close_path(cairo);
  cairo_fill(cairo);
}

void Grid(cairo_t* cairo, double y, int side) {
  constexpr double kReach = 38;
  for (int dash = 0; dash < 4; ++dash) {
    const double x = -kReach + 20 * dash;
    Segment(cairo, x, y, x + 11, y);
  }
  const double edge = std::sqrt(kEnvelope * kEnvelope - y * y);
  Segment(cairo, side * kReach, y, side * edge, y);
}

}  // namespace

double ResistorSymbol(cairo_t* cairo) {
  constexpr double kHalf = 38;
  constexpr int kPeaks = 6;
  constexpr double kStep = 2 * kHalf / kPeaks;
  cairo_move_to(cairo, -kHalf, 0);
  for (int i = 0; i < kPeaks; ++i) {
    cairo_line_to(cairo, -kHalf + (i + 0.5) * kStep, i % 2 == 0 ? -13 : 13);
  }
  cairo_line_to(cairo, kHalf, 0);
  Stroke(cairo);
  return kHalf;
}

double ControlSymbol(cairo_t* cairo) {
  const double half = ResistorSymbol(cairo);
  Segment(cairo, 0, 30, 0, 50);
  ArrowHead(cairo, 0, 16, 0, -1);
  return half;
}

double CapacitorSymbol(cairo_t* cairo) {
  constexpr double kHalf = 7;
  Segment(cairo, -kHalf, -27, -kHalf, 27, 4);
  cairo_arc(cairo, kHalf + 55, 0, 55, kPi - 0.5, kPi + 0.5);
  Stroke(cairo, 4);
  return kHalf;
}

double ElectrolyticSymbol(cairo_t* cairo) {
  const double half = CapacitorSymbol(cairo);
  Segment(cairo, -26, -24, -14, -24);
  Segment(cairo, -20, -30, -20, -18);
  return half;
}

double VariableCapacitorSymbol(cairo_t* cairo) {
  const double half = CapacitorSymbol(cairo);
  Segment(cairo, -30, 30, 26, -26);
  ArrowHead(cairo, 32, -32, std::numbers::sqrt2 / 2, -std::numbers::sqrt2 / 2);
  return half;
}

double CoilSymbol(cairo_t* cairo, int turns) {
  // A prolate cycloid: its loops are the turns.
  constexpr double kPitch = 22;
  const double half = turns * kPitch / 2 + 4;
  const int steps = 24 * turns;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / 24;
    const double x = -turns * kPitch / 2 + t * kPitch + 8 * std::sin(2 * kPi * t);
    const double y = -13 * (1 - std::cos(2 * kPi * t));
    if (i == 0) {
      cairo_move_to(cairo, -half, 0);
    }
    cairo_line_to(cairo, x, y);
  }
  cairo_line_to(cairo, half, 0);
  Stroke(cairo);
  return half;
}

double DiodeSymbol(cairo_t* cairo) {
  constexpr double kHalf = 18;
  cairo_move_to(cairo, -kHalf, -18);
  cairo_line_to(cairo, kHalf, 0);
  cairo_line_to(cairo, -kHalf, 18);
  cairo_close_path(cairo);
  cairo_fill(cairo);
  Segment(cairo, kHalf, -20, kHalf, 20, 4);
  return kHalf;
}

double SwitchSymbol(cairo_t* cairo) {
  constexpr double kHalf = 32;
  Circle(cairo, -kHalf + 5, 0, 5);
  Stroke(cairo);
  Circle(cairo, kHalf - 5, 0, 5);
  Stroke(cairo);
  Segment(cairo, -kHalf + 9, -3, kHalf - 10, -24);
  return kHalf;
}

double FuseSymbol(cairo_t* cairo) {
  constexpr double kHalf = 34;
  cairo_move_to(cairo, -kHalf, 0);
  cairo_curve_to(cairo, -kHalf + 12, -30, -12, -30, 0, 0);
  cairo_curve_to(cairo, 12, 30, kHalf - 12, 30, kHalf, 0);
  Stroke(cairo);
  return kHalf;
}

double LampSymbol(cairo_t* cairo) {
  constexpr double kHalf = 28;
  Circle(cairo, 0, 0, kHalf);
  Stroke(cairo);
  cairo_move_to(cairo, -kHalf, 0);
  cairo_line_to(cairo, -10, 0);
  cairo_curve_to(cairo, -8, -26, 8, -26, 10, 0);
  cairo_line_to(cairo, kHalf, 0);
  Stroke(cairo);
  return kHalf;
}

void TubeSymbol(cairo_t* cairo, const TubeShape& shape) {
  Circle(cairo, 0, 0, kEnvelope);
  Stroke(cairo, 3.5);
  // Plates stand above the last grid.
  const double plate_y = kFirstGridY - shape.grids * GridPitch(shape) - (shape.grids == 0 ? 30 : 8);
  for (int plate = 0; plate < shape.plates; ++plate) {
    const double x = shape.plates == 1 ? 0 : (plate == 0 ? -kTwinPlateX : kTwinPlateX);
    const double half = shape.plates == 1 ? 32 : 20;
    const double edge = -std::sqrt(kEnvelope * kEnvelope - x * x);
    Segment(cairo, x - half, plate_y, x + half, plate_y, 6);
    Segment(cairo, x, plate_y, x, edge);
  }
  for (int grid = 0; grid < shape.grids; ++grid) {
    // First and third grid lead out to the left, the second to the right; outer grids stay inside.
    const double y = kFirstGridY - grid * GridPitch(shape);
    if (grid == 2 && shape.grids == 3) {
      // A pentode's suppressor is tied to the cathode inside.
      Grid(cairo, y, 1);
    } else {
      Grid(cairo, y, grid % 2 == 0 ? -1 : 1);
    }
  }
  const double cathode_edge = std::sqrt(kEnvelope * kEnvelope - kCathodeX * kCathodeX);
  if (shape.heater) {
    Segment(cairo, kCathodeX, 30, 28, 30, 4);
    Segment(cairo, kCathodeX, 30, kCathodeX, cathode_edge);
    Segment(cairo, 28, 30, 28, 38);
    cairo_move_to(cairo, -8, kEnvelope);
    cairo_line_to(cairo, -8, 64);
    cairo_line_to(cairo, 4, 42);
    cairo_line_to(cairo, 16, 64);
    cairo_line_to(cairo, 16, kEnvelope - 2);
    Stroke(cairo);
  } else {
    Circle(cairo, kCathodeX, 34, 10);
    Stroke(cairo);
    Segment(cairo, kCathodeX, 44, kCathodeX, cathode_edge);
    Circle(cairo, 30, 30, 6);
    cairo_fill(cairo);
  }
}

void PictureTubeSymbol(cairo_t* cairo) {
  cairo_move_to(cairo, -150, -32);
  cairo_line_to(cairo, -20, -32);
  cairo_line_to(cairo, 110, -120);
  cairo_curve_to(cairo, 160, -60, 160, 60, 110, 120);
  cairo_line_to(cairo, -20, 32);
  cairo_line_to(cairo, -150, 32);
  cairo_close_path(cairo);
  Stroke(cairo, 3.5);
  for (const double x : {-80.0, -50.0}) {
    for (const double y : {-22.0, -6.0, 10.0}) {
      Segment(cairo, x, y, x, y + 9);
    }
  }
  Segment(cairo, -110, -18, -110, 18, 4);
  cairo_move_to(cairo, -150, -10);
  cairo_line_to(cairo, -122, 0);
  cairo_line_to(cairo, -150, 10);
  Stroke(cairo);
}

void TransistorSymbol(cairo_t* cairo) {
  Circle(cairo, 8, 0, 50);
  Stroke(cairo);
  Segment(cairo, -50, 0, -12, 0);
  Segment(cairo, -12, -30, -12, 30, 5);
  Segment(cairo, -12, -14, 25, -36);
  Segment(cairo, 25, -36, 25, -75);
  Segment(cairo, -12, 14, 25, 36);
  Segment(cairo, 25, 36, 25, 75);
  ArrowHead(cairo, 20, 33, 0.86, 0.51);
}

void CoreSymbol(cairo_t* cairo, double length_px) {
  for (const double x : {-5.0, 5.0}) {
    Segment(cairo, x, -length_px / 2, x, length_px / 2);
  }
}

void HeaterSymbol(cairo_t* cairo) {
  cairo_move_to(cairo, -20, 0);
  cairo_line_to(cairo, -20, -20);
  cairo_line_to(cairo, 0, -50);
  cairo_line_to(cairo, 20, -20);
  cairo_line_to(cairo, 20, 0);
  Stroke(cairo);
}

void GroundSymbol(cairo_t* cairo) {
  Segment(cairo, 0, 0, 0, 16);
  Segment(cairo, -24, 16, 24, 16);
  Segment(cairo, -16, 25, 16, 25);
  Segment(cairo, -7, 34, 7, 34);
}

void AntennaSymbol(cairo_t* cairo) {
  Segment(cairo, 0, 0, 0, -60);
  Segment(cairo, -26, -60, 0, -24);
  Segment(cairo, 26, -60, 0, -24);
}

void PlugSymbol(cairo_t* cairo) {
  cairo_rectangle(cairo, -44, -70, 24, 140);
  Stroke(cairo);
  for (const double y : {-50.0, 50.0}) {
    Segment(cairo, -70, y, -44, y, 6);
    Segment(cairo, -20, y, 0, y);
  }
}

void SpeakerSymbol(cairo_t* cairo) {
  cairo_rectangle(cairo, 0, -36, 24, 72);
  cairo_move_to(cairo, 24, -24);
  cairo_line_to(cairo, 60, -60);
  cairo_line_to(cairo, 60, 60);
  cairo_line_to(cairo, 24, 24);
  Stroke(cairo);
}

void JackSymbol(cairo_t* cairo) {
  Circle(cairo, -24, 0, 24);
  Stroke(cairo);
  Circle(cairo, -24, 0, 5);
  cairo_fill(cairo);
  Segment(cairo, -24, 0, 0, 0);
}

void ArrowSymbol(cairo_t* cairo) { ArrowHead(cairo, 0, 0, 1, 0); }

}  // namespace benchleaf::scanmaker
