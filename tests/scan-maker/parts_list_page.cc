#include "scan-maker/parts_list_page.h"

#include "scan-maker/list_columns.h"
#include "scan-maker/list_rows.h"
#include "scan-maker/list_text.h"

#include <algorithm>
#include <string>

namespace benchleaf::scanmaker {
namespace {

// One page being filled, table after table.
class ListPage {
 public:
  ListPage(const ListLayout& layout, const PageFurniture& furniture)
      : layout_(layout), furniture_(furniture), style_(furniture.text), sheet_(kPageWidth, kPageHeight) {
    if (layout_.abreast == 2) {
      style_.cap_height_px *= style_.lettering == Lettering::kTypewriter ? 0.72 : 0.85;
    } else if (layout_.makers > 2) {
      style_.cap_height_px *= 0.75;
    }
    PutFurniture(sheet_, furniture_);
    area_.top = 380;
    if (layout_.text_above) {
      PutSpecifications();
    }
    TextStyle title = furniture.text;
    title.cap_height_px *= 1.3;
    sheet_.PutCentred(kPageWidth / 2.0, area_.top - 70, "PARTS LIST", title);
    StartColumn(0);
  }

  // False when the page has no room for the row.
  bool Put(const ListRow& row, bool with_next) {
    const double height = HeightOf(row);
    // A heading never stands alone at the foot.
    if (y_ + height + (with_next ? 3 * LinePitch(style_) : 0) > area_.bottom) {
      if (table_ + 1 == (layout_.hardware_second ? 1 : layout_.abreast)) {
        return false;
      }
      StartColumn(table_ + 1);
    }
    Draw(row, height);
    return true;
  }

  // The second of two tables abreast: parts without designators.
  void PutHardware() {
    StartColumn(1);
    for (const ListRow& row : HardwareRows(layout_, 40)) {
      const double height = HeightOf(row);
      if (y_ + height > area_.bottom) {
        return;
      }
      Draw(row, height);
    }
  }

  MadePage Take() { return sheet_.Take("parts list", furniture_.printed_number()); }

 private:
  static constexpr double kPad = 16;  // px

  double inset() const { return layout_.ruled() ? kPad : 0; }

  // The first of that kind; the table's first column when it has none.
  const ListColumn& Find(ListCell cell) const {
    const auto found =
        std::find_if(columns_.begin(), columns_.end(), [&](const ListColumn& column) { return column.cell == cell; });
    return found == columns_.end() ? columns_.front() : *found;
  }

  std::vector<std::vector<Token>> Names(const ListRow& row) const {
    return BrokenDesignators(Shown(row.designators, style_.lettering), style_,
                             Find(ListCell::kDesignator).width - inset() - kPad);
  }

  std::vector<std::vector<Token>> Words(const ListRow& row) const {
    return Wrapped(Shown(row.description, style_.lettering), style_,
                   Find(ListCell::kDescription).width - inset() - kPad);
  }

  double HeightOf(const ListRow& row) const {
    const double pitch = LinePitch(style_);
    if (!row.heading.empty()) {
      return (layout_.class_tables && !row.assembly_heading ? 4.4 : 1.7) * pitch;
    }
    return static_cast<double>(std::max(Names(row).size(), Words(row).size())) * pitch + (layout_.ruled() ? 14 : 0);
  }

  void Draw(const ListRow& row, double height) {
    if (!row.heading.empty() && layout_.class_tables && !row.assembly_heading) {
      StartClassTable(row.heading);
      return;
    }
    if (row.heading.empty()) {
      PutPart(row, Names(row), Words(row));
    } else {
      PutHeading(row);
    }
    RuleRow(y_, y_ + height, row.heading.empty());
    y_ += height;
  }

  void PutSpecifications() {
    for (const std::string& line : SpecificationLines()) {
      sheet_.PutWords(area_.left, area_.top, line, style_);
      area_.top += LinePitch(style_);
    }
    area_.top += 120;
  }

