#include "extract/list_table.h"

#include "extract/list_words.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

// A designator cell somewhere on the page.
struct Candidate {
  std::size_t line = 0;
  std::size_t piece = 0;
  int left = 0;
  Designator first;
  Designator last;
  double confidence = 0;  // of the reading, 0 to 1
};

// Candidates one below the other.
struct Column {
  std::vector<Candidate> cells;  // top to bottom
  int left = 0;                  // px
};

std::vector<Candidate> Candidates(const std::vector<Line>& lines, double cap, const Rules::Tables& tables) {
  std::vector<Candidate> candidates;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    const auto& pieces = lines[line].pieces;
    for (std::size_t at = 0; at < pieces.size(); ++at) {
      if (!BeginsColumn(pieces, at, cap) || IsMention(pieces, at, cap, tables)) {
        continue;
      }
      if (const auto cell = DesignatorCellAt(pieces, at, cap, tables)) {
        candidates.push_back(
            {line, at, pieces[at].box.x, cell->designators.front(), cell->designators.back(), pieces[at].confidence});
        at += cell->count - 1;
      }
    }
  }
  return candidates;
}

// The share of neighbours, one below the other, that count upwards within a class or begin a class: high in a column of
// designators, where classes run in blocks, low in one of places on a drawing's grid.
double AscendingShare(const std::vector<Candidate>& cells) {
  if (cells.size() < 2) {
    return 1;
  }
  double ascending = 0;
  std::set<std::string> begun = {cells.front().first.letters};
  for (std::size_t i = 1; i < cells.size(); ++i) {
    const Designator& above = cells[i - 1].last;
    const Designator& below = cells[i].first;
    const bool begins = begun.insert(below.letters).second;
    const bool rises = above.letters == below.letters && NumberOf(above) <= NumberOf(below);
    ascending += rises ? 1 : begins ? cells[i].confidence : 0;  // scraps read as designators begin many
  }
  return ascending / static_cast<double>(cells.size() - 1);
}

std::vector<Column> Columns(std::vector<Candidate> candidates, double cap) {
  // Headings and wrapped cells stand a little in or out, so columns are taken as wide as a short designator.
  constexpr double kColumnWidth = 4;
  std::stable_sort(candidates.begin(), candidates.end(),
                   [](const Candidate& a, const Candidate& b) { return a.left < b.left; });
  std::vector<Column> columns;
  for (const Candidate& candidate : candidates) {
    if (columns.empty() || candidate.left - columns.back().cells.back().left > kColumnWidth * cap) {
      columns.emplace_back();
    }
    columns.back().cells.push_back(candidate);
  }
  std::size_t largest = 0;
  for (Column& column : columns) {
    // The middle one of the left edges, before they are put in order from top to bottom.
    column.left = column.cells[column.cells.size() / 2].left;
    std::stable_sort(column.cells.begin(), column.cells.end(),
                     [](const Candidate& a, const Candidate& b) { return a.line < b.line; });
    largest = std::max(largest, column.cells.size());
  }
  const auto too_small = [&](const Column& column) {
    return column.cells.size() < largest && (column.cells.size() < 3 || column.cells.size() * 6 < largest);
  };
  columns.erase(std::remove_if(columns.begin(), columns.end(), too_small), columns.end());
  if (columns.size() > 1) {
    double best = 0;
    for (const Column& column : columns) {
      best = std::max(best, AscendingShare(column.cells));
    }
    const auto unordered = [&](const Column& column) { return AscendingShare(column.cells) < 0.5 * best; };
    columns.erase(std::remove_if(columns.begin(), columns.end(), unordered), columns.end());
  }
  return columns;
}

// The share of a column's rows that have something on this side of it, up to `limit`.
template <class Test>
double ShareOfRows(const Column& column, const std::vector<Line>& lines, const Test& test) {
  std::size_t rows = 0;
  for (const Candidate& cell : column.cells) {
    const auto& pieces = lines[cell.line].pieces;
    rows += std::any_of(pieces.begin(), pieces.end(), [&](const Piece& piece) { return test(piece, cell); }) ? 1U : 0U;
  }
  return static_cast<double>(rows) / static_cast<double>(column.cells.size());
}

