#include "scan-maker/drawing.h"

#include <cairo.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace benchleaf::scanmaker {
namespace {

constexpr double kWirePen = 2.5;    // px
constexpr double kLinePitch = 1.5;  // from line to line, capital heights
constexpr int kHop = 12;            // radius of a wire's jump, px

int Px(double value) { return static_cast<int>(std::lround(value)); }

Box Between(double x1, double y1, double x2, double y2) {
  const int left = Px(std::min(x1, x2));
  const int top = Px(std::min(y1, y2));
  return {left, top, Px(std::max(x1, x2)) - left, Px(std::max(y1, y2)) - top};
}

double DrawTwoLead(cairo_t* cairo, const Part& part) {
  switch (part.part_class) {
    case PartClass::kCapacitor:
      return CapacitorSymbol(cairo);
    case PartClass::kElectrolytic:
      return ElectrolyticSymbol(cairo);
    case PartClass::kVariableCapacitor:
      return VariableCapacitorSymbol(cairo);
    case PartClass::kCoil:
      return CoilSymbol(cairo, 4);
    case PartClass::kDiode:
      return DiodeSymbol(cairo);
    case PartClass::kSwitch:
      return SwitchSymbol(cairo);
    case PartClass::kFuse:
      return FuseSymbol(cairo);
    case PartClass::kLamp:
      return LampSymbol(cairo);
    case PartClass::kControl:
      return ControlSymbol(cairo);
    default:
      return ResistorSymbol(cairo);
  }
}

// What is lettered beside a part: its designator, then its value, rating or type and function.
std::vector<Token> LabelLines(const Part& part) {
  std::vector<Token> lines = {TermToken("designator", part.drawn_designator())};
  const std::string& value = part.drawn_value.empty() ? part.value : part.drawn_value;
  if (part.part_class == PartClass::kTube) {
    lines.push_back(TermToken("tube", value));
  } else if (part.part_class == PartClass::kDiode || part.part_class == PartClass::kTransistor) {
    lines.push_back(TermToken("semiconductor", value));
  } else if (!value.empty()) {
    lines.push_back(TermToken("value", value));
  }
  const bool rated = part.rating.find(' ') != std::string::npos && part.rating != "1/2 W" && part.rating != "500 V";
  if (rated && (part.part_class == PartClass::kElectrolytic || part.part_class == PartClass::kResistor)) {
    lines.push_back(TermToken("value", part.rating));
  }
  return lines;
}

}  // namespace

Drawing::Drawing(Sheet& sheet, const DrawingStyle& style, std::uint64_t seed)
    : sheet_(sheet), style_(style), random_(seed) {
  obstacles_.width = sheet.width();
  obstacles_.height = sheet.height();
}

void Drawing::MoveTo(double x_px, double y_px) {
  origin_x_ = x_px;
  origin_y_ = y_px;
}

double Drawing::X(const Spot& spot) const { return origin_x_ + spot.x * kUnit; }
double Drawing::Y(const Spot& spot) const { return origin_y_ + spot.y * kUnit; }

void Drawing::AddSegment(double x1, double y1, double x2, double y2) {
  const Segment segment{Px(x1), Px(y1), Px(x2), Px(y2)};
  if (segment.x1 != segment.x2 || segment.y1 != segment.y2) {
    segments_.push_back(segment);
  }
}

void Drawing::Wire(std::initializer_list<Spot> spots) {
  for (const Spot* spot = spots.begin(); spot + 1 < spots.end(); ++spot) {
    AddSegment(X(*spot), Y(*spot), X(spot[1]), Y(spot[1]));
  }
}

void Drawing::AddLabel(const Box& box, bool upright, const Part& part, bool turnable) {
  labels_.push_back({box, upright, turnable, LabelLines(part)});
}