  void StartColumn(int table) {
    table_ = table;
    const double gutter = 90;
    const double width = layout_.abreast == 2 ? (area_.width() - gutter) / 2 : area_.width();
    left_ = area_.left + table * (width + gutter);
    right_ = left_ + width;
    columns_ = ColumnsOf(layout_, left_, right_, layout_.hardware_second && table == 1);
    y_ = area_.top;
    if (!layout_.class_tables) {
      PutTitles();
    }
  }

  void PutTitles() {
    const double top = y_;
    const double baseline = y_ + 1.5 * style_.cap_height_px;
    for (const ListColumn& column : columns_) {
      sheet_.PutWords(column.x + inset(), baseline, column.title, style_);
    }
    y_ = baseline + 0.8 * style_.cap_height_px;
    sheet_.Line(left_, y_, right_, y_, 4);
    if (layout_.ruled()) {
      sheet_.Line(left_, top, right_, top, 4);
      RuleRow(top, y_, true);
    }
  }

  void StartClassTable(const std::string& title) {
    y_ += 1.6 * LinePitch(style_);
    sheet_.PutCentred((left_ + right_) / 2, y_, title, style_);
    y_ += 0.5 * LinePitch(style_);
    PutTitles();
  }

  // The lines round a row of a ruled table; headings run through all columns.
  void RuleRow(double top, double bottom, bool columns) {
    if (!layout_.ruled()) {
      return;
    }
    sheet_.Line(left_, top, left_, bottom, 3);
    sheet_.Line(right_, top, right_, bottom, 3);
    for (std::size_t i = 1; columns && i < columns_.size(); ++i) {
      sheet_.Line(columns_[i].x, top, columns_[i].x, bottom, 3);
    }
    sheet_.Line(left_, bottom, right_, bottom, 2.5);
  }

  void PutHeading(const ListRow& row) {
    const double baseline = y_ + 1.15 * LinePitch(style_);
    if (row.assembly_heading) {
      const Box box = sheet_.PutWords(left_ + inset(), baseline, row.heading, style_);
      sheet_.Line(box.x, baseline + 8, box.right(), baseline + 8, 3);
    } else {
      const ListColumn& description = Find(ListCell::kDescription);
      sheet_.PutCentred(description.x + description.width * 0.4, baseline, row.heading, style_);
    }
  }

  void PutPart(const ListRow& row, const std::vector<std::vector<Token>>& names,
               const std::vector<std::vector<Token>>& words) {
    const double pitch = LinePitch(style_);
    const double first = y_ + 0.82 * pitch + (layout_.ruled() ? 4 : 0);
    const double last = first + pitch * static_cast<double>(words.size() - 1);
    // The part number stands on the last line of the description where leaders run to it, else on the first.
    const double number_y = layout_.form == ListForm::kLeaders ? last : first;
    Box whole;
    // What is too long for its column is set narrower: no printer sets one number over the next.
    const auto put = [&](double x, double y, const Token& token, const ListColumn& column) {
      if (!token.text.empty()) {
        const double room = column.width - 0.8 * style_.cap_height_px;
        TextStyle style = style_;
        style.stretch *= std::min(1.0, room / TextAdvance(token.text, style_));
        whole = Union(whole, sheet_.Put(x, y, token, style));
      }
    };
    double words_end = 0;
    for (const ListColumn& column : columns_) {
      const double x = column.x + inset();
      switch (column.cell) {
        case ListCell::kItem:
          put(x, first, {"item", row.item, {row.item}}, column);
          break;
        case ListCell::kDesignator:
          whole = Union(whole, PutNames(names, x, first));
          break;
        case ListCell::kDescription:
          for (std::size_t line = 0; line < words.size(); ++line) {
            // Continuation lines are set in by a little.
            const double left = x + (line == 0 ? 0 : 30);
            whole = Union(whole, sheet_.PutRow(left, first + pitch * static_cast<double>(line), words[line], style_));
            words_end = left + RowAdvance(words[line], style_);
          }
          break;
        case ListCell::kNumber:
          put(x, number_y, row.number, column);
          break;
        case ListCell::kMaker:
          put(x, number_y, row.makers.empty() ? Token{} : row.makers[static_cast<std::size_t>(column.maker)], column);
          break;
        case ListCell::kQuantity:
          put(x + 20, first, {"text", row.quantity, {row.quantity}}, column);
          break;
      }
    }
    if (layout_.form == ListForm::kLeaders) {
      Dots(names_end_ + 14, Find(ListCell::kDescription).x - 14, first);
      Dots(words_end + 14, Find(ListCell::kNumber).x + inset() - 14, last);
    }
    for (const std::string& part : row.parts) {
      sheet_.AddEntry({part, row.assembly, row.description_text, row.part_number, row.value, whole, row.item});
    }
  }

