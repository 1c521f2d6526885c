#include "scan-maker/page_furniture.h"

namespace benchleaf::scanmaker {

void PutFurniture(Sheet& sheet, const PageFurniture& furniture) {
  TextStyle style = furniture.text;
  style.cap_height_px = 22;
  const double middle = sheet.width() / 2.0;
  if (!furniture.head.empty()) {
    sheet.PutCentred(middle, 190, furniture.head, style);
    sheet.Line(240, 220, sheet.width() - 200, 220, 3);
  }
  sheet.PutWords(240, sheet.height() - 160, kSampleMark, style);
  const std::string number = furniture.printed_number();
  sheet.PutWords(sheet.width() - 200 - TextAdvance(number, style), sheet.height() - 160, number, style);
}

double LinePitch(const TextStyle& style) { return 1.95 * style.cap_height_px; }

TextStyle UsualTextStyle(Lettering lettering) {
  TextStyle style;
  style.lettering = lettering;
  style.cap_height_px = 25;
  style.stroke_px = 3;
  return style;
}

}  // namespace benchleaf::scanmaker
