#include "scan-maker/schematic_page.h"

#include "scan-maker/page_furniture.h"
#include "scan-maker/stage_drawings.h"

#include <algorithm>

namespace benchleaf::scanmaker {
namespace {

constexpr double kMarginPx = 150;
constexpr double kTitlePx = 200;  // for the title and footer together
constexpr double kGapUnits = 4;   // between two cells of which one gives or takes no signal
constexpr double kLeadUnits = 5;  // for the arrows at the ends of a row

struct Placed {
  std::size_t stage = 0;
  double x = 0;  // units from the left margin
  StageCell cell;
};

// Breaks the stages into rows no wider than `width` units.
std::vector<std::vector<Placed>> Rows(const Circuit& circuit, double width, std::size_t most_rows) {
  std::vector<std::vector<Placed>> rows(1);
  double x = kLeadUnits;
  bool signal = false;
  for (std::size_t i = 0; i < circuit.stages.size(); ++i) {
    const StageCell cell = CellOf(circuit.stages[i], circuit);
    const bool joined = signal && cell.takes;
    double at = x + (joined || rows.back().empty() ? 0 : 2 * kGapUnits);
    if (at + cell.width + kLeadUnits > width) {
      if (rows.size() == most_rows) {
        break;
      }
      rows.emplace_back();
      at = kLeadUnits;
    }
    rows.back().push_back({i, at, cell});
    x = at + cell.width;
    signal = cell.gives;
  }
  return rows;
}

// Widens the gaps between cells so that the row fills the sheet; joined cells get a longer wire.
void Spread(std::vector<Placed>& row, double width) {
  if (row.size() < 2) {
    return;
  }
  const double used = row.back().x + row.back().cell.width + kLeadUnits;
  const double extra = std::min(8.0, (width - used) / static_cast<double>(row.size() - 1));
  for (std::size_t i = 1; i < row.size(); ++i) {
    // Whole units keep the ends of wires on common pixels.
    row[i].x += static_cast<double>(static_cast<int>(extra * static_cast<double>(i)));
  }
}

// Letters that tell where a signal goes on: "TO A" at one place, "FR. A" at another.
struct Marks {
  char letter = 'A';
  bool open = false;  // sent and not yet received

  std::string Send() {
    letter = static_cast<char>(letter + (open ? 1 : 0));
    open = true;
    return std::string("TO ") + letter;
  }
  // Nothing sent: the signal comes from outside.
  std::string Receive() {
    if (!open) {
      return "INPUT";
    }
    open = false;
    return std::string("FR. ") + letter++;
  }
};

void DrawRow(Drawing& drawing, const Circuit& circuit, const std::vector<Placed>& row, double top_px, Marks& marks) {
  drawing.MoveTo(kMarginPx, top_px);
  const Placed& last = row.back();
  const double row_end = last.x + last.cell.width;
  drawing.Wire({{row.front().x, kBusY}, {row_end, kBusY}});
  drawing.Terminal({row_end, kBusY}, "B+", 0);
  for (std::size_t i = 0; i < row.size(); ++i) {
    const StageCell& cell = row[i].cell;
    const double end = row[i].x + cell.width;
    const bool joined = i + 1 < row.size() && row[i + 1].cell.takes;
    const bool fed = i > 0 && row[i - 1].cell.gives;
    if (cell.takes && !fed) {
      drawing.Words({row[i].x - 3.6, kSignalY - 0.5}, marks.Receive());
      drawing.Wire({{row[i].x - 1, kSignalY}, {row[i].x, kSignalY}});
    }
    if (cell.gives && joined) {
      drawing.Wire({{end, kSignalY}, {row[i + 1].x, kSignalY}});
    } else if (cell.gives) {
      drawing.Terminal({end, kSignalY}, marks.Send(), 0);
    }
  }
  for (const Placed& placed : row) {
    const Stage& stage = circuit.stages[placed.stage];
    drawing.MoveTo(kMarginPx + placed.x * Drawing::kUnit, top_px);
    if (!stage.function.empty()) {
      drawing.Words({2, 2}, stage.function, 0.9);
    }
    DrawStage(drawing, stage, circuit);
  }
}

}  // namespace

SchematicResult MakeSchematicPage(const Circuit& circuit, const SchematicSheet& sheet, const DrawingStyle& style,
                                  std::uint64_t seed) {
  Sheet paper(static_cast<int>(sheet.width_in * kMadeDpi), static_cast<int>(sheet.height_in * kMadeDpi));
  const double width = (paper.width() - 2 * kMarginPx) / Drawing::kUnit;
  const double usable = paper.height() - 2 * kMarginPx - kTitlePx;
  const double row_px = kCellHeight * Drawing::kUnit;
  const auto most_rows = static_cast<std::size_t>(std::max(1.0, usable / row_px));

  std::vector<std::vector<Placed>> rows = Rows(circuit, width, most_rows);
  const double pitch = std::max(row_px, std::min(1.25 * row_px, usable / static_cast<double>(rows.size())));
  Drawing drawing(paper, style, seed);
  Marks marks;
  SchematicResult result;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    Spread(rows[r], width);
    const auto top = static_cast<double>(static_cast<int>(kMarginPx + static_cast<double>(r) * pitch));
    DrawRow(drawing, circuit, rows[r], top, marks);
    result.drawn += rows[r].size();
  }
  drawing.Finish();

  TextStyle title = style.text;
  title.cap_height_px *= 1.5;
  paper.PutCentred(paper.width() / 2.0, paper.height() - kMarginPx - 40, sheet.title, title);
  paper.PutWords(kMarginPx, paper.height() - kMarginPx + 40, sheet.footer, style.text);
  double note_y =
      paper.height() - 2 * kMarginPx - kTitlePx - static_cast<double>(sheet.notes.size()) * LinePitch(style.text);
  for (const std::string& note : sheet.notes) {
    paper.PutWords(0.55 * paper.width(), note_y, note, style.text);
    note_y += LinePitch(style.text);
  }
  if (!sheet.page_number.empty()) {
    const double x = paper.width() - kMarginPx - TextAdvance(sheet.page_number, style.text);
    paper.PutWords(x, paper.height() - kMarginPx + 40, sheet.page_number, style.text);
  }
  result.page = paper.Take("schematic", sheet.page_number);
  return result;
}

DrawingStyle UsualDrawingStyle(Lettering lettering, std::uint64_t seed) {
  DrawingStyle style;
  style.text.lettering = lettering;
  style.text.cap_height_px = 24;
  style.text.stroke_px = 3;
  style.text.seed = seed;
  style.hops = seed % 3 != 0;
  return style;
}

}  // namespace benchleaf::scanmaker
