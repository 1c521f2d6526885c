#include "extract/list_table.h"
#include "extract/list_words.h"
#include "extract/plain_text.h"
#include "extract/value.h"

#include <algorithm>
#include <string>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kMostPieces = 10;

bool IsSeparator(char c) { return std::string_view(",-&~/;+").find(c) != std::string_view::npos; }

bool IsWordBetween(const std::string& text, const Rules::Tables& tables) {
  const Roles roles = RolesOf(ListWord(text), tables);
  return roles.Has(ListRole::kRange) || roles.Has(ListRole::kAnd);
}

// "20" or "20,26".
bool IsNumberList(std::string_view text) {
  return !text.empty() && text.size() <= 12 && IsDigit(text.front()) &&
         text.find_first_not_of("0123456789,-") == std::string_view::npos;
}

// Whether two pieces are numbers of one cell between which a scan lost the comma. Behind the letters alone it lost
// none.
bool LostComma(const Piece& left, const Piece& right, double cap, const CellColumn& column) {
  return column.right > 0 && right.box.right() < column.right && Gap(left, right) < 1.7 * cap &&
         IsAlnum(left.text.back()) && left.text.find_first_of("0123456789") != std::string::npos &&
         IsNumberList(Trimmed(right.text));
}

// Whether two pieces may be parts of one designator cell.
bool MayJoin(const Piece& left, const Piece& right, double cap, const Rules::Tables& tables, const CellColumn& column) {
  if (LostComma(left, right, cap, column)) {
    return true;
  }
  const double gap = Gap(left, right) / cap;
  const bool between = IsSeparator(left.text.back()) || IsSeparator(right.text.front()) ||
                       IsWordBetween(left.text, tables) || IsWordBetween(right.text, tables);
  if (between) {
    return gap < 3;
  }
  // Letters spaced out: "C 12". A figure behind figures is more often the first of a description.
  const bool letters = IsDesignatorClass(Upper(left.text), tables);
  return IsAlnum(right.text.front()) && !IsUpper(right.text.front()) && gap < (letters ? 1.2 : 0.3);
}

// Whether the pieces from the class letter up to this one are a designator whose letters are spaced out: R 1 2.
bool IsSpacedOut(const std::vector<Piece>& pieces, std::size_t from, std::size_t at, double cap,
                 const Rules::Tables& tables) {
  constexpr double kLetterSpace = 1.7;
  constexpr std::size_t kMostFigures = 4;
  if (at - from > kMostFigures || !IsDesignatorClass(Upper(pieces[from].text), tables)) {
    return false;
  }
  for (std::size_t i = from + 1; i <= at; ++i) {
    if (pieces[i].text.size() != 1 || !IsDigit(pieces[i].text.front()) ||
        Gap(pieces[i - 1], pieces[i]) > kLetterSpace * cap) {
      return false;
    }
  }
  return true;
}

// The text with words between made signs, so that R1 THRU R8 becomes R1-R8.
std::string CellText(const std::vector<Piece>& pieces, std::size_t from, std::size_t count, double cap,
                     const Rules::Tables& tables, const CellColumn& column) {
  std::string text;
  const bool spaced_out = IsSpacedOut(pieces, from, from + count - 1, cap, tables);
  for (std::size_t i = from; i < from + count; ++i) {
    const bool lost = i > from && !spaced_out && LostComma(pieces[i - 1], pieces[i], cap, column);
    text += lost ? "," : "";
    const Roles roles = RolesOf(ListWord(pieces[i].text), tables);
    text += roles.Has(ListRole::kRange) ? "-" : roles.Has(ListRole::kAnd) ? "," : pieces[i].text;
  }
  return text;
}

// The separator at the end of a cell that goes on in the line below is no part of it.
std::string WithoutEdges(std::string text) {
  while (!text.empty() && (IsSeparator(text.back()) || text.back() == '.' || text.back() == ':' || text.back() == '*' ||
                           text.back() == ')' || text.back() == '\'')) {
    text.pop_back();
  }
  const std::size_t start = text.find_first_not_of("*'\"(.,-_");
  return start == std::string::npos ? std::string() : text.substr(start);
}

constexpr double kAlternative = 0.85;  // an alternative is less sure than a reader's first choice

// How many pieces from `from` on stand in the cell.
std::size_t CellLength(const std::vector<Piece>& pieces, std::size_t from, const CellColumn& column) {
  std::size_t count = 1;
  while (column.right > 0 && from + count < pieces.size() && pieces[from + count].box.right() < column.right) {
    ++count;
  }
  return count;
}

// Where a reading of one piece stands that spells more than the piece: as much longer as it has more characters, up to
// the piece that follows the cell.
Box BoxOfReading(const std::vector<Piece>& pieces, std::size_t from, std::size_t count, std::size_t owner,
                 const std::string& reading) {
  Box box = Joined(pieces, from, count).box;
  const Piece& piece = pieces[owner];
  if (reading.size() > piece.text.size()) {
    const double width = static_cast<double>(piece.box.width) / static_cast<double>(piece.text.size());
    int right = piece.box.x + static_cast<int>(width * static_cast<double>(reading.size()));
    if (from + count < pieces.size()) {
      right = std::min(right, pieces[from + count].box.x);
    }
    box.width = std::max(box.right(), right) - box.x;
  }
  return box;
}

