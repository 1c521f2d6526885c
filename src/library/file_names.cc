#include "library/file_names.h"

#include "library/natural_order.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace benchleaf {
namespace {

constexpr std::string_view kSeparators = " _-.,#";
constexpr std::string_view kBrackets = "()[]";

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

bool HasDigit(std::string_view text) { return std::any_of(text.begin(), text.end(), IsDigit); }

bool IsControl(char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }

bool IsSeparator(char c) { return kSeparators.find(c) != std::string_view::npos; }

// Whether the '-' at `at` in a name without underscores belongs to a model number, see the header.
bool JoinsModel(std::string_view name, std::size_t at) {
  const std::size_t before = at == 0 ? std::string_view::npos : name.find_last_of(" -", at - 1);
  const std::size_t begin = before == std::string_view::npos ? 0 : before + 1;
  const std::string_view left = name.substr(begin, at - begin);
  const std::size_t after = name.find_first_of(" -", at + 1);
  const std::string_view right = name.substr(at + 1, std::min(after, name.size()) - at - 1);
  if (left.empty() || right.empty()) {
    return false;
  }
  constexpr std::size_t kShort = 3;
  return (HasDigit(left) && (HasDigit(right) || right.size() <= kShort)) || (HasDigit(right) && left.size() <= kShort);
}

// A word of a name: a run without separators and brackets. A point between digits does not separate (v2.1).
struct Token {
  std::size_t begin = 0;
  std::size_t end = 0;
  std::string text;  // lower case
};

std::vector<Token> Tokens(std::string_view name) {
  std::vector<Token> tokens;
  std::size_t begin = std::string_view::npos;
  for (std::size_t i = 0; i <= name.size(); ++i) {
    bool separates = i == name.size() || IsSeparator(name[i]) || kBrackets.find(name[i]) != std::string_view::npos;
    if (separates && i > 0 && i + 1 < name.size() && name[i] == '.' && IsDigit(name[i - 1]) && IsDigit(name[i + 1])) {
      separates = false;
    }
    if (!separates && begin == std::string_view::npos) {
      begin = i;
    } else if (separates && begin != std::string_view::npos) {
      tokens.push_back({begin, i, LowerAscii(name.substr(begin, i - begin))});
      begin = std::string_view::npos;
    }
  }
  return tokens;
}

// 1 to 99, with leading zeros or without.
std::optional<int> Number(std::string_view text) {
  if (text.empty() || text.size() > 3 || !std::all_of(text.begin(), text.end(), IsDigit)) {
    return std::nullopt;
  }
  int value = 0;
  for (const char c : text) {
    value = value * 10 + (c - '0');
  }
  return value >= 1 && value <= 99 ? std::optional(value) : std::nullopt;
}

std::optional<int> RomanNumeral(std::string_view lower) {
  constexpr std::array<std::string_view, 10> kNumerals = {"i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x"};
  const auto* const found = std::find(kNumerals.begin(), kNumerals.end(), lower);
  return found == kNumerals.end() ? std::nullopt : std::optional(static_cast<int>(found - kNumerals.begin()) + 1);
}

// A word that announces a number.
struct Marker {
  std::string_view word;
  bool stands_apart = true;  // the number may be the next word: a lone V or P is more likely volts or a power
  bool takes_roman = false;
};

constexpr std::array kVolumeMarkers = {
    Marker{"volume", true, true},
    Marker{"vol", true, true},
    Marker{"part", true, true},
    Marker{"book", true, true},
    Marker{"pt"},
    Marker{"bk"},
    Marker{"v", false},
};
constexpr std::array kPageMarkers = {Marker{"page"}, Marker{"sheet"}, Marker{"pg"}, Marker{"p", false}};

// The words of a name that state a number.
struct Statement {
  std::size_t first = 0;
  std::size_t last = 0;
  int number = 0;
};

std::optional<Statement> MarkedAt(const std::vector<Token>& tokens, std::size_t at, std::span<const Marker> markers) {
  const std::string_view text = tokens[at].text;
  for (const Marker& marker : markers) {
    if (!text.starts_with(marker.word)) {
      continue;
    }
    if (text.size() > marker.word.size()) {
      if (const auto number = Number(text.substr(marker.word.size()))) {
        return Statement{at, at, *number};
      }
    } else if (marker.stands_apart && at + 1 < tokens.size()) {
      auto number = Number(tokens[at + 1].text);
      if (!number && marker.takes_roman) {
        number = RomanNumeral(tokens[at + 1].text);
      }
      if (number) {
        return Statement{at, at + 1, *number};
      }
    }
  }
  return std::nullopt;
}

bool OfManyFollows(const std::vector<Token>& tokens, std::size_t at) {
  return at + 2 < tokens.size() && tokens[at + 1].text == "of" && Number(tokens[at + 2].text);
}

// "1 of 3", in three words or in one.
std::optional<Statement> CountedAt(const std::vector<Token>& tokens, std::size_t at) {
  const std::string_view text = tokens[at].text;
  const std::size_t of = text.find("of");
  if (of != std::string_view::npos && Number(text.substr(of + 2))) {
    const auto number = Number(text.substr(0, of));
    return number ? std::optional(Statement{at, at, *number}) : std::nullopt;
  }
  const auto number = OfManyFollows(tokens, at) ? Number(text) : std::nullopt;
  return number ? std::optional(Statement{at, at + 2, *number}) : std::nullopt;
}

// Takes [begin, end) out of the name, together with the separators and an emptied pair of brackets round it.
std::string Without(std::string_view name, std::size_t begin, std::size_t end) {
  std::string_view left = name.substr(0, begin);
  std::string_view right = name.substr(end);
  const auto trim = [&] {
    while (!left.empty() && IsSeparator(left.back())) {
      left.remove_suffix(1);
    }
    while (!right.empty() && IsSeparator(right.front())) {
      right.remove_prefix(1);
    }
  };
  trim();
  if (!left.empty() && !right.empty() &&
      ((left.back() == '(' && right.front() == ')') || (left.back() == '[' && right.front() == ']'))) {
    left.remove_suffix(1);
    right.remove_prefix(1);
    trim();
  }
  const bool closes = !right.empty() && (right.front() == ')' || right.front() == ']');
  std::string joined(left);
  if (!left.empty() && !right.empty() && !closes) {
    joined += '_';
  }
  joined += right;
  return joined;
}

NumberedName TakenOut(std::string_view name, const std::vector<Token>& tokens, const std::optional<Statement>& found) {
  if (!found) {
    return {std::string(name), 0};
  }
  return {Without(name, tokens[found->first].begin, tokens[found->last].end), found->number};
}

}  // namespace

