#include "paging/page_shape.h"

#include "extract/list_page.h"
#include "extract/plain_text.h"
#include "extract/terms.h"

#include <algorithm>
#include <string>
#include <string_view>

namespace benchleaf::paging {
namespace {

using extract::Term;

double& Of(KindScores& scores, PageKind kind) { return scores.at(static_cast<std::size_t>(kind)); }

bool IsPlainWord(std::string_view text) {
  return text.size() >= 3 && std::all_of(text.begin(), text.end(), extract::IsLetter);
}

bool EndsInNumber(const WordLine& line) {
  if (line.words.size() < 2 || !IsPlainWord(line.words.front())) {
    return false;
  }
  const std::string& last = line.words.back();
  return last.size() <= 5 &&
         std::all_of(last.begin(), last.end(), [](char c) { return extract::IsDigit(c) || c == '-'; });
}

void CountTerms(const extract::Piece& piece, const Rules::Tables& tables, PageShape& shape) {
  for (const Term& term : extract::TermsIn(piece.text, tables, {})) {
    switch (term.kind) {
      case TermKind::kDesignator:
        ++shape.designators;
        shape.tube_designators += term.text[0] == 'V' && extract::IsDigit(term.text[1]) ? 1U : 0U;
        break;
      case TermKind::kTube:
        ++shape.tubes;
        break;
      case TermKind::kValue:
        ++shape.values;
        break;
      default:
        break;
    }
  }
}

}  // namespace

PageShape ShapeOf(const PageReading& reading, const PageRows& rows, const std::vector<WordLine>& lines,
                  const Rules::Tables& tables) {
  PageShape shape;
  const double cap = extract::CapHeight(reading);
  for (const WordLine& line : lines) {
    for (const extract::Piece& piece : line.line.pieces) {
      const std::string_view text = extract::TrimmedView(piece.text);
      if (text.empty()) {
        continue;
      }
      ++shape.words;
      shape.plain_words += IsPlainWord(text) ? 1U : 0U;
      shape.large_lettering = shape.large_lettering || (piece.box.height > 2 * cap && IsPlainWord(text));
      CountTerms(piece, tables, shape);
    }
    shape.lines += line.line.pieces.size() > 1 ? 1U : 0U;
    shape.numbered_lines += EndsInNumber(line) ? 1U : 0U;
  }
  for (const extract::ListPageRow& row : *rows.rows) {
    const bool numbered = !row.fields.part_number.empty();
    shape.numbered_rows += numbered ? 1U : 0U;
    shape.list_rows += numbered || !row.row.designators.empty() ? 1U : 0U;
  }
  return shape;
}

KindScores ScoresOfShape(const PageShape& shape, const PageMeasures& measures) {
  KindScores scores{};
  if (shape.words == 0) {
    return scores;
  }
  const double words = static_cast<double>(shape.words);
  const double designators = static_cast<double>(shape.designators) / words;
  const double prose = static_cast<double>(shape.plain_words) / words;
  const double values = static_cast<double>(shape.values);
  const bool drawing = measures.line_ink > 0.2 || measures.long_lines >= 8;
  // A table of tubes or of voltages on a page of text has rows like a list's, but few and without part numbers.
  const bool listed =
      shape.list_rows >= 3 && (shape.list_rows * 4 >= shape.lines || shape.numbered_rows >= 6 || shape.list_rows >= 20);

  if (listed) {
    Of(scores, PageKind::kPartsList) += shape.list_rows >= 8 ? 6 : 3.5;
  }
  if (!listed && shape.designators >= 5 && designators > 0.12 && prose < 0.6) {
    // Values stand beside designators on schematics; locators have the designators alone. Of a drawing without values a
    // single word must be able to tell which it is, wherever on the page it stands.
    const bool valued = values >= 0.25 * static_cast<double>(shape.designators);
    Of(scores, PageKind::kSchematic) += (valued ? 3 : 0.8) + (drawing ? 1.5 : 0);
    Of(scores, PageKind::kPartsLocator) += valued ? 0.5 : 2;
    Of(scores, PageKind::kPartsLocator) += measures.dark_share > 0.1 ? 1.5 : 0;
    const bool tubes_only = shape.tube_designators * 10 >= shape.designators * 7 && shape.tubes >= 3;
    Of(scores, PageKind::kTubeLayout) += tubes_only ? 3 : 0;
  } else if (!listed && shape.designators >= 5 && drawing && measures.glyphs > 0 && !StandsInRows(measures)) {
    // A drawing full of other words.
    Of(scores, PageKind::kSchematic) += 1;
  }
  // Running text alone tells little: words that name another kind must be able to outweigh it.
  if (!listed && prose > 0.55 && shape.words > 60) {
    Of(scores, PageKind::kText) += 1.3 + (StandsInRows(measures) ? 0.6 : 0);
  }
  if (!listed && shape.words <= 50 && prose > 0.5 && designators < 0.1) {
    Of(scores, PageKind::kCover) += shape.large_lettering ? 2 : 0.5;
  }
  if (!listed && shape.numbered_lines >= 5 && shape.numbered_lines * 2 >= shape.lines && designators < 0.15) {
    Of(scores, PageKind::kContents) += 3;
  }
  return scores;
}

}  // namespace benchleaf::paging
