// Draws the symbols that a KiCad schematic carries in its lib_symbols, placed as the sheet says.

#ifndef BENCHLEAF_TESTS_OUTSIDE_KICAD_SYMBOL_H_
#define BENCHLEAF_TESTS_OUTSIDE_KICAD_SYMBOL_H_

#include "outside/drawing_board.h"
#include "outside/s_expression.h"

#include <string>

namespace benchleaf::outside {

inline constexpr double kLineMm = 0.1524;  // KiCad's default of 6 mil
inline constexpr double kTextMm = 1.27;    // and of 50 mil

// Symbols are drawn with y up; the sheet has y down. A symbol is turned counter-clockwise first and mirrored after
// that.
struct Placement {
  Point at;               // on the sheet
  int quarter_turns = 0;  // counter-clockwise
  std::string mirror;     // "x": upside down, "y": left for right, else not

  // A direction or distance of the symbol, on the sheet.
  Point Vector(double x, double y) const;
  // A place of the symbol, on the sheet.
  Point Place(double x, double y) const;
};

// One of the symbols in a part, and which of its shapes.
struct SymbolUnit {
  int unit = 1;
  int convert = 1;  // 2 is the De Morgan shape
};

// How many units the library symbol has.
int UnitCount(const Node& library_symbol);

// Shapes, pins, and the names and numbers of pins.
void DrawSymbol(DrawingBoard& board, const Node& library_symbol, const SymbolUnit& unit, const Placement& placement);

// Width of a shape's outline, mm.
double LineWidth(const Node& shape);
// What "effects" of an item say of its lettering; `kind` and `text` are left alone.
void ApplyEffects(const Node& item, Caption& caption);
// Without the marks for a bar above (which is not drawn).
std::string WithoutBars(const std::string& text);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_KICAD_SYMBOL_H_
