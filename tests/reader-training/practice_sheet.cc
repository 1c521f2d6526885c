#include "reader-training/practice_sheet.h"

#include "reader-training/practice_text.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/sheet.h"
#include "scan-maker/symbols.h"

#include <cairo.h>

#include <algorithm>
#include <numbers>
#include <string>

namespace benchleaf::training {
namespace {

using scanmaker::SeededRandom;
using scanmaker::Sheet;
using scanmaker::TextStyle;

constexpr int kWidth = 3300;   // px, letter paper lying
constexpr int kHeight = 2550;  // px

TextStyle StyleOf(const TextStyle& lettering, SeededRandom& random) {
  TextStyle style = lettering;
  style.cap_height_px = random.Between(18, 34);
  style.stroke_px = style.cap_height_px * random.Between(0.08, 0.17);
  style.letter_space = random.Unit() < 0.1 ? random.Between(0.14, 0.35) : random.Between(-0.04, 0.14);
  style.stretch = random.Between(0.78, 1.25);
  style.slant = random.Unit() < 0.4 ? random.Between(-0.05, 0.3) : 0;
  style.seed = random.Next();
  return style;
}

void PutSymbol(Sheet& sheet, double x, double y, double unit, SeededRandom& random) {
  cairo_t* cairo = sheet.cairo();
  cairo_save(cairo);
  cairo_translate(cairo, x, y);
  cairo_rotate(cairo, random.Whole(0, 3) * std::numbers::pi / 2);
  cairo_scale(cairo, unit / 24, unit / 24);
  switch (random.Whole(0, 9)) {
    case 0:
      scanmaker::ResistorSymbol(cairo);
      break;
    case 1:
      scanmaker::CapacitorSymbol(cairo);
      break;
    case 2:
      scanmaker::CoilSymbol(cairo, random.Whole(3, 5));
      break;
    case 3:
      scanmaker::DiodeSymbol(cairo);
      break;
    case 4:
      scanmaker::GroundSymbol(cairo);
      break;
    case 5:
      scanmaker::TransistorSymbol(cairo);
      break;
    case 6:
      scanmaker::ElectrolyticSymbol(cairo);
      break;
    case 7:
      scanmaker::ControlSymbol(cairo);
      break;
    case 8:
      scanmaker::SwitchSymbol(cairo);
      break;
    default:
      scanmaker::TubeSymbol(cairo, {random.Whole(1, 3), 1, true});
      break;
  }
  cairo_restore(cairo);
}

// One string in its cell, with what may stand round it.
class Cell {
 public:
  Cell(Sheet& sheet, double x, double y, double side_x, double side_y, SeededRandom& random)
      : sheet_(sheet), x_(x), y_(y), side_x_(side_x), side_y_(side_y), random_(random) {}

  void Fill(const TextStyle& page_style) {
    const double cap = page_style.cap_height_px;
    const double share = random_.Unit();
    if (share < 0.16) {
      PutSymbol(sheet_, x_ + side_x_ / 2, y_ + side_y_ / 2, cap, random_);
      return;
    }
    TextStyle style = page_style;
    style.cap_height_px *= random_.Between(0.92, 1.08);
    style.seed = random_.Next();
    const int turn = share < 0.30 ? 270 : share < 0.33 ? 90 : 0;
    Letter(style, turn);
    if (random_.Unit() < 0.5) {
      Wire(cap);
    }
  }

 private:
  void Letter(const TextStyle& style, int turn) {
    const double cap = style.cap_height_px;
    std::string text = PracticeText(random_);
    const double room = (turn == 0 ? side_x_ : side_y_) - 2.2 * cap;
    while (TextAdvance(text, style) > room) text = PracticeText(random_);
    const double length = TextAdvance(text, style);
    const double spare = room - length;
    if (turn == 0) {
      const double x = x_ + cap + random_.Between(0, spare);
      const double y = y_ + random_.Between(2.2 * cap, side_y_ - 2.4 * cap);
      text_ = sheet_.Put(x, y, {"text", text, {text}}, style);
      if (random_.Unit() < 0.4) {
        const std::string below = PracticeText(random_);
        if (TextAdvance(below, style) < room) {
          sheet_.Put(x, y + random_.Between(1.35, 1.7) * cap, {"text", below, {below}}, style);
        }
      }
      return;
    }
    const double x = x_ + random_.Between(2.4 * cap, side_x_ - 2.4 * cap);
    const double start = cap + random_.Between(0, spare);
    text_ = turn == 270 ? sheet_.Put(x, y_ + side_y_ - start, {"text", text, {text}}, style, turn)
                        : sheet_.Put(x, y_ + start, {"text", text, {text}}, style, turn);
  }

  // Beside the string as a rule; some run into it.
  void Wire(double cap) {
    const double gap = random_.Unit() < 0.15 ? random_.Between(-0.3, 0.1) * cap : random_.Between(0.15, 0.9) * cap;
    const double pen = cap * random_.Between(0.08, 0.16);
    if (random_.Unit() < 0.5) {
      const double y = random_.Unit() < 0.5 ? text_.y - gap : text_.bottom() + gap;
      sheet_.Line(x_, y, x_ + side_x_, y, pen);
    } else {
      const double x = random_.Unit() < 0.5 ? text_.x - gap : text_.right() + gap;
      sheet_.Line(x, y_, x, y_ + side_y_, pen);
    }
  }

  Sheet& sheet_;
  double x_;
  double y_;
  double side_x_;
  double side_y_;
  SeededRandom& random_;
  Box text_;
};

}  // namespace

scanmaker::MadePage MakePracticeSheet(const scanmaker::TextStyle& lettering, std::uint64_t seed) {
  SeededRandom random(seed);
  const TextStyle style = StyleOf(lettering, random);
  Sheet sheet(kWidth, kHeight);
  const double side_x = 11 * style.cap_height_px;
  const double side_y = 7.5 * style.cap_height_px;
  constexpr double kMargin = 90;
  for (double y = kMargin; y + side_y < kHeight - kMargin; y += side_y) {
    for (double x = kMargin; x + side_x < kWidth - kMargin; x += side_x) {
      Cell(sheet, x, y, side_x, side_y, random).Fill(style);
    }
  }
  return sheet.Take("schematic", "");
}

}  // namespace benchleaf::training