ColumnOrder OrderOf(const std::vector<Column>& columns, const std::vector<Line>& lines, double cap) {
  const double left = ShareOfRows(columns.front(), lines, [&](const Piece& piece, const Candidate& cell) {
    return piece.box.right() < cell.left - cap && piece.text.size() > 1;
  });
  const double right = ShareOfRows(columns.back(), lines, [&](const Piece& piece, const Candidate& cell) {
    return piece.box.x > cell.left + 2 * cap && piece.text.size() > 1;
  });
  if (left < 0.5) {
    return ColumnOrder::kDesignatorFirst;
  }
  return right < 0.5 ? ColumnOrder::kDesignatorLast : ColumnOrder::kDesignatorInside;
}

// Where each table begins, px; the first begins left of everything.
std::vector<double> TableStarts(const std::vector<Column>& columns, const std::vector<Line>& lines, ColumnOrder order,
                                double cap) {
  std::vector<double> starts = {-std::numeric_limits<double>::infinity()};
  double lead = 0;
  if (order == ColumnOrder::kDesignatorInside) {
    // Tables abreast are alike: what stands in front of the first table's designators does so in the others too.
    std::vector<int> first_lefts;
    for (const Candidate& cell : columns.front().cells) {
      first_lefts.push_back(lines[cell.line].pieces.front().box.x);
    }
    std::nth_element(first_lefts.begin(), first_lefts.begin() + static_cast<std::ptrdiff_t>(first_lefts.size() / 2),
                     first_lefts.end());
    lead = columns.front().left - first_lefts[first_lefts.size() / 2];
  }
  for (std::size_t i = 1; i < columns.size(); ++i) {
    if (order == ColumnOrder::kDesignatorLast) {
      int right = 0;
      for (const Candidate& cell : columns[i - 1].cells) {
        right = std::max(right, lines[cell.line].pieces[cell.piece].box.right());
      }
      starts.push_back(right + 0.5 * cap);
    } else {
      starts.push_back(columns[i].left - lead - 1.2 * cap);
    }
  }
  return starts;
}

// Which table a piece stands in.
std::size_t TableOf(const Piece& piece, const std::vector<double>& starts) {
  std::size_t table = 0;
  while (table + 1 < starts.size() && piece.box.x >= starts[table + 1]) {
    ++table;
  }
  return table;
}

// Whether a line runs across the borders of the tables: a heading over all of them.
bool Spans(const Line& line, const std::vector<double>& starts, double cap) {
  for (std::size_t border = 1; border < starts.size(); ++border) {
    for (std::size_t i = 0; i < line.pieces.size(); ++i) {
      const Piece& piece = line.pieces[i];
      const bool across = piece.box.x < starts[border] - cap && piece.box.right() > starts[border] + cap;
      const bool close = i > 0 && line.pieces[i - 1].box.x < starts[border] && piece.box.x >= starts[border] &&
                         Gap(line.pieces[i - 1], piece) < 1.3 * cap;
      if (across || close) {
        return true;
      }
    }
  }
  return false;
}

// What tables that stand abreast have in common.
struct TableLook {
  ColumnOrder order = ColumnOrder::kNoDesignator;
  std::vector<int> lefts;                    // of the columns of designators or item numbers, px
  std::vector<std::vector<ItemCell>> items;  // by table; none in lists by designators
};

// The band's tables, from the pieces that stand in it.
std::vector<ListTable> TablesOf(std::vector<Piece> pieces, const std::vector<double>& starts, const TableLook& look) {
  std::vector<std::vector<Piece>> shares(starts.size());
  for (Piece& piece : pieces) {
    shares[TableOf(piece, starts)].push_back(std::move(piece));
  }
  std::vector<ListTable> tables;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (!shares[i].empty()) {
      tables.push_back({JoinLines(std::move(shares[i])), look.order, i < look.lefts.size() ? look.lefts[i] : 0,
                        i < look.items.size() ? look.items[i] : std::vector<ItemCell>{}});
    }
  }
  return tables;
}

