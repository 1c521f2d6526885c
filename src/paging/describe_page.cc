#include "extract/list_words.h"
#include "extract/plain_text.h"
#include "paging/page_shape.h"
#include "paging/page_words.h"
#include "paging/printed_number.h"

#include "benchleaf/paging/paging.h"

#include <algorithm>
#include <cstddef>
#include <string>

namespace benchleaf {
namespace {

using paging::KindScores;
using paging::WordLine;

constexpr double kTitleCounts = 3;  // times as much as running text
constexpr int kMostMentions = 3;    // in running text: a word repeated on and on says nothing new
constexpr std::size_t kMostTitles = 12;
constexpr double kLeastScore = 0.9;

// Whether two words are the same but for one spoiled letter; short words must be equal.
bool SameWord(const std::string& read, const std::string& wanted) {
  if (read == wanted) {
    return true;
  }
  if (wanted.size() < 7 || read.size() != wanted.size()) {
    return false;
  }
  std::size_t spoiled = 0;
  for (std::size_t i = 0; i < read.size(); ++i) {
    spoiled += read[i] != wanted[i] ? 1U : 0U;
  }
  return spoiled == 1;
}

// A word of a line, by its number there.
struct WordPlace {
  const WordLine* line = nullptr;
  std::size_t at = 0;
};

// The words by their length, which a spoiled letter does not change: a phrase is looked for only where a word is as
// long as its first.
std::vector<std::vector<WordPlace>> ByLength(const std::vector<WordLine>& lines) {
  std::vector<std::vector<WordPlace>> places;
  for (const WordLine& line : lines) {
    for (std::size_t at = 0; at < line.words.size(); ++at) {
      const std::size_t length = line.words[at].size();
      places.resize(std::max(places.size(), length + 1));
      places[length].push_back({&line, at});
    }
  }
  return places;
}

bool IsMentioned(const std::vector<std::string>& phrase, const WordPlace& place) {
  const std::vector<std::string>& words = place.line->words;
  return place.at + phrase.size() <= words.size() &&
         std::equal(phrase.begin(), phrase.end(), words.begin() + static_cast<std::ptrdiff_t>(place.at),
                    [](const std::string& wanted, const std::string& read) { return SameWord(read, wanted); });
}

void AddScoresOfWords(const std::vector<WordLine>& lines, const Rules::Tables& tables, KindScores& scores) {
  const std::vector<std::vector<WordPlace>> places = ByLength(lines);
  for (const extract::KindPhrase& phrase : tables.kind_phrases) {
    const std::size_t length = phrase.words.front().size();
    int in_text = 0;
    bool in_title = false;
    for (std::size_t i = 0; length < places.size() && i < places[length].size(); ++i) {
      const WordPlace& place = places[length][i];
      if (IsMentioned(phrase.words, place)) {
        in_title = in_title || place.line->title;
        in_text += place.line->title ? 0 : 1;
      }
    }
    const double weight =
        phrase.weight * (in_title ? kTitleCounts : 0) + phrase.weight * 0.5 * std::min(in_text, kMostMentions);
    if (const auto kind = PageKindNamed(phrase.kind)) {
      scores.at(static_cast<std::size_t>(*kind)) += weight;
    }
  }
}

std::string TextOf(const extract::Line& line) {
  std::string text;
  for (const extract::Piece& piece : line.pieces) {
    text += (text.empty() ? "" : " ") + piece.read;
  }
  return text;
}

std::vector<std::string> Titles(const std::vector<WordLine>& lines, const Rules::Tables& tables) {
  std::vector<std::string> titles;
  for (const WordLine& line : lines) {
    const bool worded = std::any_of(line.words.begin(), line.words.end(), [](const std::string& word) {
      return word.size() >= 4 && std::all_of(word.begin(), word.end(), extract::IsLetter);
    });
    if (titles.size() < kMostTitles && line.title && (worded || paging::IsCaption(line.words, tables))) {
      titles.push_back(TextOf(line.line));
    }
  }
  return titles;
}

// What stands behind MODEL or CHASSIS and holds a figure.
std::string Model(const std::vector<WordLine>& lines, const Rules::Tables& tables) {
  constexpr std::size_t kLongest = 14;
  for (const WordLine& line : lines) {
    for (std::size_t at = 0; at + 1 < line.words.size(); ++at) {
      if (!extract::HasRole(line.words[at], extract::ListRole::kModel, tables)) {
        continue;
      }
      const std::size_t behind = line.words[at + 1] == "NO" && at + 2 < line.words.size() ? at + 2 : at + 1;
      const std::string& model = line.words[behind];
      if (model.size() >= 2 && model.size() <= kLongest && model.find_first_of("0123456789") != std::string::npos) {
        return model;
      }
    }
  }
  return {};
}

}  // namespace

PageFacts DescribePage(const PageReading& reading, const Rules& rules) {
  return DescribePage(reading, ReadRows(reading, rules), rules);
}

PageFacts DescribePage(const PageReading& reading, const PageRows& rows, const Rules& rules) {
  PageFacts facts;
  const Rules::Tables& tables = rules.tables();
  const std::vector<WordLine> lines = paging::WordLines(reading, tables);
  if (lines.empty()) {
    return facts;
  }
  KindScores scores = paging::ScoresOfShape(paging::ShapeOf(reading, rows, lines, tables), reading.measures);
  AddScoresOfWords(lines, tables, scores);

  const auto best = std::max_element(scores.begin(), scores.end());
  double second = 0;
  for (auto score = scores.begin(); score != scores.end(); ++score) {
    second = score == best ? second : std::max(second, *score);
  }
  if (*best >= kLeastScore) {
    facts.kind = static_cast<PageKind>(best - scores.begin());
    facts.kind_confidence = *best / (*best + second + kLeastScore);
  }
  facts.printed_number = paging::PrintedNumber(lines, reading.frame.level_height, extract::CapHeight(reading), tables);
  facts.titles = Titles(lines, tables);
  facts.model = Model(lines, tables);
  return facts;
}

}  // namespace benchleaf
