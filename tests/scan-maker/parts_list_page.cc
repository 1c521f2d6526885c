#include "scan-maker/parts_list_page.h"

#include "scan-maker/list_rows.h"

#include <algorithm>
#include <cctype>
#include <string>

namespace benchleaf::scanmaker {
namespace {

struct Cell {
  double x = 0;
  double width = 0;
};

// Where the columns of one table stand.
struct Columns {
  Cell designator;
  Cell description;
  Cell part_number;
  Cell quantity;
  double left = 0;
  double right = 0;
};

Columns ColumnsOf(const ListLayout& layout, double left, double right) {
  const double width = right - left;
  const double quantity = layout.quantity ? (layout.abreast == 2 ? 0.11 : 0.08) * width : 0;
  const double reference = (layout.abreast == 2 ? 0.19 : 0.16) * width;
  const double number = (layout.abreast == 2 ? 0.29 : 0.22) * width;
  const double text = width - quantity - reference - number;
  Columns columns;
  columns.left = left;
  columns.right = right;
  double x = left;
  auto take = [&](Cell& cell, double share) {
    cell = {x, share};
    x += share;
  };
  if (layout.form == ListForm::kDesignatorLast) {
    take(columns.part_number, number);
    take(columns.description, text);
    take(columns.quantity, quantity);
    take(columns.designator, reference);
  } else {
    take(columns.designator, reference);
    take(columns.description, text);
    take(columns.part_number, number);
    take(columns.quantity, quantity);
  }
  columns.description.width *= layout.description_share;
  return columns;
}

// Broadside letterings of drawings and old lists know capitals only.
bool CapitalsOnly(Lettering lettering) { return lettering != Lettering::kTypewriter && lettering != Lettering::kBook; }

std::vector<Token> Shown(std::vector<Token> row, Lettering lettering) {
  if (CapitalsOnly(lettering)) {
    for (Token& token : row) {
      for (char& c : token.text) {
        c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
      }
    }
  }
  return row;
}

// Breaks the pieces of a designator cell into lines; unlike words they stand close together.
std::vector<std::vector<Token>> BrokenDesignators(const std::vector<Token>& pieces, const TextStyle& style,
                                                  double width) {
  std::vector<std::vector<Token>> lines(1);
  double used = 0;
  for (const Token& piece : pieces) {
    const double advance = TextAdvance(piece.text, style);
    if (!lines.back().empty() && used + advance > width) {
      lines.emplace_back();
      used = 0;
    }
    lines.back().push_back(piece);
    used += advance;
  }
  return lines;
}

// One page being filled, table after table.
class ListPage {
 public:
  ListPage(const ListLayout& layout, const PageFurniture& furniture)
      : layout_(layout), furniture_(furniture), style_(furniture.text), sheet_(kPageWidth, kPageHeight) {
    if (layout_.abreast == 2) {
      style_.cap_height_px *= style_.lettering == Lettering::kTypewriter ? 0.72 : 0.85;
    }
    PutFurniture(sheet_, furniture_);
    TextStyle title = furniture.text;
    title.cap_height_px *= 1.3;
    sheet_.PutCentred(kPageWidth / 2.0, 310, "PARTS LIST", title);
    StartTable(0);
  }

  // False when the page has no room for the row.
  bool Put(const ListRow& row, bool with_next) {
    const double pitch = LinePitch(style_);
    const std::vector<std::vector<Token>> names =
        BrokenDesignators(Shown(row.designators, style_.lettering), style_, columns_.designator.width - inset() - kPad);
    const std::vector<std::vector<Token>> words =
        Wrapped(Shown(row.description, style_.lettering), style_, columns_.description.width - 2 * kPad);
    const double lines = static_cast<double>(std::max(names.size(), words.size()));
    const double height = row.heading.empty() ? lines * pitch + (ruled() ? 14 : 0) : 1.7 * pitch;
    // A heading never stands alone at the foot.
    if (y_ + height + (with_next ? 3 * pitch : 0) > area_.bottom) {
      if (table_ + 1 == layout_.abreast) {
        return false;
      }
      StartTable(table_ + 1);
    }
    if (row.heading.empty()) {
      PutPart(row, names, words);
    } else {
      PutHeading(row);
    }
    RuleRow(y_, y_ + height, row.heading.empty());
    y_ += height;
    return true;
  }

  MadePage Take() { return sheet_.Take("parts list", furniture_.printed_number()); }

 private:
  static constexpr double kPad = 16;  // px

  bool ruled() const { return layout_.form == ListForm::kRuled; }

