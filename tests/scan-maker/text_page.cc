#include "scan-maker/text_page.h"

#include <algorithm>

namespace benchleaf::scanmaker {
namespace {

constexpr double kCellPadPx = 18;

// Sets blocks one below the other.
class Column {
 public:
  Column(Sheet& sheet, const TextStyle& style, const TermBook& book, const TypeArea& area)
      : sheet_(sheet), style_(style), book_(book), area_(area), y_(area.top) {}

  void Set(const TextBlock& block) {
    switch (block.kind) {
      case TextBlock::Kind::kTitle:
        return Title(block.text);
      case TextBlock::Kind::kHeading:
        return Heading(block.text);
      case TextBlock::Kind::kParagraph:
        return Paragraph(block.text);
      case TextBlock::Kind::kLeaders:
        return Leaders(block.rows);
      case TextBlock::Kind::kTable:
        return Table(block);
    }
  }

 private:
  bool Room(double height) const { return y_ + height <= area_.bottom; }

  void Title(const std::string& text) {
    TextStyle style = style_;
    style.cap_height_px *= 1.5;
    style.stroke_px *= 1.4;
    y_ += style.cap_height_px;
    sheet_.PutCentred((area_.left + area_.right) / 2, y_, text, style);
    y_ += 2.4 * style_.cap_height_px;
  }

  void Heading(const std::string& text) {
    if (!Room(4 * LinePitch(style_))) {
      return;
    }
    y_ += 2.2 * style_.cap_height_px;
    const Box box = sheet_.PutWords(area_.left, y_, text, style_);
    sheet_.Line(box.x, y_ + 9, box.right(), y_ + 9, 3);
    y_ += LinePitch(style_) + 8;
  }

  void Paragraph(const std::string& text) {
    for (const std::vector<Token>& line : Wrapped(book_.Tokens(text), style_, area_.width())) {
      if (!Room(LinePitch(style_))) {
        return;
      }
      y_ += LinePitch(style_);
      sheet_.PutRow(area_.left, y_, line, style_);
    }
    y_ += 0.8 * LinePitch(style_);
  }

  void Leaders(const std::vector<std::vector<std::string>>& rows) {
    const double dot = TextAdvance(".", style_) + 6;
    for (const std::vector<std::string>& row : rows) {
      if (!Room(1.3 * LinePitch(style_))) {
        return;
      }
      y_ += 1.3 * LinePitch(style_);
      const std::vector<Token> left = book_.Tokens(row.at(0));
      const std::vector<Token> right = book_.Tokens(row.at(1));
      sheet_.PutRow(area_.left, y_, left, style_);
      const double right_x = area_.right - RowAdvance(right, style_);
      sheet_.PutRow(right_x, y_, right, style_);
      sheet_.PutDots(area_.left + RowAdvance(left, style_) + 20, right_x - 30, y_, dot, style_);
    }
    y_ += LinePitch(style_);
  }

  void Table(const TextBlock& block) {
    TextStyle style = style_;
    style.cap_height_px *= 0.88;
    const double pitch = LinePitch(style);
    y_ += 0.6 * pitch;
    const double top = y_;
    sheet_.Line(area_.left, y_, area_.right, y_, 4);
    for (std::size_t r = 0; r < block.rows.size(); ++r) {
      std::vector<std::vector<std::vector<Token>>> cells;
      std::size_t lines = 1;
      for (std::size_t c = 0; c < block.rows[r].size(); ++c) {
        const double width = block.widths.at(c) * area_.width() - 2 * kCellPadPx;
        cells.push_back(Wrapped(book_.Tokens(block.rows[r][c]), style, width));
        lines = std::max(lines, cells.back().size());
      }
      const double height = static_cast<double>(lines) * pitch + 20;
      if (!Room(height)) {
        break;
      }
      double x = area_.left;
      for (std::size_t c = 0; c < cells.size(); ++c) {
        double baseline = y_ + pitch;
        for (const std::vector<Token>& line : cells[c]) {
          sheet_.PutRow(x + kCellPadPx, baseline, line, style);
          baseline += pitch;
        }
        x += block.widths.at(c) * area_.width();
      }
      y_ += height;
      sheet_.Line(area_.left, y_, area_.right, y_, r == 0 ? 4 : 2.5);
    }
    double x = area_.left;
    sheet_.Line(x, top, x, y_, 3);
    for (const double width : block.widths) {
      x += width * area_.width();
      sheet_.Line(x, top, x, y_, 3);
    }
    y_ += pitch;
  }

  Sheet& sheet_;
  TextStyle style_;
  const TermBook& book_;
  TypeArea area_;
  double y_;
};

}  // namespace

MadePage MakeTextPage(const std::string& kind, const std::vector<TextBlock>& blocks, const PageFurniture& furniture,
                      const TermBook& book) {
  Sheet sheet(kPageWidth, kPageHeight);
  PutFurniture(sheet, furniture);
  Column column(sheet, furniture.text, book, TypeArea{});
  for (const TextBlock& block : blocks) {
    column.Set(block);
  }
  return sheet.Take(kind, furniture.printed_number());
}

}  // namespace benchleaf::scanmaker
