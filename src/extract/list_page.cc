#include "extract/list_page.h"

#include "extract/dashed_designators.h"
#include "extract/designator.h"
#include "extract/group_members.h"
#include "extract/list_heading.h"
#include "extract/list_pieces.h"
#include "extract/list_table.h"
#include "extract/part_agreement.h"
#include "extract/plain_text.h"
#include "extract/row_fields.h"
#include "extract/row_naming.h"
#include "extract/run_together.h"

#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <memory>
#include <optional>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace extract {
namespace {

// A word of a description: letters, not a designator or value.
bool IsWord(const Piece& piece) {
  const std::string_view text = TrimmedView(piece.text);
  return text.size() >= 3 && std::count_if(text.begin(), text.end(), IsLetter) >= static_cast<int>(text.size()) - 1;
}

bool IsRunningText(const Piece& piece) { return piece.origin != WordOrigin::kString; }

bool IsWorded(const RowLines& lines) {
  return std::any_of(lines.begin(), lines.end(), [](const std::vector<Piece>& line) {
    return std::any_of(line.begin(), line.end(),
                       [](const Piece& piece) { return IsWord(piece) || IsRunningText(piece); });
  });
}

// What IsList asks of rows, and of the lines of the page they were found in.
struct RowCounts {
  std::size_t rows = 0;
  std::size_t told = 0;      // by words or a part number
  std::size_t numbered = 0;  // with a part number
  std::size_t items = 0;
  std::size_t designators = 0;
};

struct LineCounts {
  std::size_t of_tables = 0;
  std::size_t between = 0;
};

// Steps of instructions and lines of tables are numbered, too: rows by items need part numbers. Others must mostly be
// told, on a drawing by part numbers.
bool AreTold(const RowCounts& counts, bool scattered) {
  return (counts.items == 0 || counts.numbered * 2 >= counts.rows) &&
         (scattered ? counts.numbered : counts.told) * 10 >= counts.rows * 6;
}

// Without any part number the designators must be as many as half of the lines.
bool AreDense(const RowCounts& counts, const LineCounts& lines) {
  return counts.numbered == 0 ? counts.designators * 2 > lines.of_tables + lines.between
                              : counts.rows * 5 >= lines.of_tables;
}

// No more than this many designators come of a row: one without any is given one, with what was read behind it.
std::size_t MostDesignators(const ListRow& row) {
  constexpr std::size_t kAnyNumber = 1'000'000;
  return row.more_designators.empty() ? std::max<std::size_t>(1, row.designators.size()) : kAnyNumber;
}

// Whether the rows may turn out to be a list's, whatever designators they are named. Pages that cannot be are most of a
// manual, and to name rows takes longer than all the rest.
bool MayBeList(const std::vector<TableRows>& page, const std::vector<std::vector<RowParts>>& parts,
               const LineCounts& lines, bool scattered) {
  RowCounts most;
  for (std::size_t table = 0; table < page.size(); ++table) {
    bool numbered = false;  // or a section of a part above that is
    for (std::size_t i = 0; i < page[table].rows.size(); ++i) {
      const ListRow& row = page[table].rows[i];
      numbered = numbered || parts[table][i].part;
      ++most.rows;
      most.numbered += numbered ? 1U : 0U;
      most.told += numbered || IsWorded(row.lines) ? 1U : 0U;
      most.items += row.item.empty() ? 0U : 1U;
      most.designators += MostDesignators(row);
    }
  }
  return most.rows > 0 && AreTold(most, scattered) && AreDense(most, lines);
}

// Whether the rows are a list's: on a drawing, too, designators may stand one below the other, but then nothing beside
// them is worded and no part number follows; the pins of a drawing's connectors and sockets have words beside them, but
// no part numbers. Instructions and tables of voltages begin lines with designators, too: without any part number the
// designators must be as many as half of the lines.
bool IsList(const std::vector<ListPageRow>& rows, const LineCounts& lines, bool scattered) {
  RowCounts counts;
  counts.rows = rows.size();
  std::size_t naming = 0;
  for (const ListPageRow& row : rows) {
    const bool numbered = !row.fields.part_number.empty();
    counts.told += numbered || IsWorded(row.row.lines) ? 1U : 0U;
    counts.numbered += numbered ? 1U : 0U;
    counts.items += row.row.item.empty() ? 0U : 1U;
    naming += row.row.designators.empty() ? 0U : 1U;
    counts.designators += row.row.designators.size();
  }
  const bool item_list = naming == 0 && rows.size() >= 3;
  return (naming >= 2 || item_list) && AreTold(counts, scattered) && AreDense(counts, lines);
}

// A short word that a reader took for a turned one, though it also read something like a designator upright.
std::optional<Piece> AsUpright(const Piece& piece, double cap, const Rules::Tables& tables) {
  constexpr double kDoubt = 0.6;
  if (piece.box.height > 2 * cap || piece.box.width > 5 * cap) {
    return std::nullopt;
  }
  if (piece.text.size() == 1 && IsUpper(piece.text.front()) && piece.box.height <= 1.4 * cap) {
    Piece upright = piece;  // of a designator that is spaced out: the letters of its class
    upright.turn = 0;
    upright.confidence *= kDoubt;
    return upright;
  }
  for (const Alternative& alternative : piece.alternatives) {
    const std::string text = Trimmed(alternative.text);
    const bool shaped = text.size() >= 2 && IsDesignatorClass(Upper(text.substr(0, 1)), tables) && !IsLower(text[1]);
    if (shaped || RepairDesignator(text, tables, LoneStrokes::kAllowSmall)) {
      Piece upright = piece;
      upright.text = alternative.text;
      upright.turn = 0;
      upright.confidence *= kDoubt;
      return upright;
    }
  }
  return std::nullopt;
}

// The surest of the readings of about one length: a designator's form was preferred while the page was read. It gives
// way to figures alone, since numbers stand in lists that group designators.
void TakeSurest(Piece& piece, const Rules::Tables& tables) {
  for (Alternative& other : piece.alternatives) {
    const bool same_length = other.text.size() <= piece.text.size() + 1 && piece.text.size() <= other.text.size() + 1;
    const bool may_give_way =
        !ParseDesignator(Trimmed(piece.text), tables) || std::all_of(other.text.begin(), other.text.end(), IsDigit);
    if (same_length && may_give_way && other.confidence > piece.confidence) {
      std::swap(piece.text, other.text);
      std::swap(piece.confidence, other.confidence);
      piece.read = piece.text;
    }
  }
}

// The upright pieces, without leaders, those put together that a reader took apart.
std::vector<Piece> ListPieces(const PageReading& reading, double cap, const Rules::Tables& tables) {
  std::vector<Piece> upright;
  for (Piece& piece : UndashedPiecesOf(reading, tables)) {
    TakeSurest(piece, tables);
    if (piece.turn == 0) {
      upright.push_back(std::move(piece));
    } else if (auto standing = AsUpright(piece, cap, tables)) {
      upright.push_back(std::move(*standing));
    }
  }
  std::vector<Piece> pieces;
  for (Line& line : JoinLines(WithoutLeaders(std::move(upright), cap))) {
    JoinByAlternatives(line, tables);
    pieces.insert(pieces.end(), std::make_move_iterator(line.pieces.begin()),
                  std::make_move_iterator(line.pieces.end()));
  }
  return pieces;
}

// Numbers that count the rows are no designators, even where some of them read like one: 41, S2, 43.
void LeaveItemNumbers(std::vector<ListRow>& rows) {
  std::size_t named = 0;
  std::size_t figures = 0;
  for (const ListRow& row : rows) {
    if (!row.readings.empty()) {
      const std::string text = Trimmed(row.readings.front().text);
      ++(std::all_of(text.begin(), text.end(), IsDigit) ? figures : named);
    }
  }
  for (ListRow& row : rows) {
    if (figures > named) {
      row.designators.clear();
      row.designator_text.clear();
      row.readings.clear();
    }
  }
}

// Works on the rows of all tables together: those abreast go on from each other.
template <class Work>
void OnAllRows(std::vector<TableRows>& page, const Work& work) {
  std::vector<ListRow> rows;
  for (TableRows& table : page) {
    std::move(table.rows.begin(), table.rows.end(), std::back_inserter(rows));
  }
  work(rows);
  auto next = rows.begin();
  for (TableRows& table : page) {
    for (ListRow& row : table.rows) {
      row = std::move(*next++);
    }
  }
}

}  // namespace