void Drawing::Lay(Spot from, Spot to, const Part& part) {
  const double x1 = X(from);
  const double y1 = Y(from);
  const double x2 = X(to);
  const double y2 = Y(to);
  const double cx = (x1 + x2) / 2;
  const double cy = (y1 + y2) / 2;
  const double length = std::hypot(x2 - x1, y2 - y1);
  const double dx = (x2 - x1) / length;
  const double dy = (y2 - y1) / length;
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, cx, cy);
  cairo_rotate(cairo, std::atan2(dy, dx));
  const double half = DrawTwoLead(cairo, part);
  cairo_restore(cairo);
  AddSegment(x1, y1, cx - half * dx, cy - half * dy);
  AddSegment(cx + half * dx, cy + half * dy, x2, y2);
  const bool upright = std::abs(dy) > std::abs(dx);
  // Resistors and coils are slimmer than the plates of capacitors.
  const bool slim = part.part_class == PartClass::kResistor || part.part_class == PartClass::kFuse;
  const double reach = slim ? 15 : kSymbolReach;
  const Box box = upright ? Between(cx - reach, cy - half, cx + reach, cy + half)
                          : Between(cx - half, cy - reach, cx + half, cy + reach);
  obstacles_.solids.push_back(box);
  AddLabel(box, upright, part);
}

TubeLeads Drawing::Tube(double x, double y, const TubeShape& shape, const Part& part, int level_grid) {
  const double cx = X({x, y});
  const double pitch = GridPitch(shape);
  const double cy = Y({x, y}) - kFirstGridY + (level_grid - 1) * pitch;
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, cx, cy);
  TubeSymbol(cairo, shape);
  cairo_restore(cairo);
  const Box envelope = Between(cx - kEnvelope, cy - kEnvelope, cx + kEnvelope, cy + kEnvelope);
  obstacles_.solids.push_back(envelope);
  AddLabel(envelope, true, part, false);

  auto spot = [&](double dx, double dy) { return Spot{x + dx / kUnit, (cy + dy - origin_y_) / kUnit}; };
  auto side = [&](int grid) {
    const double dy = kFirstGridY - (grid - 1) * pitch;
    return std::pair{std::sqrt(kEnvelope * kEnvelope - dy * dy), dy};
  };
  TubeLeads leads;
  leads.grid = spot(-side(1).first, side(1).second);
  leads.screen = spot(side(2).first, side(2).second);
  leads.third_grid = spot(-side(3).first, side(3).second);
  const double plate_x = shape.plates == 1 ? 0 : kTwinPlateX;
  const double plate_y = -std::sqrt(kEnvelope * kEnvelope - plate_x * plate_x);
  leads.plate = spot(-plate_x, plate_y);
  leads.second_plate = spot(plate_x, plate_y);
  leads.cathode = spot(kCathodeX, std::sqrt(kEnvelope * kEnvelope - kCathodeX * kCathodeX));
  PinNumber(leads.plate, 7, -6);
  PinNumber(leads.cathode, -22, 22);
  if (shape.grids > 0) {
    PinNumber(leads.grid, -20, 26);
  }
  return leads;
}

void Drawing::PinNumber(const Spot& at, double dx_px, double dy_px) {
  TextStyle style = style_.text;
  style.cap_height_px *= 0.7;
  style.stroke_px *= 0.8;
  const Token pin = TermToken("text", std::to_string(random_.Whole(1, 9)));
  obstacles_.solids.push_back(sheet_.Put(X(at) + dx_px, Y(at) + dy_px, pin, style));
}

void Drawing::Winding(double x, double y1, double y2, bool facing_left) {
  const double cx = X({x, y1});
  const double top = Y({x, y1});
  const double bottom = Y({x, y2});
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, cx, (top + bottom) / 2);
  cairo_rotate(cairo, facing_left ? -std::numbers::pi / 2 : std::numbers::pi / 2);
  const double half = CoilSymbol(cairo, std::max(2, static_cast<int>((bottom - top - 16) / 22)));
  cairo_restore(cairo);
  AddSegment(cx, top, cx, (top + bottom) / 2 - half);
  AddSegment(cx, (top + bottom) / 2 + half, cx, bottom);
  obstacles_.solids.push_back(Between(cx - 26, top, cx + 26, bottom));
}

void Drawing::Core(double x, double y1, double y2) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X({x, y1}), (Y({x, y1}) + Y({x, y2})) / 2);
  CoreSymbol(cairo, (y2 - y1) * kUnit);
  cairo_restore(cairo);
}

