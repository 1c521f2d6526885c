// Graphic symbols of parts as drawings of the tube era have them (zigzag resistors, looped coils, tubes in a round
// envelope), after IRE/ASA practice of the 1950s, from memory. Plain pen work: no lettering, no truth.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SYMBOLS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SYMBOLS_H_

#include "scan-maker/cairo_names.h"

namespace benchleaf::scanmaker {

inline constexpr double kSymbolPen = 3;    // px
inline constexpr double kEnvelope = 80;    // radius of a tube's envelope, px
inline constexpr double kFirstGridY = 6;   // of the first grid, px below the centre of the envelope
inline constexpr double kCathodeX = -25;   // where the cathode's lead leaves the envelope, px from the centre
inline constexpr double kTwinPlateX = 30;  // where the leads of a double diode's plates leave it, px from the centre

// Two-lead symbols, drawn about the origin along the x axis; the caller turns the pen. Each gives half its length.
double ResistorSymbol(cairo_t* cairo);
double ControlSymbol(cairo_t* cairo);  // the slider comes from the side of positive y
double CapacitorSymbol(cairo_t* cairo);
double ElectrolyticSymbol(cairo_t* cairo);
double VariableCapacitorSymbol(cairo_t* cairo);
double CoilSymbol(cairo_t* cairo, int turns);
double DiodeSymbol(cairo_t* cairo);
double SwitchSymbol(cairo_t* cairo);
double FuseSymbol(cairo_t* cairo);
double LampSymbol(cairo_t* cairo);

// Two-lead symbols reach this far to each side of the axis, px.
inline constexpr double kSymbolReach = 28;

struct TubeShape {
  int grids = 1;
  int plates = 1;
  bool heater = true;  // false: a gas tube with a cold cathode
};

// Between its grids, px.
constexpr double GridPitch(const TubeShape& shape) { return shape.grids > 3 ? 13 : 18; }

// About the origin.
void TubeSymbol(cairo_t* cairo, const TubeShape& shape);
void PictureTubeSymbol(cairo_t* cairo);             // neck to the left; 300 px long, 240 px high at the screen
void TransistorSymbol(cairo_t* cairo);              // base to the left, collector at the top
void CoreSymbol(cairo_t* cairo, double length_px);  // the two lines of an iron core, upright
void HeaterSymbol(cairo_t* cairo);                  // both leads below, 40 px apart

// With the lead's end at the origin.
void GroundSymbol(cairo_t* cairo);   // hangs down, 36 px
void AntennaSymbol(cairo_t* cairo);  // stands up, 60 px
void PlugSymbol(cairo_t* cairo);     // two prongs to the left; leads end 100 px apart, one above and one below
void SpeakerSymbol(cairo_t* cairo);  // horn to the right, 60 px wide
void JackSymbol(cairo_t* cairo);     // a coaxial connector to the left
void ArrowSymbol(cairo_t* cairo);    // points along positive x

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SYMBOLS_H_
