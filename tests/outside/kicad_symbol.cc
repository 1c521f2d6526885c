#include "outside/kicad_symbol.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf::outside {
namespace {

// Between a pin's line and the number above it.
constexpr double kPinTextGapMm = 0.25;

struct UnitName {
  int unit = 0;
  int convert = 0;
};

// "NAME_1_2": unit 1, shape 2; 0 stands for all of them.
UnitName ParseUnitName(const std::string& name) {
  const std::size_t last = name.rfind('_');
  const std::size_t before = last == std::string::npos ? last : name.rfind('_', last - 1);
  if (before == std::string::npos) {
    return {};
  }
  return {std::stoi(name.substr(before + 1, last - before - 1)), std::stoi(name.substr(last + 1))};
}

Fill FillOf(const Node& shape) {
  const Node* fill = shape.Find("fill");
  const Node* type = fill == nullptr ? nullptr : fill->Find("type");
  return type != nullptr && type->Text(1) == "outline" ? Fill::kInk : Fill::kNone;
}

Point PlaceOf(const Node& shape, std::string_view name, const Placement& placement) {
  const Node* at = shape.Find(name);
  return at == nullptr ? placement.at : placement.Place(at->Number(1), at->Number(2));
}

void DrawShape(DrawingBoard& board, const Node& shape, const Placement& placement) {
  const double line = LineWidth(shape);
  const Fill fill = FillOf(shape);
  if (shape.name() == "polyline") {
    std::vector<Point> points;
    if (const Node* list = shape.Find("pts")) {
      for (const Node* point : list->All("xy")) points.push_back(placement.Place(point->Number(1), point->Number(2)));
    }
    board.Polyline(points, line, fill);
  } else if (shape.name() == "rectangle") {
    const Point a = PlaceOf(shape, "start", placement);
    const Point b = PlaceOf(shape, "end", placement);
    board.Polyline({a, {b.x, a.y}, b, {a.x, b.y}, a}, line, fill);
  } else if (shape.name() == "circle") {
    const Node* radius = shape.Find("radius");
    board.Circle(PlaceOf(shape, "center", placement), radius == nullptr ? 0 : radius->Number(1), line, fill);
  } else if (shape.name() == "arc") {
    board.Arc(PlaceOf(shape, "start", placement), PlaceOf(shape, "mid", placement), PlaceOf(shape, "end", placement),
              line, fill);
  } else if (shape.name() == "text") {
    Caption caption{"text", WithoutBars(shape.Text(1))};
    ApplyEffects(shape, caption);
    const Node* at = shape.Find("at");
    const bool upright = std::fmod(at == nullptr ? 0 : at->Number(3), 1800) == 0;  // tenths of a degree
    caption.upward = placement.Vector(upright ? 1 : 0, upright ? 0 : 1).x == 0;
    board.Text(PlaceOf(shape, "at", placement), caption);
  }
}

// Which lettering of pins a symbol shows.
struct PinStyle {
  bool names = true;
  bool numbers = true;
  double name_offset = 0.508;  // from the end of the pin inwards; 0 puts the name above the pin
};

PinStyle PinStyleOf(const Node& symbol) {
  PinStyle style;
  if (const Node* names = symbol.Find("pin_names")) {
    style.names = !names->Has("hide");
    if (const Node* offset = names->Find("offset")) {
      style.name_offset = offset->Number(1);
    }
  }
  if (const Node* numbers = symbol.Find("pin_numbers")) {
    style.numbers = !numbers->Has("hide");
  }
  return style;
}

Point Along(Point from, Point direction, double distance) {
  return {from.x + distance * direction.x, from.y + distance * direction.y};
}

// Beside the middle of the pin: above it (left of it, when it stands) or below.
void LetterPinSide(DrawingBoard& board, Point middle, bool stands, bool above, Caption caption) {
  const double away = above ? -kPinTextGapMm : kPinTextGapMm;
  caption.alignment = {0.5, above ? 0.0 : 1.0};
  caption.upward = stands;
  board.Text({middle.x + (stands ? away : 0), middle.y + (stands ? 0 : away)}, caption);
}

Caption PinCaption(const Node& pin, std::string_view what) {
  Caption caption{"pin", ""};
  if (const Node* item = pin.Find(what)) {
    caption.text = item->Text(1) == "~" ? "" : WithoutBars(item->Text(1));
    ApplyEffects(*item, caption);
  }
  return caption;
}

void DrawPin(DrawingBoard& board, const Node& pin, const PinStyle& style, const Placement& placement) {
  const Node* at = pin.Find("at");
  const Node* length_item = pin.Find("length");
  if (at == nullptr || pin.Has("hide")) {
    return;
  }
  const int quarter = static_cast<int>(at->Number(3)) / 90 % 4;
  constexpr int kCosine[] = {1, 0, -1, 0};
  const Point inwards = placement.Vector(kCosine[quarter], kCosine[(quarter + 3) % 4]);
  const double length = length_item == nullptr ? 0 : length_item->Number(1);
  const Point outer = placement.Place(at->Number(1), at->Number(2));
  const Point inner = Along(outer, inwards, length);
  const bool inverted = pin.Has("inverted") || pin.Has("inverted_clock");
  constexpr double kBubbleMm = 0.5;
  if (length > 0) {
    board.Polyline({outer, Along(inner, inwards, inverted ? -2 * kBubbleMm : 0)}, kLineMm);
  }
  if (inverted) {
    board.Circle(Along(inner, inwards, -kBubbleMm), kBubbleMm, kLineMm);
  }

  const bool stands = inwards.x == 0;
  const Point middle = Along(outer, inwards, length / 2);
  Caption name = PinCaption(pin, "name");
  const bool name_inside = style.name_offset > 0;
  if (style.names && name_inside) {
    // The text starts at the pin where it runs to the right or upwards, and ends there otherwise.
    name.alignment = {inwards.x > 0 || inwards.y < 0 ? 0.0 : 1.0, 0.5};
    name.upward = stands;
    board.Text(Along(inner, inwards, style.name_offset), name);
  } else if (style.names) {
    LetterPinSide(board, middle, stands, true, name);
  }
  if (style.numbers) {
    LetterPinSide(board, middle, stands, name_inside || !style.names, PinCaption(pin, "number"));
  }
}

}  // namespace