void Drawing::Transformer(double x, double y1, double y2, bool iron, const Part& part) {
  Winding(x, y1, y2, false);
  Winding(x + 3, y1, y2, true);
  Box box = Between(X({x, y1}) - 26, Y({x, y1}), X({x + 3, y2}) + 26, Y({x + 3, y2}));
  if (iron) {
    Core(x + 1.5, y1, y2);
  } else {
    box = Between(X({x - 1.8, y1}), Y({x, y1 - 0.8}), X({x + 4.8, y2}), Y({x, y2 + 1}));
    cairo_t* cairo = sheet_.cairo();
    const double dashes[] = {18, 10};
    cairo_save(cairo);
    cairo_set_dash(cairo, dashes, 2, 0);
    sheet_.Rectangle(box.x, box.y, box.width, box.height, kWirePen);
    cairo_restore(cairo);
  }
  obstacles_.solids.push_back(box);
  AddLabel(box, true, part, false);
}

void Drawing::Symbol(Spot at, void (*draw)(cairo_t*), const Box& reach, const Part& part) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X(at), Y(at));
  draw(cairo);
  cairo_restore(cairo);
  const Box box{Px(X(at)) + reach.x, Px(Y(at)) + reach.y, reach.width, reach.height};
  obstacles_.solids.push_back(box);
  AddLabel(box, true, part, false);
}

void Drawing::Ground(Spot at) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X(at), Y(at));
  GroundSymbol(cairo);
  cairo_restore(cairo);
  obstacles_.solids.push_back(Between(X(at) - 24, Y(at), X(at) + 24, Y(at) + 36));
}

void Drawing::Antenna(Spot at) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X(at), Y(at));
  AntennaSymbol(cairo);
  cairo_restore(cairo);
  obstacles_.solids.push_back(Between(X(at) - 26, Y(at) - 60, X(at) + 26, Y(at)));
}

void Drawing::Heater(Spot at, const Part& tube) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X(at), Y(at));
  HeaterSymbol(cairo);
  cairo_restore(cairo);
  TextStyle style = style_.text;
  const Token designator = TermToken("designator", tube.designator);
  const double x = X(at) - TextAdvance(designator.text, style) / 2;
  obstacles_.solids.push_back(sheet_.Put(x, Y(at) - 62, designator, style));
  obstacles_.solids.push_back(Between(X(at) - 22, Y(at) - 52, X(at) + 22, Y(at)));
}

void Drawing::Terminal(Spot at, const std::string& words, int direction_degrees) {
  cairo_t* cairo = sheet_.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, X(at), Y(at));
  cairo_rotate(cairo, direction_degrees * std::numbers::pi / 180);
  ArrowSymbol(cairo);
  cairo_restore(cairo);
  const double cap = style_.text.cap_height_px;
  const double width = TextAdvance(words, style_.text);
  double x = X(at) + 10;
  double y = Y(at) + cap / 2;
  if (direction_degrees == 90) {
    x = X(at) - width / 2;
    y = Y(at) + cap + 10;
  } else if (direction_degrees == 270) {
    x = X(at) - width / 2;
    y = Y(at) - 10;
  } else if (direction_degrees == 180) {
    x = X(at) - width - 10;
  }
  obstacles_.solids.push_back(sheet_.PutWords(x, y, words, style_.text));
}

void Drawing::Words(Spot at, const std::string& words, double size) {
  TextStyle style = style_.text;
  style.cap_height_px *= size;
  obstacles_.solids.push_back(sheet_.PutWords(X(at), Y(at), words, style));
}

