#include "extract/part_column.h"

#include "extract/part_number.h"
#include "extract/plain_text.h"
#include "extract/semiconductor.h"
#include "extract/tube_type.h"
#include "extract/value.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kMostPieces = 5;  // part numbers with spaces in them
constexpr double kColumnReach = 2.5;    // capital heights
constexpr double kPutRight = 0.8;       // how sure a number is that had to be put right
constexpr double kLikeOthers = 0.98;    // one of the form that the column's numbers have
constexpr double kUnlikeOthers = 0.5;   // and one that stands at the place but has no known form

// Things with a form of their own that are no part numbers, though they may look like one.
bool IsSomethingElse(const std::string& text, const Rules::Tables& tables) {
  if (ParseValue(text) || IsSemiconductor(text)) {
    return true;
  }
  const auto tube = ParseTubeType(text, tables, TubeContext::kNone);
  return tube && tube->known && tube->sure > 0.9;
}

}  // namespace

PartColumn::PartColumn(const std::vector<const RowLines*>& rows, double cap, const Rules::Tables& tables)
    : rows_(rows), cap_(cap), tables_(tables) {
  struct Place {
    int left = 0;
    std::size_t count = 0;
  };
  std::vector<Place> places;
  for (const RowLines* row : rows_) {
    matches_.push_back(Matches(*row));
    for (const Match& match : matches_.back()) {
      const auto near = std::find_if(places.begin(), places.end(), [&](const Place& place) {
        return std::abs(place.left - match.cell.box.x) <= kColumnReach * cap_;
      });
      if (near == places.end()) {
        places.push_back({match.cell.box.x, 1});
      } else {
        ++near->count;
      }
    }
  }
  // Of several makers' numbers the first counts, unless it is much rarer.
  std::size_t most = 0;
  for (const Place& place : places) {
    most = std::max(most, place.count);
  }
  for (const Place& place : places) {
    if (place.count * 10 >= most * 8 && (left_ < 0 || place.left < left_)) {
      left_ = place.left;
    }
  }
  for (const std::vector<Match>& of_row : matches_) {
    for (const Match& match : of_row) {
      if (AtUsualPlace(match.cell.box)) {
        ++shapes_[ShapeOf(match.cell.text)];
        ++matched_;
      }
    }
  }
  CountLostDashes();
}

// A scan loses dashes but never makes any: numbers that differ from a form only by lacking dashes count for it.
void PartColumn::CountLostDashes() {
  const auto without_dashes = [](std::string shape) {
    shape.erase(std::remove(shape.begin(), shape.end(), '-'), shape.end());
    return shape;
  };
  for (auto& [shape, count] : shapes_) {
    for (auto& [poorer, poorer_count] : shapes_) {
      const bool fewer = std::count(poorer.begin(), poorer.end(), '-') < std::count(shape.begin(), shape.end(), '-');
      if (fewer && count >= 2 && without_dashes(poorer) == without_dashes(shape)) {
        count += poorer_count;
        poorer_count = 0;
      }
    }
  }
}

std::vector<PartColumn::Match> PartColumn::Matches(const RowLines& row) const {
  std::vector<Match> matches;
  for (std::size_t line = 0; line < row.size(); ++line) {
    const auto& pieces = row[line];
    for (std::size_t from = 0; from < pieces.size();) {
      std::size_t most = 1;
      while (from + most < pieces.size() && most < kMostPieces && !BeginsColumn(pieces, from + most, cap_)) {
        ++most;
      }
      std::size_t taken = 1;
      for (std::size_t count = most; count > 0; --count) {
        // Only pieces with figures join: "KNOB 12345" is a word and a number.
        const bool figures =
            std::all_of(pieces.begin() + static_cast<std::ptrdiff_t>(from),
                        pieces.begin() + static_cast<std::ptrdiff_t>(from + count),
                        [](const Piece& p) { return p.text.find_first_of("0123456789-") != std::string::npos; });
        if (count > 1 && !figures) {
          continue;
        }
        const Piece joined = Joined(pieces, from, count);
        const std::string text = WithNoughts(Upper(TrimmedView(joined.text)));
        const double sure = SureOfPartNumber(text, tables_, PartPlace::kList);
        const bool whole = count == 1 || text.find('-') != std::string::npos;
        if (sure > 0 && whole && !IsSomethingElse(text, tables_)) {
          matches.push_back({{text, line, from, count, joined.box, joined.confidence * sure}, sure});
          taken = count;
          break;
        }
      }
      from += taken;
    }
  }
  return matches;
}