bool IsScattered(const PageMeasures& measures) { return measures.glyphs > 0 && !StandsInRows(measures); }

std::vector<ListPageRow> ReadListPage(const PageReading& reading, const Rules::Tables& tables, std::string& assembly) {
  const double cap = CapHeight(reading);
  std::vector<ListPageRow> rows;
  std::vector<TableRows> page;
  std::string in_force = assembly;
  LineCounts lines;
  for (const ListBand& band : FindTables(ListPieces(reading, cap, tables), cap, tables)) {
    if (band.heading) {
      ++lines.between;
      if (auto heading = AssemblyHeading(*band.heading, WordsOf(band.heading->pieces), tables)) {
        in_force = *heading;
      }
    }
    for (const ListTable& table : band.tables) {
      lines.of_tables += table.lines.size();
      page.push_back(RowsOf(table, cap, tables, in_force));
      CountItems(page.back().rows);
      LeaveItemNumbers(page.back().rows);
    }
  }
  std::vector<std::vector<RowParts>> parts;
  parts.reserve(page.size());
  for (const TableRows& table : page) {
    parts.push_back(PartsOf(table, cap, tables));
  }
  OnAllRows(page, CutRunTogether);
  const bool scattered = IsScattered(reading.measures);
  if (!MayBeList(page, parts, lines, scattered)) {
    return {};
  }
  OnAllRows(page, [&](std::vector<ListRow>& together) {
    NameRows(together, tables);
    SettleGroups(together);
  });
  for (std::size_t table = 0; table < page.size(); ++table) {
    std::vector<RowFields> fields = FieldsOf(page[table], parts[table], cap);
    AgreeOnParts(page[table].rows, fields);
    for (std::size_t i = 0; i < fields.size(); ++i) {
      rows.push_back({std::move(page[table].rows[i]), std::move(fields[i])});
    }
  }
  if (!IsList(rows, lines, scattered)) {
    return {};
  }
  assembly = in_force;
  return rows;
}

}  // namespace extract

PageRows ReadRows(const PageReading& reading, const Rules& rules) {
  PageRows read;
  read.rows = std::make_shared<const std::vector<extract::ListPageRow>>(
      extract::ReadListPage(reading, rules.tables(), read.assembly));
  return read;
}

}  // namespace benchleaf
