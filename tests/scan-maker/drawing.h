// A schematic in the making: symbols and wires go down first, then each part gets its lettering where there is room.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_DRAWING_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_DRAWING_H_

#include "scan-maker/circuit.h"
#include "scan-maker/label_placing.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/sheet.h"
#include "scan-maker/symbols.h"

#include <cstdint>
#include <initializer_list>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// A place in the cell being drawn, in units of kUnit px.
struct Spot {
  double x = 0;
  double y = 0;
};

struct DrawingStyle {
  TextStyle text;                // of the lettering
  double turned_share = 0.15;    // of the labels beside upright parts that are turned along them
  double touching_share = 0.06;  // of the labels that run into their part or its wire
  bool hops = true;              // wires jump over each other; else they cross plainly
};

// Where the leads of a tube leave its envelope.
struct TubeLeads {
  Spot grid;        // the first, on the left
  Spot third_grid;  // on the left
  Spot screen;      // the second grid, on the right
  Spot plate;       // on top
  Spot second_plate;
  Spot cathode;  // at the bottom
};

// Borrows the sheet, which must outlive it. Finish() must be called before the page is taken.
class Drawing {
 public:
  static constexpr double kUnit = 25;  // px

  Drawing(Sheet& sheet, const DrawingStyle& style, std::uint64_t seed);

  // Later spots count from here, px.
  void MoveTo(double x_px, double y_px);

  void Wire(std::initializer_list<Spot> spots);
  // A part with two leads between two spots on one upright or level line.
  void Lay(Spot from, Spot to, const Part& part);
  // A tube with its first grid at height `y`, or the third one where it is the signal's (a converter).
  TubeLeads Tube(double x, double y, const TubeShape& shape, const Part& part, int level_grid = 1);
  // Two coils between heights y1 and y2, at x and x + 3, round an iron core or in a screening can.
  void Transformer(double x, double y1, double y2, bool iron, const Part& part);
  void Winding(double x, double y1, double y2, bool facing_left);
  void Core(double x, double y1, double y2);
  // A symbol of symbols.h that reaches over the box (px, about the spot), with the part's label.
  void Symbol(Spot at, void (*draw)(cairo_t*), const Box& reach, const Part& part);
  void Ground(Spot at);
  void Antenna(Spot at);
  void Heater(Spot at, const Part& tube);
  // An arrow with words beside it: where a wire goes on elsewhere.
  void Terminal(Spot at, const std::string& words, int direction_degrees);
  // Words, upright, with the left end of their baseline at the spot.
  void Words(Spot at, const std::string& words, double size = 1);

  // Draws the wires with their dots and crossings, then the labels.
  void Finish();

 private:
  struct Segment {
    int x1, y1, x2, y2;
    bool level() const { return y1 == y2; }
  };
  struct Label {
    Box part;
    bool upright = false;  // the part stands upright
    bool turnable = true;
    std::vector<Token> lines;
  };

  double X(const Spot& spot) const;
  double Y(const Spot& spot) const;
  void AddSegment(double x1, double y1, double x2, double y2);
  void AddLabel(const Box& box, bool upright, const Part& part, bool turnable = true);
  void PinNumber(const Spot& at, double dx_px, double dy_px);
  void DrawWires();
  void Letter(const Label& label);

  Sheet& sheet_;
  DrawingStyle style_;
  SeededRandom random_;
  double origin_x_ = 0;
  double origin_y_ = 0;
  std::vector<Segment> segments_;
  Obstacles obstacles_;
  std::vector<Label> labels_;
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_DRAWING_H_
