#include "extract/list_pieces.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr std::string_view kLeaders = ".,-_~':;=";
constexpr std::string_view kRules = "|[]{}!";

bool IsLeader(char c) { return kLeaders.find(c) != std::string_view::npos; }

// Where the run of leader characters from `at` ends, or `at` when it is too short to be a leader.
std::size_t LeaderEnd(std::string_view text, std::size_t at) {
  std::size_t end = at;
  bool underline = false;
  while (end < text.size() && IsLeader(text[end])) {
    underline = underline || text[end] == '_';
    ++end;
  }
  return end - at >= 3 || underline ? end : at;
}

bool IsRepetition(std::string_view text) { return text == "''" || text == ",," || text == "\""; }

// Without the ruled lines of a table's cells at both ends.
std::string_view WithoutRules(std::string_view text) {
  while (!text.empty() && kRules.find(text.front()) != std::string_view::npos) {
    text.remove_prefix(1);
  }
  // At the end a stroke may be a figure: LS! is LS1.
  while (!text.empty() && text.back() != '!' && kRules.find(text.back()) != std::string_view::npos) {
    text.remove_suffix(1);
  }
  return text;
}

// The share of a piece's box that its characters [from, to) have.
Box BoxOfPart(const Piece& whole, std::size_t from, std::size_t to) {
  const double step = static_cast<double>(whole.box.width) / static_cast<double>(whole.text.size());
  Box box = whole.box;
  box.x += static_cast<int>(step * static_cast<double>(from));
  box.width = static_cast<int>(step * static_cast<double>(to - from));
  return box;
}

// The part [from, to) of a piece, with its share of the box.
Piece Part(const Piece& whole, std::size_t from, std::size_t to) {
  Piece part = whole;
  part.text = whole.text.substr(from, to - from);
  // What is cut off at the ends is no text, so whatever else was read there still belongs to the part.
  const auto letters = [](const std::string& text) { return std::count_if(text.begin(), text.end(), IsAlnum); };
  const bool all = letters(part.text) == letters(whole.text);
  part.read = all ? whole.read : part.text;
  part.alternatives = all ? whole.alternatives : std::vector<Alternative>{};
  part.box = BoxOfPart(whole, from, to);
  return part;
}

// Dots, specks and ends of lines read as letters or figures are lower than any of these.
bool IsLowWord(const Piece& piece, double cap) {
  return piece.box.height < 0.6 * cap && piece.text.find_first_not_of("-\"',.") != std::string::npos;
}

// Letters and figures alone, look-alikes folded.
std::string Bones(std::string_view text, const Rules::Tables& tables) {
  std::string bones;
  for (const char c : text) {
    if (IsAlnum(c)) {
      bones += c;
    }
  }
  return Folded(bones, tables);
}

std::size_t CountBones(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), IsAlnum));
}

// Which pieces, that with number `owner` among them, an alternative spells: first and count, at least two. How many
// bones they have is told first: few alternatives are of the right length.
std::optional<std::pair<std::size_t, std::size_t>> SpanOf(const std::string& alternative,
                                                          const std::vector<Piece>& pieces, std::size_t owner,
                                                          const Rules::Tables& tables) {
  constexpr std::size_t kMostPieces = 5;
  const std::size_t wanted = CountBones(alternative);
  const std::size_t first = owner < kMostPieces ? 0 : owner + 1 - kMostPieces;
  for (std::size_t from = first; from <= owner; ++from) {
    std::size_t count = 0;
    std::size_t end = from;
    while (end < pieces.size() && count < wanted) {
      count += CountBones(pieces[end++].text);
    }
    if (count != wanted || end <= owner || end < from + 2) {
      continue;
    }
    std::string bones;
    for (std::size_t i = from; i < end; ++i) {
      bones += Bones(pieces[i].text, tables);
    }
    if (bones == Bones(alternative, tables)) {
      return std::pair(from, end - from);
    }
  }
  return std::nullopt;
}