  Box PutNames(const std::vector<std::vector<Token>>& names, double left, double first) {
    Box whole;
    double y = first;
    for (const std::vector<Token>& line : names) {
      double x = left;
      for (const Token& piece : line) {
        whole = Union(whole, sheet_.Put(x, y, piece, style_));
        x += TextAdvance(piece.text, style_);
      }
      names_end_ = y == first ? x : names_end_;
      y += LinePitch(style_);
    }
    return whole;
  }

  void Dots(double from, double to, double y) {
    const double step =
        style_.lettering == Lettering::kTypewriter ? TextAdvance(".", style_) : 0.62 * style_.cap_height_px;
    // On a common raster, as a typesetter's leaders are.
    const double first = left_ + step * static_cast<int>((from - left_) / step + 1);
    sheet_.PutDots(first, to - step, y, step, style_);
  }

  const ListLayout& layout_;
  const PageFurniture& furniture_;
  TextStyle style_;
  Sheet sheet_;
  TypeArea area_;
  std::vector<ListColumn> columns_;
  double left_ = 0;  // of the table
  double right_ = 0;
  int table_ = 0;
  double y_ = 0;
  double names_end_ = 0;  // right end of the designators' first line
};

}  // namespace

std::vector<MadePage> MakePartsListPages(const std::vector<ListSection>& sections, const ListLayout& layout,
                                         const PageFurniture& furniture) {
  const std::vector<ListRow> rows = RowsOf(sections, layout);
  std::vector<MadePage> pages;
  PageFurniture numbered = furniture;
  for (std::size_t next = 0; next < rows.size();) {
    ListPage page(layout, numbered);
    while (next < rows.size() && page.Put(rows[next], !rows[next].heading.empty())) {
      ++next;
    }
    if (layout.hardware_second) {
      page.PutHardware();
    }
    pages.push_back(page.Take());
    ++numbered.number;
  }
  return pages;
}

MadePage MakeRandomPartsListPage(const ListLayout& layout, Lettering lettering, std::uint64_t seed) {
  PageFurniture furniture;
  furniture.head = "SERVICE DATA";
  furniture.number = static_cast<int>(seed % 90) + 10;
  furniture.text = UsualTextStyle(lettering);
  // More parts than a page holds in any layout.
  const bool headed = seed % 2 == 0;
  const int assemblies = headed ? 4 : 1;
  const int stages = (headed ? 6 : 20) * layout.abreast;
  std::vector<ListSection> sections;
  for (int assembly = 1; assembly <= assemblies; ++assembly) {
    const Circuit circuit = RandomCircuit(stages, seed * 8 + static_cast<std::uint64_t>(assembly));
    ListSection section{"", "CHASSIS UNIT", ListedParts(circuit)};
    if (headed) {
      section.assembly = (layout.units ? "UNIT " : "A") + std::to_string(assembly);
    }
    sections.push_back(section);
  }
  return MakePartsListPages(sections, layout, furniture).front();
}

}  // namespace benchleaf::scanmaker
