#include "extract/dashed_designators.h"
#include "extract/list_page.h"
#include "extract/list_pieces.h"
#include "extract/page_numbering.h"
#include "extract/page_terms.h"

#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

using extract::PageTerm;

// The designators and part numbers of the list's rows: what the rows say of them is surer than the single words, and
// ranges are spelled out.
std::vector<PageTerm> TermsOfRows(const std::vector<extract::ListPageRow>& rows) {
  std::vector<PageTerm> terms;
  for (const extract::ListPageRow& row : rows) {
    PageTerm term;
    term.assembly = row.row.assembly;
    term.read = row.row.designator_text;
    term.box = row.row.designator_box;
    for (const extract::Designator& designator : row.row.designators) {
      if (row.row.designator_box.empty()) {
        break;  // told by the rows around it: the designator itself is seen nowhere
      }
      term.term = {TermKind::kDesignator, designator.Text(), designator.sure};
      term.confidence = row.row.designator_confidence * designator.sure;
      terms.push_back(term);
    }
    const auto add = [&](TermKind kind, const std::string& text, const Box& box, double confidence) {
      term.term = {kind, text, 1};
      term.read = text;
      term.box = box;
      term.confidence = confidence;
      terms.push_back(term);
    };
    if (!row.row.item.empty() && !row.row.item_box.empty()) {
      add(TermKind::kItem, row.row.item, row.row.item_box, row.row.item_confidence);
    }
    if (!row.fields.part_number.empty() && !row.fields.part_box.empty()) {
      add(TermKind::kPartNumber, row.fields.part_number, row.fields.part_box, row.fields.part_confidence);
    }
    for (const extract::PartCell& other : row.fields.other_parts) {
      add(TermKind::kPartNumber, other.text, other.box, other.confidence);
    }
  }
  return terms;
}

extract::Places BoxesOf(const std::vector<PageTerm>& terms, int bottom) {
  extract::Places places(bottom, terms.size());
  for (const PageTerm& term : terms) {
    places.Add(term.box);
  }
  return places;
}

extract::Places BoxesOf(const std::vector<extract::ListPageRow>& rows, int bottom) {
  extract::Places places(bottom, rows.size());
  for (const extract::ListPageRow& row : rows) {
    places.Add(row.row.box);
  }
  return places;
}

// Whether a list's word that has a designator's form but names no row is believed. Badly read descriptions are full of
// such words, so within a row the words before it must speak of a part (SAME AS R4), or it must be read surely.
bool IsBelieved(const PageTerm& term, bool in_row) {
  if (term.term.kind != TermKind::kDesignator || term.mentioned) {
    return true;
  }
  constexpr double kSure = 0.85;
  constexpr double kFairlySure = 0.45;
  return term.confidence >= (in_row ? kSure : kFairlySure);
}

// What is less sure than this is left out: it would be wrong more often than right.
double LeastSure(TermKind kind, bool list) {
  if (kind == TermKind::kTube) {
    return list ? 0 : extract::kLeastSureTubeOnDrawings;
  }
  if (kind != TermKind::kDesignator) {
    return 0;
  }
  return list ? extract::kLeastSureInLists : extract::kLeastSureOnDrawings;
}

// The words of rows that stand for tubes tell of tubes.
void NoteTubeRows(const std::vector<extract::ListPageRow>& rows, extract::PageSense& sense) {
  for (const extract::ListPageRow& row : rows) {
    if (!row.row.designators.empty() && row.row.designators.front().letters == "V") {
      sense.tube_designators.Add(row.row.box);
    }
  }
}

}  // namespace

std::vector<Sighting> ExtractSightings(const PageReading& reading, const Rules& rules) {
  return ExtractSightings(reading, ReadRows(reading, rules), rules);
}

std::vector<Sighting> ExtractSightings(const PageReading& reading, const PageRows& page_rows, const Rules& rules) {
  const Rules::Tables& tables = rules.tables();
  const std::vector<extract::ListPageRow>& rows = *page_rows.rows;
  const bool list = !rows.empty();
  std::vector<extract::Piece> pieces = extract::UndashedPiecesOf(reading, tables);
  const double cap = extract::CapHeight(reading);
  if (list) {
    pieces = extract::WithoutLeaders(std::move(pieces), cap);
  }
  extract::PageSense sense = extract::SenseOf(pieces, list, cap, tables);
  NoteTubeRows(rows, sense);

  const std::vector<PageTerm> row_terms = TermsOfRows(rows);
  const int bottom = extract::BottomOf(pieces);
  const extract::Places row_term_places = BoxesOf(row_terms, bottom);
  const extract::Places row_places = BoxesOf(rows, bottom);
  std::vector<extract::Piece> upright;
  std::vector<PageTerm> terms;
  for (extract::Piece& piece : pieces) {
    if (piece.turn == 0) {
      upright.push_back(std::move(piece));
      continue;
    }
    for (PageTerm& term : extract::TermsOfPiece(piece, sense, tables)) {
      terms.push_back(std::move(term));
    }
  }
  const std::vector<extract::Line> lines = extract::JoinLines(std::move(upright));
  if (!list) {
    sense.assembly = extract::AssemblyNamedBy(lines, tables);
  }
  for (PageTerm& term : extract::TermsOfLines(lines, sense, tables)) {
    const auto row = row_places.FirstOn(term.box);
    if (!row_term_places.FirstOn(term.box) && (!list || IsBelieved(term, row.has_value()))) {
      term.assembly = row ? rows[*row].row.assembly : std::string();
      terms.push_back(std::move(term));
    }
  }
  terms.insert(terms.end(), row_terms.begin(), row_terms.end());
  extract::SettleTerms(terms, sense, tables);
  if (!list && extract::IsScattered(reading.measures)) {
    extract::WeighByNumbering(terms, tables);
  }

  std::vector<Sighting> sightings;
  for (PageTerm& term : terms) {
    Sighting sighting;
    sighting.kind = term.term.kind;
    sighting.text = std::move(term.term.text);
    sighting.read = std::move(term.read);
    sighting.box = ToScan(reading.frame, term.box);
    // A word's turn is told on the level page, which is the scan turned clockwise by its orientation.
    sighting.turn = (term.turn - reading.frame.orientation + 360) % 360;
    sighting.confidence = std::clamp(term.confidence, 0.0, 1.0);
    sighting.assembly = list ? std::move(term.assembly) : sense.assembly;
    if (sighting.confidence >= LeastSure(sighting.kind, list)) {
      sightings.push_back(std::move(sighting));
    }
  }
  return sightings;
}

}  // namespace benchleaf