  void StartTable(int table) {
    table_ = table;
    const double gutter = 90;
    const double width = layout_.abreast == 2 ? (area_.width() - gutter) / 2 : area_.width();
    const double left = area_.left + table * (width + gutter);
    columns_ = ColumnsOf(layout_, left, left + width);
    area_.top = 380;
    y_ = area_.top;
    TextStyle head = style_;
    const double baseline = y_ + 1.5 * head.cap_height_px;
    sheet_.PutWords(columns_.designator.x + inset(), baseline, "SYMBOL", head);
    sheet_.PutWords(columns_.description.x + inset(), baseline, "DESCRIPTION", head);
    sheet_.PutWords(columns_.part_number.x + inset(), baseline, "PART NO.", head);
    if (layout_.quantity) {
      sheet_.PutWords(columns_.quantity.x + inset(), baseline, "QTY", head);
    }
    y_ = baseline + 0.8 * head.cap_height_px;
    sheet_.Line(columns_.left, y_, columns_.right, y_, 4);
    if (ruled()) {
      sheet_.Line(columns_.left, area_.top, columns_.right, area_.top, 4);
      RuleRow(area_.top, y_, true);
    }
  }

  double inset() const { return ruled() ? kPad : 0; }

  // The lines round a row of a ruled table; headings run through all columns.
  void RuleRow(double top, double bottom, bool columns) {
    if (!ruled()) {
      return;
    }
    std::vector<double> uprights = {columns_.left, columns_.right};
    if (columns) {
      uprights.insert(uprights.end(), {columns_.description.x, columns_.part_number.x});
      if (layout_.quantity) {
        uprights.push_back(columns_.quantity.x);
      }
    }
    for (const double x : uprights) {
      sheet_.Line(x, top, x, bottom, 3);
    }
    sheet_.Line(columns_.left, bottom, columns_.right, bottom, 2.5);
  }

  void PutHeading(const ListRow& row) {
    const double baseline = y_ + 1.15 * LinePitch(style_);
    if (row.assembly_heading) {
      const Box box = sheet_.PutWords(columns_.left + inset(), baseline, row.heading, style_);
      sheet_.Line(box.x, baseline + 8, box.right(), baseline + 8, 3);
    } else {
      sheet_.PutCentred(columns_.description.x + columns_.description.width * 0.4, baseline, row.heading, style_);
    }
  }

  void PutPart(const ListRow& row, const std::vector<std::vector<Token>>& names,
               const std::vector<std::vector<Token>>& words) {
    const double pitch = LinePitch(style_);
    const double first = y_ + 0.82 * pitch + (ruled() ? 4 : 0);
    Box whole;
    double y = first;
    double names_end = 0;
    for (const std::vector<Token>& line : names) {
      double x = columns_.designator.x + inset();
      for (const Token& piece : line) {
        whole = Union(whole, sheet_.Put(x, y, piece, style_));
        x += TextAdvance(piece.text, style_);
      }
      names_end = y == first ? x : names_end;
      y += pitch;
    }
    y = first;
    double words_end = 0;
    for (const std::vector<Token>& line : words) {
      // Continuation lines are set in by a little.
      const double x = columns_.description.x + inset() + (y == first ? 0 : 30);
      whole = Union(whole, sheet_.PutRow(x, y, line, style_));
      words_end = x + RowAdvance(line, style_);
      y += pitch;
    }
    const double last = y - pitch;
    // The part number stands on the last line of the description where leaders run to it, else on the first.
    const double number_y = layout_.form == ListForm::kLeaders ? last : first;
    const double number_x = columns_.part_number.x + inset();
    whole = Union(whole, sheet_.Put(number_x, number_y, TermToken("part-number", row.part_number), style_));
    if (layout_.form == ListForm::kLeaders) {
      Dots(names_end + 14, columns_.description.x - 14, first);
      Dots(words_end + 14, number_x - 14, last);
    }
    if (layout_.quantity) {
      whole = Union(whole, sheet_.PutWords(columns_.quantity.x + inset() + 20, first, row.quantity, style_));
    }
    for (const std::string& part : row.parts) {
      sheet_.AddEntry({part, row.assembly, row.description_text, row.part_number, row.value, whole});
    }
  }

  void Dots(double from, double to, double y) {
    const double step =
        style_.lettering == Lettering::kTypewriter ? TextAdvance(".", style_) : 0.62 * style_.cap_height_px;
    // On a common raster, as a typesetter's leaders are.
    const double first = columns_.left + step * static_cast<int>((from - columns_.left) / step + 1);
    sheet_.PutDots(first, to - step, y, step, style_);
  }

  const ListLayout& layout_;
  const PageFurniture& furniture_;
  TextStyle style_;
  Sheet sheet_;
  TypeArea area_;
  Columns columns_;
  int table_ = 0;
  double y_ = 0;
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
      section.assembly.append("A").append(std::to_string(assembly));
    }
    sections.push_back(section);
  }
  return MakePartsListPages(sections, layout, furniture).front();
}

}  // namespace benchleaf::scanmaker