// Where a designator ends to which the next cell's word was read without a space ("P3Plug,"); 0 for other texts.
std::size_t EndOfMergedDesignator(std::string_view text) {
  const std::size_t last_figure = text.find_last_of("0123456789");
  if (last_figure == std::string_view::npos || last_figure + 4 > text.size() || last_figure > 12) {
    return 0;
  }
  const std::string_view word = text.substr(last_figure + 1);
  const bool worded =
      IsUpper(word[0]) && IsLetter(word[1]) && IsLetter(word[2]) &&
      word.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz,.;") == std::string_view::npos &&
      word.size() > 3;
  // Letters, then nothing but figures and signs: no tube or part number is of this form.
  std::size_t at = 0;
  while (at < last_figure && IsUpper(text[at])) {
    ++at;
  }
  const bool designator =
      at <= 3 && text.substr(at, last_figure + 1 - at).find_first_not_of("0123456789,-") == std::string_view::npos;
  return worded && designator ? last_figure + 1 : 0;
}

void AddPart(const Piece& whole, std::size_t from, std::size_t to, std::vector<Piece>& parts) {
  const std::string_view text = WithoutRules(std::string_view(whole.text).substr(from, to - from));
  if (text.empty() || (text.find_first_not_of(kLeaders) == std::string_view::npos && !IsRepetition(text))) {
    return;
  }
  const auto start = static_cast<std::size_t>(text.data() - whole.text.data());
  const std::size_t merged = EndOfMergedDesignator(text);
  if (merged != 0) {
    parts.push_back(Part(whole, start, start + merged));
  }
  parts.push_back(Part(whole, start + merged, start + text.size()));
}

// Whether a text has nothing in it that is, or may be, to be cut: most have not.
bool IsWhole(std::string_view text) { return !text.empty() && std::all_of(text.begin(), text.end(), IsLetter); }

}  // namespace

std::vector<Piece> WithoutLeaders(std::vector<Piece> pieces, double cap) {
  std::vector<Piece> parts;
  parts.reserve(pieces.size());
  for (Piece& piece : pieces) {
    if (IsLowWord(piece, cap)) {
      continue;
    }
    if (IsWhole(piece.text)) {
      piece.box = BoxOfPart(piece, 0, piece.text.size());
      parts.push_back(std::move(piece));
      continue;
    }
    std::size_t from = 0;
    for (std::size_t at = 0; at < piece.text.size();) {
      const std::size_t end = LeaderEnd(piece.text, at);
      if (end == at) {
        ++at;
        continue;
      }
      AddPart(piece, from, at, parts);
      // The last dot of the leader belongs to a number that would otherwise begin with a nought: .....05 MFD.
      const bool decimal = end + 1 < piece.text.size() && piece.text[end - 1] == '.' && piece.text[end] == '0' &&
                           IsDigit(piece.text[end + 1]);
      from = decimal ? end - 1 : end;
      at = end;
    }
    AddPart(piece, from, piece.text.size(), parts);
  }
  return parts;
}

void JoinByAlternatives(Line& line, const Rules::Tables& tables) {
  for (std::size_t owner = 0; owner < line.pieces.size(); ++owner) {
    for (const Alternative& other : line.pieces[owner].alternatives) {
      const std::string alternative = other.text;
      if (alternative.find('_') != std::string::npos) {
        continue;  // an underline between words, not a sign within one
      }
      if (const auto span = SpanOf(alternative, line.pieces, owner, tables)) {
        const auto [from, count] = *span;
        Piece whole = Joined(line.pieces, from, count);
        whole.text = alternative;
        line.pieces[from] = std::move(whole);
        line.pieces.erase(line.pieces.begin() + static_cast<std::ptrdiff_t>(from) + 1,
                          line.pieces.begin() + static_cast<std::ptrdiff_t>(from + count));
        owner = from;
        break;
      }
    }
  }
}

}  // namespace benchleaf::extract
