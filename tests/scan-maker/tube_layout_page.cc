#include "scan-maker/tube_layout_page.h"

#include "scan-maker/seeded_random.h"

#include <cairo.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace benchleaf::scanmaker {
namespace {

constexpr double kChassisWidth = 1900;
constexpr double kPen = 4;
constexpr double kSocket = 86;  // radius of a tube's circle, px

void Centred(Sheet& sheet, double x, double y, const Token& token, const TextStyle& style) {
  sheet.Put(x - TextAdvance(token.text, style) / 2, y, token, style);
}

void Circle(cairo_t* cairo, double x, double y, double radius) {
  cairo_new_sub_path(cairo);
  cairo_arc(cairo, x, y, radius, 0, 2 * std::numbers::pi);
  cairo_set_line_width(cairo, kPen);
  cairo_stroke(cairo);
}

void DrawTube(Sheet& sheet, double x, double y, const Part& tube, const TextStyle& style) {
  Circle(sheet.cairo(), x, y, kSocket);
  // The key by which the socket is found.
  Circle(sheet.cairo(), x, y + kSocket - 12, 8);
  TextStyle small = style;
  small.cap_height_px *= 0.8;
  double line = y + kSocket + 34;
  const Token type = TermToken("tube", tube.value);
  if (TextAdvance(type.text, style) < 1.8 * kSocket) {
    Centred(sheet, x, y - 10, TermToken("designator", tube.designator), style);
    Centred(sheet, x, y + 35, type, style);
  } else {
    // Double names find no room within the circle.
    Centred(sheet, x, y + style.cap_height_px / 2, TermToken("designator", tube.designator), style);
    Centred(sheet, x, line + 4, type, style);
    line += 1.6 * style.cap_height_px;
  }
  const std::vector<Token> words = TermBook{}.Tokens(tube.rating);
  for (const std::vector<Token>& row : Wrapped(words, small, 260)) {
    sheet.PutRow(x - RowAdvance(row, small) / 2, line, row, small);
    line += 1.5 * small.cap_height_px;
  }
}

void DrawOther(Sheet& sheet, double x, double y, const Part& part, const TextStyle& style) {
  const bool can = part.part_class == PartClass::kElectrolytic;
  if (can) {
    Circle(sheet.cairo(), x, y, 56);
  } else {
    sheet.Rectangle(x - 75, y - 60, 150, 120, kPen);
  }
  Centred(sheet, x, y + style.cap_height_px / 2, TermToken("designator", part.designator), style);
}

}  // namespace

MadePage MakeTubeLayoutPage(const std::string& title, const std::vector<Part>& parts, const PageFurniture& furniture,
                            std::uint64_t seed) {
  Sheet sheet(kPageWidth, kPageHeight);
  PutFurniture(sheet, furniture);
  SeededRandom random(seed);
  TextStyle style = furniture.text;
  style.cap_height_px = 27;
  TextStyle large = style;
  large.cap_height_px = 36;
  sheet.PutCentred(kPageWidth / 2.0, 350, title, large);

  // Picture tubes do not sit on the chassis.
  std::vector<Part> shown;
  std::vector<Part> picture_tubes;
  for (const Part& part : parts) {
    if (part.part_class == PartClass::kTube) {
      const bool picture = part.value.find('P') != std::string::npos;
      (picture ? picture_tubes : shown).push_back(part);
    } else if (part.part_class == PartClass::kTransformer ||
               (part.part_class == PartClass::kElectrolytic && part.description.find('-') != std::string::npos)) {
      shown.push_back(part);
    }
  }
  const int columns = shown.size() > 12 ? 5 : 4;
  const int rows = (static_cast<int>(shown.size()) + columns - 1) / columns;
  const double pitch_x = (kChassisWidth - 60) / columns;
  const double pitch_y = 330;
  const double left = (kPageWidth - kChassisWidth) / 2;
  const double top = 520;
  const double height = rows * pitch_y + 90;
  sheet.Rectangle(left, top, kChassisWidth, height, 6);
  sheet.Rectangle(left + 20, top + 20, kChassisWidth - 40, height - 40, 3);
  // Neighbours on the drawing are no neighbours in the list: the parts are dealt out.
  for (std::size_t i = shown.size(); i > 1; --i) {
    std::swap(shown[i - 1], shown[static_cast<std::size_t>(random.Whole(0, static_cast<int>(i) - 1))]);
  }
  for (std::size_t i = 0; i < shown.size(); ++i) {
    const int row = static_cast<int>(i) / columns;
    const double x = left + 30 + (static_cast<int>(i) % columns + 0.5) * pitch_x + random.Between(-30, 30);
    const double y = top + 50 + (row + 0.42) * pitch_y + random.Between(-25, 25);
    if (shown[i].part_class == PartClass::kTube) {
      DrawTube(sheet, x, y, shown[i], style);
    } else {
      DrawOther(sheet, x, y, shown[i], style);
    }
  }
  double foot = top + height;
  for (const Part& tube : picture_tubes) {
    cairo_t* cairo = sheet.cairo();
    cairo_move_to(cairo, left + 300, foot + 60);
    cairo_curve_to(cairo, left + 500, foot + 320, left + kChassisWidth - 500, foot + 320, left + kChassisWidth - 300,
                   foot + 60);
    cairo_close_path(cairo);
    cairo_set_line_width(cairo, kPen);
    cairo_stroke(cairo);
    Centred(sheet, kPageWidth / 2.0, foot + 130, TermToken("designator", tube.designator), style);
    Centred(sheet, kPageWidth / 2.0, foot + 180, TermToken("tube", tube.value), style);
    foot += 300;
  }
  sheet.PutCentred(kPageWidth / 2.0, foot + 90, "FRONT OF CHASSIS", style);
  return sheet.Take("tube layout", furniture.printed_number());
}

}  // namespace benchleaf::scanmaker
