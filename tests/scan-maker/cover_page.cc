#include "scan-maker/cover_page.h"

#include <cairo.h>

#include <numbers>

namespace benchleaf::scanmaker {
namespace {

constexpr double kPen = 5;

void RoundRectangle(cairo_t* cairo, double x, double y, double width, double height, double radius) {
  constexpr double kQuarter = std::numbers::pi / 2;
  cairo_new_sub_path(cairo);
  cairo_arc(cairo, x + width - radius, y + radius, radius, -kQuarter, 0);
  cairo_arc(cairo, x + width - radius, y + height - radius, radius, 0, kQuarter);
  cairo_arc(cairo, x + radius, y + height - radius, radius, kQuarter, 2 * kQuarter);
  cairo_arc(cairo, x + radius, y + radius, radius, 2 * kQuarter, 3 * kQuarter);
  cairo_close_path(cairo);
  cairo_set_line_width(cairo, kPen);
  cairo_stroke(cairo);
}

void Knob(cairo_t* cairo, double x, double y, double radius) {
  for (const double r : {radius, 0.7 * radius}) {
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, x, y, r, 0, 2 * std::numbers::pi);
    cairo_set_line_width(cairo, kPen);
    cairo_stroke(cairo);
  }
}

void Louvres(Sheet& sheet, double x, double y, double width, double height, double pitch) {
  const int lines = static_cast<int>(height / pitch);
  for (int i = 0; i <= lines; ++i) {
    const double at = y + i * pitch;
    sheet.Line(x, at, x + width, at, 3);
  }
}

// Each cabinet stands in a box of 1300 x 900 px.
void DrawCabinet(Sheet& sheet, Cabinet cabinet, double x, double y) {
  cairo_t* cairo = sheet.cairo();
  RoundRectangle(cairo, x, y, 1300, 900, 60);
  switch (cabinet) {
    case Cabinet::kTableRadio:
      Louvres(sheet, x + 80, y + 90, 560, 700, 36);
      RoundRectangle(cairo, x + 720, y + 90, 500, 420, 30);
      for (int i = 0; i < 11; ++i) {
        const double mark = x + 770 + 40 * i;
        sheet.Line(mark, y + 180, mark, y + (i % 5 == 0 ? 260 : 230), 4);
      }
      sheet.Line(x + 930, y + 140, x + 930, y + 460, 6);
      Knob(cairo, x + 830, y + 680, 90);
      Knob(cairo, x + 1100, y + 680, 90);
      break;
    case Cabinet::kTelevision:
      RoundRectangle(cairo, x + 80, y + 70, 860, 720, 130);
      RoundRectangle(cairo, x + 120, y + 110, 780, 640, 110);
      Knob(cairo, x + 1120, y + 200, 110);
      Knob(cairo, x + 1120, y + 440, 60);
      Louvres(sheet, x + 1000, y + 560, 240, 260, 26);
      break;
    case Cabinet::kOscilloscope:
      Knob(cairo, x + 420, y + 400, 300);
      for (int i = -4; i <= 4; ++i) {
        sheet.Line(x + 420 + 45 * i, y + 220, x + 420 + 45 * i, y + 580, 2.5);
        sheet.Line(x + 240, y + 400 + 45 * i, x + 600, y + 400 + 45 * i, 2.5);
      }
      for (int i = 0; i < 6; ++i) {
        Knob(cairo, x + 880 + 260 * (i % 2), y + 160 + 220 * (i / 2), 70);
      }
      for (int i = 0; i < 6; ++i) {
        Knob(cairo, x + 180 + 190 * i, y + 810, 30);
      }
      break;
    case Cabinet::kAmplifier:
      Louvres(sheet, x + 80, y + 80, 1140, 380, 40);
      for (int i = 0; i < 4; ++i) {
        Knob(cairo, x + 230 + 280 * i, y + 680, 90);
      }
      break;
  }
}

}  // namespace

MadePage MakeCoverPage(const Cover& cover, const PageFurniture& furniture) {
  Sheet sheet(kPageWidth, kPageHeight);
  const double middle = kPageWidth / 2.0;
  auto centred = [&](double y, const std::string& text, double cap) {
    TextStyle style = furniture.text;
    style.cap_height_px = cap;
    style.stroke_px = 0.14 * cap;
    sheet.PutCentred(middle, y, text, style);
  };
  centred(520, cover.maker, 130);
  sheet.Line(400, 590, kPageWidth - 400, 590, 8);
  centred(760, cover.title, 78);
  centred(940, cover.model, 100);
  centred(1070, cover.line, 42);
  DrawCabinet(sheet, cover.cabinet, middle - 650, 1330);
  if (!cover.volume.empty()) {
    centred(2480, cover.volume, 60);
  }
  centred(2760, kSampleMark, 44);
  sheet.Rectangle(160, 160, kPageWidth - 320, kPageHeight - 320, 6);
  return sheet.Take("cover", "");
}

}  // namespace benchleaf::scanmaker