std::string ReadableName(std::string_view name) {
  std::string plain(name);
  std::replace_if(
      plain.begin(), plain.end(), [](char c) { return c == '_' || IsControl(c); }, ' ');
  std::string readable;
  for (std::size_t i = 0; i < plain.size(); ++i) {
    const char c = plain[i] == '-' && !JoinsModel(plain, i) ? ' ' : plain[i];
    if (c != ' ' || (!readable.empty() && readable.back() != ' ')) {
      readable += c;
    }
  }
  while (!readable.empty() && readable.back() == ' ') {
    readable.pop_back();
  }
  return readable.empty() ? std::string(name) : readable;
}

NumberedName SplitVolume(std::string_view name) {
  const std::vector<Token> tokens = Tokens(name);
  std::optional<Statement> found;
  for (std::size_t i = 0; i < tokens.size(); ++i) {
    auto statement = MarkedAt(tokens, i, kVolumeMarkers);
    if (statement && OfManyFollows(tokens, statement->last)) {
      statement->last += 2;
    }
    if (!statement) {
      statement = CountedAt(tokens, i);
    }
    if (statement) {
      found = statement;
      i = statement->last;
    }
  }
  return TakenOut(name, tokens, found);
}

NumberedName SplitPage(std::string_view name) {
  const std::vector<Token> tokens = Tokens(name);
  std::optional<Statement> found;
  for (std::size_t i = 0; i < tokens.size(); ++i) {
    if (const auto statement = MarkedAt(tokens, i, kPageMarkers)) {
      found = statement;
    }
  }
  return TakenOut(name, tokens, found);
}

CountedName SplitTrailingNumber(std::string_view name) {
  std::size_t end = name.size();
  while (end > 0 && IsDigit(name[end - 1])) {
    --end;
  }
  if (end == name.size()) {
    return {std::string(name), false};
  }
  while (end > 0 && IsSeparator(name[end - 1])) {
    --end;
  }
  return {std::string(name.substr(0, end)), true};
}

}  // namespace benchleaf