// The page cut into bands by headings over all tables, which begin no row themselves.
std::vector<ListBand> BandsOf(std::vector<Line> lines, const std::vector<bool>& begins_row,
                              const std::vector<double>& starts, const TableLook& look, double cap) {
  std::vector<ListBand> bands(1);
  std::vector<Piece> below;
  const auto close_band = [&] { bands.back().tables = TablesOf(std::exchange(below, {}), starts, look); };
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!begins_row[i] && Spans(lines[i], starts, cap)) {
      close_band();
      bands.push_back({std::move(lines[i]), {}});
    } else {
      below.insert(below.end(), std::make_move_iterator(lines[i].pieces.begin()),
                   std::make_move_iterator(lines[i].pieces.end()));
    }
  }
  close_band();
  return bands;
}

// Whether item numbers, and not designators, begin the rows. What reads like a designator among item numbers is one of
// them: S2 between 51 and 53.
bool CountRows(const std::vector<ItemColumn>& items, const std::vector<Column>& columns) {
  std::set<std::pair<std::size_t, std::size_t>> counted;
  for (const ItemColumn& column : items) {
    for (const ItemCell& cell : column.cells) {
      counted.insert({cell.line, cell.piece});
    }
  }
  std::size_t named = 0;
  for (const Column& column : columns) {
    for (const Candidate& cell : column.cells) {
      named += counted.count({cell.line, cell.piece}) == 0 ? 1U : 0U;
    }
  }
  return !counted.empty() && named * 2 < counted.size();
}

std::vector<ListBand> ItemBands(std::vector<Line> lines, std::vector<ItemColumn> items, double cap) {
  std::vector<double> starts = {-std::numeric_limits<double>::infinity()};
  TableLook look{ColumnOrder::kItems, {}, {}};
  std::vector<bool> begins_row(lines.size(), false);
  for (ItemColumn& column : items) {
    if (!look.lefts.empty()) {
      starts.push_back(column.left - 1.2 * cap);
    }
    look.lefts.push_back(column.left);
    for (const ItemCell& cell : column.cells) {
      begins_row[cell.line] = true;
    }
    look.items.push_back(std::move(column.cells));
  }
  return BandsOf(std::move(lines), begins_row, starts, look, cap);
}

}  // namespace

bool IsMention(const std::vector<Piece>& pieces, std::size_t at, double cap, const Rules::Tables& tables) {
  constexpr double kWideSpace = 2;
  if (at == 0 || Gap(pieces[at - 1], pieces[at]) > kWideSpace * cap) {
    return false;
  }
  const std::string before = ListWord(pieces[at - 1].text);
  const std::vector<std::string> phrase = {at > 1 ? ListWord(pieces[at - 2].text) : std::string(), before};
  return HasRole(before, ListRole::kPreposition, tables) || PhraseAt(phrase, 0, ListRole::kSame, tables) == 2;
}

std::vector<ListBand> FindTables(std::vector<Piece> pieces, double cap, const Rules::Tables& tables) {
  std::vector<Line> lines = JoinLines(std::move(pieces));
  const std::vector<Candidate> candidates = Candidates(lines, cap, tables);
  const std::vector<Column> columns = Columns(candidates, cap);
  std::vector<ItemColumn> items = FindItemColumns(lines, cap, tables);
  if (CountRows(items, columns)) {
    return ItemBands(std::move(lines), std::move(items), cap);
  }
  if (columns.empty() || columns.front().cells.size() < 2) {
    std::vector<ListBand> whole(1);
    whole.front().tables.push_back({std::move(lines), ColumnOrder::kNoDesignator, 0, {}});
    return whole;
  }
  const ColumnOrder order = OrderOf(columns, lines, cap);
  const std::vector<double> starts = TableStarts(columns, lines, order, cap);
  std::vector<int> lefts;
  // Only designators in their columns make a row: A2 may also begin a heading.
  std::vector<bool> begins_row(lines.size(), false);
  for (const Column& column : columns) {
    lefts.push_back(column.left);
    for (const Candidate& cell : column.cells) {
      begins_row[cell.line] = true;
    }
  }
  return BandsOf(std::move(lines), begins_row, starts, {order, lefts, {}}, cap);
}

}  // namespace benchleaf::extract