void Drawing::DrawWires() {
  cairo_t* cairo = sheet_.cairo();
  // Three and more ends at a place make a joint; a wire that runs through it counts for two.
  std::map<std::pair<int, int>, int> ends;
  for (const Segment& s : segments_) {
    ++ends[{s.x1, s.y1}];
    ++ends[{s.x2, s.y2}];
  }
  auto within = [](int value, int a, int b) { return value > std::min(a, b) && value < std::max(a, b); };
  for (auto& [place, count] : ends) {
    for (const Segment& s : segments_) {
      const bool through = s.level() ? place.second == s.y1 && within(place.first, s.x1, s.x2)
                                     : place.first == s.x1 && within(place.second, s.y1, s.y2);
      count += through ? 2 : 0;
    }
    if (count >= 3) {
      cairo_new_sub_path(cairo);
      cairo_arc(cairo, place.first, place.second, 7, 0, 2 * std::numbers::pi);
      cairo_fill(cairo);
    }
  }
  for (const Segment& s : segments_) {
    std::vector<int> jumps;
    for (const Segment& other : segments_) {
      if (style_.hops && s.level() && !other.level() && within(other.x1, s.x1, s.x2) &&
          within(s.y1, other.y1, other.y2)) {
        jumps.push_back(other.x1);
      }
    }
    std::sort(jumps.begin(), jumps.end());
    jumps.erase(std::unique(jumps.begin(), jumps.end(), [](int a, int b) { return b - a < 2 * kHop; }), jumps.end());
    cairo_move_to(cairo, std::min(s.x1, s.x2), s.level() ? s.y1 : std::min(s.y1, s.y2));
    for (const int x : jumps) {
      cairo_line_to(cairo, x - kHop, s.y1);
      cairo_arc(cairo, x, s.y1, kHop, std::numbers::pi, 2 * std::numbers::pi);
    }
    cairo_line_to(cairo, std::max(s.x1, s.x2), s.level() ? s.y1 : std::max(s.y1, s.y2));
    cairo_set_line_width(cairo, kWirePen);
    cairo_stroke(cairo);
  }
}

void Drawing::Letter(const Label& label) {
  int first_turn = 0;
  if (label.turnable && label.upright && random_.Unit() < style_.turned_share) {
    // Drawings are read from below or from the right; some letterers forget it.
    first_turn = random_.Unit() < 0.7 ? 270 : 90;
  }
  LabelBlock block{label.part, label.upright, label.turnable, 0, 0, style_.text.cap_height_px};
  for (const Token& line : label.lines) {
    block.width = std::max(block.width, TextAdvance(line.text, style_.text));
  }
  block.height = block.cap_height * (1 + kLinePitch * (static_cast<double>(label.lines.size()) - 1));
  const Placement best = PlaceLabel(block, obstacles_, first_turn);
  const double cap = style_.text.cap_height_px;
  double slip_x = 0;
  double slip_y = 0;
  if (best.cost <= 0 && random_.Unit() < style_.touching_share) {
    // A careless draughtsman: the lettering runs into the symbol or its wire.
    const double slip = 0.65 * cap;
    const bool beside = best.box.x >= label.part.right() || best.box.right() <= label.part.x;
    slip_x = beside ? (best.box.x >= label.part.right() ? -slip : slip) : 0;
    slip_y = beside ? 0 : (best.box.y >= label.part.bottom() ? -slip : slip);
  }
  double line_at = cap;
  // A label of its own height, line after line, in the direction that the turned reader calls down.
  for (const Token& line : label.lines) {
    double x = best.box.x + slip_x;
    double y = best.box.y + slip_y;
    const double slack_along =
        (best.turn == 0 ? best.box.width : best.box.height) - TextAdvance(line.text, style_.text);
    // Lettering beside a part starts at the part; above and below it is centred.
    const bool centred = best.box.x < label.part.right() && best.box.right() > label.part.x;
    const double along =
        centred || best.turn != 0 ? slack_along / 2 : (best.box.right() <= label.part.x ? slack_along : 0);
    if (best.turn == 0) {
      x += along;
      y += line_at;
    } else if (best.turn == 270) {
      x += line_at;
      y += best.box.height - along;
    } else {
      x += best.box.width - line_at;
      y += along;
    }
    obstacles_.solids.push_back(sheet_.Put(x, y, line, style_.text, best.turn));
    line_at += kLinePitch * cap;
  }
}

void Drawing::Finish() {
  DrawWires();
  for (const Segment& s : segments_) {
    obstacles_.wires.push_back(Between(s.x1 - 2, s.y1 - 2, s.x2 + 2, s.y2 + 2));
  }
  // Wide symbols have fewer places to choose from: they go first.
  std::stable_sort(labels_.begin(), labels_.end(),
                   [](const Label& a, const Label& b) { return a.part.width > b.part.width; });
  for (const Label& label : labels_) {
    Letter(label);
  }
  labels_.clear();
  segments_.clear();
}

}  // namespace benchleaf::scanmaker
