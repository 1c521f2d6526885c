#include "benchleaf/report/contact_sheet.h"

#include "report/color_image.h"
#include "report/lettered.h"

#include "benchleaf/labels/label.h"
#include "benchleaf/report/picture.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>

namespace benchleaf {
namespace {

constexpr int kRows = kCellsPerSheet / kCellsPerRow;

// Aged paper, ink, and the pencil that rules lines on it.
constexpr Rgb kPaper{0xF6, 0xF1, 0xE4};
constexpr Rgb kInk{0x22, 0x20, 0x1C};
constexpr Rgb kPale{0x5C, 0x57, 0x4C};
constexpr Rgb kRule{0x9A, 0x92, 0x80};

// All in px, from the height of a full sheet.
struct Layout {
  explicit Layout(int sheet_height)
      : height(sheet_height),
        width(static_cast<int>(sheet_height / std::sqrt(2.0))),  // A4: ISO 216
        margin(height / 60),
        line(std::max(12, height / 90)),
        title(2 * line),
        head(margin + title + line),
        cell_width((width - 2 * margin) / kCellsPerRow),
        cell_height((height - head - margin) / kRows),
        inset(std::max(2, line / 3)),
        rule(std::max(1, line / 12)) {}

  Box Cell(std::size_t place) const {
    const int row = static_cast<int>(place) / kCellsPerRow;
    const int column = static_cast<int>(place) % kCellsPerRow;
    return {margin + column * cell_width, head + row * cell_height, cell_width - gutter(), cell_height};
  }
  // Two lines of lettering under the picture.
  ThumbSize thumb() const { return {cell_width - gutter() - 2 * inset, cell_height - 3 * inset - 2 * line}; }
  // Keeps captions of neighbours apart.
  int gutter() const { return line; }

  int height;
  int width;
  int margin;
  int line;
  int title;
  int head;
  int cell_width;
  int cell_height;
  int inset;
  int rule;
};

void Paste(ColorImage& sheet, const ColorImage& picture, int x, int y) {
  for (int row = 0; row < picture.height; ++row) {
    std::copy_n(Pixel(picture, 0, row), static_cast<std::size_t>(picture.width) * kBytesPerPixel,
                Pixel(sheet, x, y + row));
  }
}

void DrawFailure(ColorImage& sheet, const Layout& layout, const Box& room, const std::string& failure) {
  const int columns = std::max(10, room.width * 2 / layout.line);
  int y = room.y + layout.inset;
  for (const std::string& line : Wrapped(CleanText(failure), columns)) {
    if (y + layout.line > room.bottom()) break;
    DrawLettering(sheet, Label(line, {.height_px = layout.line, .max_width_px = room.width - 2 * layout.inset}),
                  room.x + layout.inset, y, kPale);
    y += layout.line;
  }
}

void DrawCell(ColorImage& sheet, const Layout& layout, const Box& cell, const SheetCell& shown) {
  const auto [width, height] = layout.thumb();
  const Box room{cell.x + layout.inset, cell.y + layout.inset, width, height};
  if (shown.picture.pixels.empty()) {
    DrawFailure(sheet, layout, room, shown.failure);
  } else {
    Paste(sheet, shown.picture, room.x + (room.width - shown.picture.width) / 2,
          room.y + (room.height - shown.picture.height) / 2);
  }
  int y = room.bottom() + layout.inset;
  const GreyImage what =
      Label(shown.caption.what, {.height_px = layout.line, .max_width_px = width / 2, .weight = LabelWeight::kBold});
  DrawLettering(sheet, what, cell.right() - layout.inset - what.width, y, kInk);
  const int left = width - what.width - layout.line;
  DrawLettering(sheet, Label(shown.caption.set, {layout.line, std::max(1, left), LabelWeight::kBold}), room.x, y, kInk);
  y += layout.line;
  DrawLettering(sheet, Label(shown.caption.page, {.height_px = layout.line, .max_width_px = width}), room.x, y, kPale);
  FillBox(sheet, {cell.x, cell.bottom() - layout.rule, cell.width, layout.rule}, kRule);
}

}  // namespace

ThumbSize ThumbOn(int sheet_height_px) { return Layout(sheet_height_px).thumb(); }

ColorImage ContactSheet(const std::string& title, const std::string& number, const std::vector<SheetCell>& cells,
                        int sheet_height_px) {
  assert(!cells.empty() && cells.size() <= kCellsPerSheet && sheet_height_px >= 400);
  const Layout layout(sheet_height_px);
  const Box last = layout.Cell(cells.size() - 1);
  ColorImage sheet = BlankColorImage(layout.width, last.bottom() + layout.margin, 255);
  FillBox(sheet, {0, 0, sheet.width, sheet.height}, kPaper);

  const GreyImage count = Label(number, {.height_px = layout.line});
  const int room = layout.width - 2 * layout.margin - count.width - layout.line;
  DrawLettering(sheet, Label(title, {layout.title, room, LabelWeight::kBold}), layout.margin + layout.inset,
                layout.margin, kInk);
  DrawLettering(sheet, count, layout.width - layout.margin - count.width, layout.margin + layout.title - layout.line,
                kPale);
  FillBox(
      sheet,
      {layout.margin, layout.margin + layout.title + layout.inset, layout.width - 2 * layout.margin, 2 * layout.rule},
      kInk);
  for (std::size_t i = 0; i < cells.size(); ++i) DrawCell(sheet, layout, layout.Cell(i), cells[i]);
  return sheet;
}

}  // namespace benchleaf