// A list of which single numbers cannot be made out: the others still stand there. C14,17,35,3%,41 gives four.
std::optional<DesignatorCell> FromSpoiledList(const std::vector<Piece>& pieces, std::size_t from, std::size_t count,
                                              double cap, const Rules::Tables& tables, const CellColumn& column) {
  const std::string text = WithoutEdges(CellText(pieces, from, count, cap, tables, column));
  if (text.find(',') == std::string::npos) {
    return std::nullopt;
  }
  std::vector<Designator> designators;
  std::size_t spoiled = 0;
  for (std::size_t start = 0; start <= text.size();) {
    const std::size_t end = std::min(text.find(',', start), text.size());
    const Designator* before = designators.empty() ? nullptr : &designators.back();
    auto item = ExpandDesignators(std::string_view(text).substr(start, end - start), tables, RangeStyle::kList, before);
    if (!item && designators.empty()) {
      return std::nullopt;
    }
    if (item) {
      designators.insert(designators.end(), item->begin(), item->end());
    } else {
      ++spoiled;
    }
    start = end + 1;
  }
  if (designators.size() < 2 || spoiled == 0 || spoiled * 2 > designators.size()) {
    return std::nullopt;
  }
  for (Designator& designator : designators) {
    designator.sure *= kAlternative;
  }
  return DesignatorCell{std::move(designators), from, count, Joined(pieces, from, count).box};
}

// What a reader made of the whole cell where the pieces hold parts of it: "C1" and "11" beside "C1,2,11".
std::optional<DesignatorCell> FromWiderReading(const std::vector<Piece>& pieces, std::size_t from,
                                               const Rules::Tables& tables, const CellColumn& column) {
  const std::size_t count = CellLength(pieces, from, column);
  std::optional<DesignatorCell> widest;
  for (std::size_t i = from; i < from + count; ++i) {
    for (const Alternative& alternative : pieces[i].alternatives) {
      auto designators = ExpandDesignators(WithoutEdges(alternative.text), tables, RangeStyle::kList);
      if (designators && designators->size() > std::max<std::size_t>(1, widest ? widest->designators.size() : 0)) {
        for (Designator& designator : *designators) {
          designator.sure *= kAlternative;
        }
        widest = DesignatorCell{std::move(*designators), from, count,
                                BoxOfReading(pieces, from, count, i, alternative.text)};
      }
    }
  }
  return widest;
}

std::optional<DesignatorCell> FromAlternatives(const std::vector<Piece>& pieces, std::size_t from,
                                               const Rules::Tables& tables) {
  for (const Alternative& alternative : pieces[from].alternatives) {
    if (auto designator = ParseDesignator(Trimmed(alternative.text), tables)) {
      designator->sure *= kAlternative;
      return DesignatorCell{{*designator}, from, 1, pieces[from].box};
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<DesignatorCell> DesignatorCellAt(const std::vector<Piece>& pieces, std::size_t from, double cap,
                                               const Rules::Tables& tables, const CellColumn& column) {
  auto wider = FromWiderReading(pieces, from, tables, column);
  std::size_t most = 1;
  while (from + most < pieces.size() && most < kMostPieces &&
         (MayJoin(pieces[from + most - 1], pieces[from + most], cap, tables, column) ||
          IsSpacedOut(pieces, from, from + most, cap, tables))) {
    ++most;
  }
  for (std::size_t count = most; count > 0; --count) {
    const std::string text = WithoutEdges(CellText(pieces, from, count, cap, tables, column));
    if (text.empty()) {
      continue;
    }
    // "C1, 10 MFD": the number belongs to the unit behind it.
    if (count > 1 && from + count < pieces.size() && IsValueNumber(pieces[from + count - 1].text) &&
        IsValueUnit(Trimmed(pieces[from + count].text)) &&
        Gap(pieces[from + count - 1], pieces[from + count]) < 2 * cap) {
      continue;
    }
    if (auto designators = ExpandDesignators(text, tables, RangeStyle::kList, column.previous, column.lone_strokes)) {
      if (wider && wider->designators.size() > designators->size()) {
        return wider;
      }
      return DesignatorCell{std::move(*designators), from, count, Joined(pieces, from, count).box};
    }
  }
  if (!wider) {
    wider = FromSpoiledList(pieces, from, most, cap, tables, column);
  }
  return wider ? wider : FromAlternatives(pieces, from, tables);
}

bool BeginsColumn(const std::vector<Piece>& pieces, std::size_t at, double cap) {
  constexpr double kColumnGap = 1.3;  // in capital heights; words of a sentence stand closer
  return at == 0 || Gap(pieces[at - 1], pieces[at]) > kColumnGap * cap;
}

}  // namespace benchleaf::extract
