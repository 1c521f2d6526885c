#include "outside/kicad_sheet.h"

#include "outside/designator_form.h"
#include "outside/drawing_board.h"
#include "outside/kicad_symbol.h"
#include "outside/s_expression.h"
#include "outside/term_forms.h"
#include "outside/tube_lettering.h"

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf::outside {
namespace {

constexpr double kBusMm = 0.3048;      // KiCad's default of 12 mil
constexpr double kJunctionMm = 0.457;  // radius; 36 mil across

Point At(const Node& item) {
  const Node* at = item.Find("at");
  return at == nullptr ? Point{} : Point{at->Number(1), at->Number(2)};
}

// In quarter turns counter-clockwise.
int QuarterTurns(const Node& item) {
  const Node* at = item.Find("at");
  return at == nullptr ? 0 : (static_cast<int>(at->Number(3)) / 90 % 4 + 4) % 4;
}

Point Direction(int quarter_turns) {
  constexpr double kX[] = {1, 0, -1, 0};
  constexpr double kY[] = {0, -1, 0, 1};
  return {kX[quarter_turns], kY[quarter_turns]};
}

void DrawPath(DrawingBoard& board, const Node& item, double line_mm) {
  std::vector<Point> points;
  if (const Node* list = item.Find("pts")) {
    for (const Node* point : list->All("xy")) points.push_back({point->Number(1), point->Number(2)});
  }
  board.Polyline(points, line_mm);
}

void DrawBusEntry(DrawingBoard& board, const Node& item) {
  const Point from = At(item);
  if (const Node* size = item.Find("size")) {
    board.Polyline({from, {from.x + size->Number(1), from.y + size->Number(2)}}, kLineMm);
  }
}

void DrawNoConnect(DrawingBoard& board, const Node& item) {
  constexpr double kArm = 0.6;
  const Point at = At(item);
  board.Polyline({{at.x - kArm, at.y - kArm}, {at.x + kArm, at.y + kArm}}, kLineMm);
  board.Polyline({{at.x - kArm, at.y + kArm}, {at.x + kArm, at.y - kArm}}, kLineMm);
}

Caption CaptionOf(const Node& item, const char* kind) {
  Caption caption{kind, WithoutBars(item.Text(1))};
  ApplyEffects(item, caption);
  caption.upward = QuarterTurns(item) % 2 == 1;
  return caption;
}

// Stands on its wire.
void DrawLabel(DrawingBoard& board, const Node& item) {
  constexpr double kGap = 0.35;
  const Caption caption = CaptionOf(item, "net");
  Point at = At(item);
  (caption.upward ? at.x : at.y) -= kGap;
  board.Text(at, caption);
}

// A five-cornered flag from `at` along `direction`, and the anchor of the text behind it.
Point DrawFlag(DrawingBoard& board, Point at, Point direction, double size) {
  const Point side{-direction.y * size / 2, direction.x * size / 2};
  const Point shoulder{at.x + direction.x * size / 2, at.y + direction.y * size / 2};
  const Point end{at.x + direction.x * size, at.y + direction.y * size};
  board.Polyline({at,
                  {shoulder.x + side.x, shoulder.y + side.y},
                  {end.x + side.x, end.y + side.y},
                  {end.x - side.x, end.y - side.y},
                  {shoulder.x - side.x, shoulder.y - side.y},
                  at},
                 kLineMm);
  constexpr double kGap = 0.4;
  return {end.x + direction.x * kGap, end.y + direction.y * kGap};
}

void DrawFlaggedLabel(DrawingBoard& board, const Node& item) {
  const Caption caption = CaptionOf(item, "net");
  board.Text(DrawFlag(board, At(item), Direction(QuarterTurns(item)), caption.size_mm), caption);
}

void DrawSheetBox(DrawingBoard& board, const Node& item) {
  const Point a = At(item);
  const Node* size = item.Find("size");
  if (size == nullptr) {
    return;
  }
  const Point b{a.x + size->Number(1), a.y + size->Number(2)};
  board.Polyline({a, {b.x, a.y}, b, {a.x, b.y}, a}, kLineMm);
  for (const Node* property : item.All("property")) {
    Caption caption{"text", property->Text(2)};
    ApplyEffects(*property, caption);
    board.Text(At(*property), caption);
  }
  for (const Node* pin : item.All("pin")) {
    // A pin's angle points out of the box.
    const Caption caption = CaptionOf(*pin, "net");
    board.Text(DrawFlag(board, At(*pin), Direction((QuarterTurns(*pin) + 2) % 4), caption.size_mm), caption);
  }
}

bool IsHidden(const Node& property) {
  const Node* effects = property.Find("effects");
  return effects != nullptr && effects->Has("hide");
}

// A property is aligned before it is turned with its symbol: KiCad takes the place of the text's middle from that, and
// letters it upright or upwards there.
void DrawProperty(DrawingBoard& board, const Node& property, const Placement& placement, Caption caption) {
  ApplyEffects(property, caption);
  const bool level = QuarterTurns(property) % 2 == 0;
  const Point run = placement.Vector(level ? 1 : 0, level ? 0 : -1);
  const double shift = board.TextWidth(caption.text, caption.size_mm) * (0.5 - caption.alignment.along);
  const Point at = At(property);
  caption.alignment.along = 0.5;
  caption.upward = run.x == 0;
  board.Text({at.x + shift * run.x, at.y + shift * run.y}, caption);
}

// What is lettered beside a placed symbol.
struct PlacedPart {
  std::string reference;    // without unit letter
  std::string unit_letter;  // empty for a part of one unit
  bool power = false;       // a rail's symbol, whose value names its net
};

std::string ReferenceOf(const Node& symbol) {
  for (const Node* property : symbol.All("property")) {
    if (property->Text(1) == "Reference") {
      return property->Text(2);
    }
  }
  return {};
}

Caption ReferenceCaption(const PlacedPart& part, const Node& property) {
  Caption caption{"text", part.reference + part.unit_letter};
  ApplyEffects(property, caption);
  if (HasDesignatorForm(caption.text) && caption.size_mm >= kLeastReferenceMm) {
    caption.kind = "designator";
  }
  return caption;
}

// A tube's own type stays; other devices are lettered as tubes.
Caption ValueCaption(const PlacedPart& part, const Node& property, std::uint64_t seed) {
  Caption caption{part.power ? "net" : "value", WithoutBars(property.Text(2))};
  if (!part.power && HoldsDevice(part.reference)) {
    caption.kind = "tube";
    if (!HasTubeForm(caption.text)) {
      caption.text = TubeTypeFor(part.reference, seed);
    }
  }
  return caption;
}

void DrawProperties(DrawingBoard& board, const Node& symbol, const Placement& placement, const PlacedPart& part,
                    std::uint64_t seed) {
  for (const Node* property : symbol.All("property")) {
    const bool is_reference = property->Text(1) == "Reference";
    if (IsHidden(*property) || property->Text(2).empty() || !(is_reference || property->Text(1) == "Value")) {
      continue;
    }
    DrawProperty(board, *property, placement,
                 is_reference ? ReferenceCaption(part, *property) : ValueCaption(part, *property, seed));
  }
}

int WholeNumber(const Node& item, std::string_view name) {
  const Node* found = item.Find(name);
  return found == nullptr ? 1 : static_cast<int>(found->Number(1));
}

using Library = std::map<std::string, const Node*>;

void DrawPlacedSymbol(DrawingBoard& board, const Node& symbol, const Library& library, std::uint64_t seed) {
  const Node* name = symbol.Find("lib_name") != nullptr ? symbol.Find("lib_name") : symbol.Find("lib_id");
  const auto found = library.find(name == nullptr ? "" : name->Text(1));
  if (found == library.end()) {
    throw std::runtime_error("a symbol is not among the sheet's lib_symbols");
  }
  const Node* mirror = symbol.Find("mirror");
  const Placement placement{At(symbol), QuarterTurns(symbol), mirror == nullptr ? "" : mirror->Text(1)};
  const SymbolUnit unit{WholeNumber(symbol, "unit"), WholeNumber(symbol, "convert")};
  DrawSymbol(board, *found->second, unit, placement);
  const bool several = UnitCount(*found->second) > 1;
  const std::string letter = several ? std::string(1, static_cast<char>('A' + unit.unit - 1)) : std::string();
  const PlacedPart part{ReferenceOf(symbol), letter, found->second->Find("power") != nullptr};
  DrawProperties(board, symbol, placement, part, seed);
}

void DrawItem(DrawingBoard& board, const Node& item, const Library& library, std::uint64_t seed) {
  const std::string_view name = item.name();
  if (name == "symbol") {
    DrawPlacedSymbol(board, item, library, seed);
  } else if (name == "wire" || name == "polyline") {
    DrawPath(board, item, kLineMm);
  } else if (name == "bus") {
    DrawPath(board, item, kBusMm);
  } else if (name == "bus_entry") {
    DrawBusEntry(board, item);
  } else if (name == "junction") {
    board.Circle(At(item), kJunctionMm, kLineMm, Fill::kInk);
  } else if (name == "no_connect") {
    DrawNoConnect(board, item);
  } else if (name == "text") {
    board.Text(At(item), CaptionOf(item, "text"));
  } else if (name == "label") {
    DrawLabel(board, item);
  } else if (name == "global_label" || name == "hierarchical_label") {
    DrawFlaggedLabel(board, item);
  } else if (name == "sheet") {
    DrawSheetBox(board, item);
  }
}

Node ReadSchematic(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) {
    throw std::runtime_error(file.string() + " cannot be read: install kicad-demos");
  }
  std::ostringstream text;
  text << stream.rdbuf();
  Node tree = ParseSExpression(text.str());
  if (tree.name() != "kicad_sch" || tree.Find("paper") == nullptr || tree.Find("lib_symbols") == nullptr) {
    throw std::runtime_error(file.string() + " is no KiCad 6 schematic");
  }
  return tree;
}

// Sheets of ISO 216, lying unless they are said to stand.
Point PaperMm(const Node& paper) {
  const std::map<std::string, Point> kSizes = {{"A4", {297, 210}}, {"A3", {420, 297}}};
  const auto found = kSizes.find(paper.Text(1));
  if (found == kSizes.end()) {
    throw std::runtime_error("paper " + paper.Text(1) + " is not drawn");
  }
  return paper.Has("portrait") ? Point{found->second.y, found->second.x} : found->second;
}

}  // namespace

scanmaker::MadePage DrawKicadSheet(const std::filesystem::path& file, scanmaker::Lettering lettering,
                                   std::uint64_t seed) {
  const Node tree = ReadSchematic(file);
  Library library;
  for (const Node* symbol : tree.Find("lib_symbols")->All("symbol")) library[symbol->Text(1)] = symbol;

  const Point paper = PaperMm(*tree.Find("paper"));
  DrawingBoard board(paper.x, paper.y, kPxPerMm, lettering, seed << 32);
  for (const Node& item : tree.items) DrawItem(board, item, library, seed);
  return board.Take();
}

}  // namespace benchleaf::outside