Point Placement::Vector(double x, double y) const {
  Point point{x, -y};
  for (int i = 0; i < quarter_turns; ++i) point = {point.y, -point.x};
  if (mirror == "x") {
    point.y = -point.y;
  } else if (mirror == "y") {
    point.x = -point.x;
  }
  return point;
}

Point Placement::Place(double x, double y) const {
  const Point vector = Vector(x, y);
  return {at.x + vector.x, at.y + vector.y};
}

int UnitCount(const Node& library_symbol) {
  int count = 1;
  for (const Node* part : library_symbol.All("symbol")) count = std::max(count, ParseUnitName(part->Text(1)).unit);
  return count;
}

void DrawSymbol(DrawingBoard& board, const Node& library_symbol, const SymbolUnit& unit, const Placement& placement) {
  const PinStyle style = PinStyleOf(library_symbol);
  for (const Node* part : library_symbol.All("symbol")) {
    const UnitName of = ParseUnitName(part->Text(1));
    if ((of.unit != 0 && of.unit != unit.unit) || (of.convert != 0 && of.convert != unit.convert)) {
      continue;
    }
    for (const Node& item : part->items) {
      if (item.name() == "pin") {
        DrawPin(board, item, style, placement);
      } else {
        DrawShape(board, item, placement);
      }
    }
  }
}

double LineWidth(const Node& shape) {
  const Node* stroke = shape.Find("stroke");
  const Node* width = stroke == nullptr ? nullptr : stroke->Find("width");
  return width != nullptr && width->Number(1) > 0 ? width->Number(1) : kLineMm;
}

void ApplyEffects(const Node& item, Caption& caption) {
  const Node* effects = item.Find("effects");
  if (effects == nullptr) {
    return;
  }
  const Node* font = effects->Find("font");
  if (const Node* size = font == nullptr ? nullptr : font->Find("size")) {
    caption.size_mm = size->Number(1);
  }
  if (const Node* justify = effects->Find("justify")) {
    caption.alignment.along = justify->Has("left") ? 0 : justify->Has("right") ? 1 : 0.5;
    caption.alignment.up = justify->Has("bottom") ? 0 : justify->Has("top") ? 1 : 0.5;
  }
}

std::string WithoutBars(const std::string& text) {
  std::string plain;
  bool barred = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.compare(i, 2, "~{") == 0) {
      barred = true;
      ++i;
    } else if (barred && text[i] == '}') {
      barred = false;
    } else {
      plain += text[i];
    }
  }
  return plain;
}

}  // namespace benchleaf::outside