bool PartColumn::AtUsualPlace(const Box& box) const {
  return left_ >= 0 && std::abs(box.x - left_) <= kColumnReach * cap_;
}

std::size_t PartColumn::CountOf(const std::string& shape) const {
  const auto found = shapes_.find(shape);
  return found == shapes_.end() ? 0 : found->second;
}

std::string PartColumn::PutRight(const std::string& text) const {
  // The most common shape that the text can be given.
  std::string best;
  std::size_t best_count = 1;
  for (const auto& [shape, count] : shapes_) {
    if (count <= best_count) {
      continue;
    }
    std::string fitted = FittedToShape(text, shape, tables_);
    if (!fitted.empty()) {
      best = std::move(fitted);
      best_count = count;
    }
  }
  return best;
}

std::optional<PartCell> PartColumn::Spoiled(const RowLines& row) const {
  for (std::size_t line = 0; line < row.size(); ++line) {
    const auto& pieces = row[line];
    for (std::size_t from = 0; from < pieces.size(); ++from) {
      if (!AtUsualPlace(pieces[from].box) || !BeginsColumn(pieces, from, cap_)) {
        continue;
      }
      std::size_t count = 1;
      while (from + count < pieces.size() && !BeginsColumn(pieces, from + count, cap_)) {
        ++count;
      }
      const Piece cell = Joined(pieces, from, count);
      for (std::size_t i = from; i < from + count; ++i) {
        for (const Alternative& alternative : pieces[i].alternatives) {
          if (std::string right = PutRight(alternative.text); !right.empty()) {
            return PartCell{right, line, from, count, cell.box, cell.confidence * kPutRight};
          }
        }
      }
      for (std::size_t length = count; length > 0; --length) {
        const Piece joined = Joined(pieces, from, length);
        const std::string text = joined.text;
        if (std::string right = PutRight(text); !right.empty()) {
          return PartCell{right, line, from, length, joined.box, joined.confidence * kPutRight};
        }
      }
      const Piece joined = Joined(pieces, from, count);
      const std::string text = Upper(Trimmed(joined.text));
      const auto figures = std::count_if(text.begin(), text.end(), IsDigit);
      if (count == 1 && figures >= 3 && !IsSomethingElse(text, tables_) && matched_ > 2) {
        return PartCell{text, line, from, count, joined.box, joined.confidence * kUnlikeOthers};
      }
    }
  }
  return std::nullopt;
}

std::optional<PartCell> PartColumn::Find(std::size_t row) const {
  const std::vector<Match>& matches = matches_[row];
  // At the usual place first, then by form, then from the left.
  const auto best = std::max_element(matches.begin(), matches.end(), [&](const Match& a, const Match& b) {
    return std::pair(AtUsualPlace(a.cell.box), a.sure) < std::pair(AtUsualPlace(b.cell.box), b.sure);
  });
  if (best == matches.end() || !AtUsualPlace(best->cell.box)) {
    if (auto spoiled = Spoiled(*rows_[row])) {
      return spoiled;
    }
  }
  if (best == matches.end()) {
    return std::nullopt;
  }
  // What stands in one cell belongs together: "200611" and "86" are one number where others are 123456-78.
  const auto& pieces = (*rows_[row])[best->cell.line];
  std::size_t count = best->cell.count;
  while (best->cell.from + count < pieces.size() && !BeginsColumn(pieces, best->cell.from + count, cap_)) {
    ++count;
  }
  if (count > best->cell.count && AtUsualPlace(best->cell.box)) {
    const Piece cell = Joined(pieces, best->cell.from, count);
    if (std::string right = PutRight(cell.text); right.size() > best->cell.text.size()) {
      return PartCell{right, best->cell.line, best->cell.from, count, cell.box, cell.confidence * kPutRight};
    }
  }
  // A form that is rare in this column and only looks like the common one was misread.
  constexpr std::size_t kMoreCommon = 3;
  PartCell cell = best->cell;
  const std::size_t alike = CountOf(ShapeOf(cell.text));
  if (AtUsualPlace(cell.box)) {
    std::string right = PutRight(cell.text);
    if (!right.empty() && right != cell.text && CountOf(ShapeOf(right)) >= kMoreCommon * alike) {
      cell.text = std::move(right);
      cell.confidence *= kPutRight;
    } else if (alike >= kMoreCommon) {
      cell.confidence *= kLikeOthers / best->sure;  // the column vouches for its form
    }
  }
  return cell;
}

}  // namespace benchleaf::extract
