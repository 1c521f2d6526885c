#include "scan-maker/locator_page.h"

#include "scan-maker/label_placing.h"
#include "scan-maker/seeded_random.h"

#include <cairo.h>

#include <cmath>
#include <numbers>
#include <optional>

namespace benchleaf::scanmaker {
namespace {

constexpr double kPen = 3.5;
const Box kChassis{300, 480, 1950, 2200};

bool IsFree(const Box& box, int margin, const Obstacles& obstacles) {
  const Box wide = Grown(box, margin, obstacles.width, obstacles.height);
  for (const Box& solid : obstacles.solids) {
    if (!Intersection(wide, solid).empty()) {
      return false;
    }
  }
  return true;
}

// A free place for a body of that size on the chassis; nothing when none turns up.
std::optional<Box> FreePlace(int width, int height, int margin, const Obstacles& obstacles, SeededRandom& random) {
  constexpr int kTries = 400;
  for (int i = 0; i < kTries; ++i) {
    const Box box{random.Whole(kChassis.x + 60, kChassis.right() - 60 - width),
                  random.Whole(kChassis.y + 60, kChassis.bottom() - 60 - height), width, height};
    if (IsFree(box, margin, obstacles)) {
      return box;
    }
  }
  return std::nullopt;
}

void DrawSocket(cairo_t* cairo, const Box& box) {
  const double radius = box.width / 2.0;
  cairo_set_line_width(cairo, kPen);
  for (const double r : {radius, 0.45 * radius}) {
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, box.center_x(), box.center_y(), r, 0, 2 * std::numbers::pi);
    cairo_stroke(cairo);
  }
  for (int pin = 0; pin < 8; ++pin) {
    const double angle = pin * std::numbers::pi / 4;
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, box.center_x() + 0.72 * radius * std::cos(angle), box.center_y() + 0.72 * radius * std::sin(angle),
              6, 0, 2 * std::numbers::pi);
    cairo_fill(cairo);
  }
}

// A body with its two leads; resistors carry bands.
void DrawBody(Sheet& sheet, const Box& box, bool level, PartClass part_class) {
  constexpr int kLead = 34;
  const Box body = level ? Box{box.x + kLead, box.y, box.width - 2 * kLead, box.height}
                         : Box{box.x, box.y + kLead, box.width, box.height - 2 * kLead};
  sheet.Rectangle(body.x, body.y, body.width, body.height, kPen);
  if (level) {
    sheet.Line(box.x, box.center_y(), body.x, box.center_y(), kPen);
    sheet.Line(body.right(), box.center_y(), box.right(), box.center_y(), kPen);
  } else {
    sheet.Line(box.center_x(), box.y, box.center_x(), body.y, kPen);
    sheet.Line(box.center_x(), body.bottom(), box.center_x(), box.bottom(), kPen);
  }
  if (part_class == PartClass::kResistor) {
    for (int band = 1; band <= 3; ++band) {
      if (level) {
        sheet.Line(body.x + 14 * band, body.y, body.x + 14 * band, body.bottom(), 4);
      } else {
        sheet.Line(body.x, body.y + 14 * band, body.right(), body.y + 14 * band, 4);
      }
    }
  }
}

void PutLabel(Sheet& sheet, const Box& body, bool level, const Token& token, const TextStyle& style,
              Obstacles& obstacles, SeededRandom& random) {
  constexpr int kTurns[] = {0, 0, 90, 270};
  const LabelBlock block{body, !level, true, TextAdvance(token.text, style), style.cap_height_px, style.cap_height_px};
  const Placement place = PlaceLabel(block, obstacles, kTurns[random.Whole(0, 3)]);
  double x = place.box.x;
  double y = place.box.y + style.cap_height_px;
  if (place.turn == 270) {
    x = place.box.x + style.cap_height_px;
    y = place.box.bottom();
  } else if (place.turn == 90) {
    y = place.box.y;
  }
  obstacles.solids.push_back(sheet.Put(x, y, token, style, place.turn));
}

// `kind` is that of the parts' labels.
MadePage MakePage(const std::string& title, const std::vector<Part>& parts, const std::string& kind,
                  const PageFurniture& furniture, std::uint64_t seed) {
  Sheet sheet(kPageWidth, kPageHeight);
  PutFurniture(sheet, furniture);
  SeededRandom random(seed);
  TextStyle style = furniture.text;
  style.cap_height_px = 24;
  TextStyle large = style;
  large.cap_height_px = 36;
  sheet.PutCentred(kPageWidth / 2.0, 360, title, large);
  sheet.Rectangle(kChassis.x, kChassis.y, kChassis.width, kChassis.height, 6);

  Obstacles obstacles{kPageWidth, kPageHeight, {}, {}};
  auto body = [&](const Part& part, int width, int height) {
    const bool socket = part.part_class == PartClass::kTube;
    const bool level = random.Unit() < 0.5;
    const std::optional<Box> box =
        FreePlace(level ? width : height, level ? height : width, socket ? 70 : 44, obstacles, random);
    if (!box) {
      return;
    }
    obstacles.solids.push_back(*box);
    if (socket) {
      DrawSocket(sheet.cairo(), *box);
    } else {
      DrawBody(sheet, *box, level, part.part_class);
    }
    PutLabel(sheet, *box, level, TermToken(kind, part.designator), style, obstacles, random);
  };
  for (const Part& part : parts) {
    if (part.part_class == PartClass::kTube && part.value.find('P') == std::string::npos) {
      body(part, 190, 190);
    }
  }
  for (const Part& part : parts) {
    if (part.part_class == PartClass::kResistor) {
      body(part, 150, 34);
    } else if (part.part_class == PartClass::kCapacitor) {
      body(part, 190, 54);
    } else if (part.part_class == PartClass::kCoil) {
      body(part, 170, 64);
    }
  }
  sheet.PutCentred(kPageWidth / 2.0, kChassis.bottom() + 90, "REAR OF CHASSIS", style);
  return sheet.Take("parts locator", furniture.printed_number());
}

}  // namespace

MadePage MakeLocatorPage(const std::string& title, const std::vector<Part>& parts, const PageFurniture& furniture,
                         std::uint64_t seed) {
  return MakePage(title, parts, "designator", furniture, seed);
}

MadePage MakeItemLocatorPage(const std::string& title, int count, const PageFurniture& furniture, std::uint64_t seed) {
  constexpr PartClass kBodies[] = {PartClass::kResistor, PartClass::kCapacitor, PartClass::kCoil};
  std::vector<Part> parts;
  for (int item = 1; item <= count; ++item) {
    Part part;
    part.part_class = kBodies[item % 3];
    part.designator = std::to_string(item);
    parts.push_back(std::move(part));
  }
  return MakePage(title, parts, "item", furniture, seed);
}

}  // namespace benchleaf::scanmaker
