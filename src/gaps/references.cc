#include "gaps/references.h"

#include "extract/list_words.h"
#include "extract/pieces.h"
#include "gaps/page_numbers.h"

#include "benchleaf/core/ascii.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

namespace benchleaf::gaps {
namespace {

struct NamingWord {
  std::string_view word;
  Named named;
};

// Common practice, no source.
constexpr std::array<NamingWord, 10> kNamingWords = {{
    {"FIGURES", Named::kFigure},
    {"FIGURE", Named::kFigure},
    {"FIGS", Named::kFigure},
    {"FIG", Named::kFigure},
    {"SECTION", Named::kSection},
    {"PAGES", Named::kPage},
    {"PAGE", Named::kPage},
    {"VOLUME", Named::kVolume},
    {"VOL", Named::kVolume},
    {"CHAPTER", Named::kSection},
}};
constexpr std::size_t kLongestCaption = 12;  // pieces of a line
constexpr double kColumnGap = 2;             // capital heights before the page's number in a line of contents
constexpr std::size_t kFewestLetters = 4;    // of a word in a line of contents

// "5-3", "12", "2A"; Roman numbers of sections; empty for what is no number.
std::string AsNumber(const std::string& word, Named named) {
  const bool roman = named == Named::kSection && word.size() <= 4 &&
                     word.find_first_not_of("IVX") == std::string::npos && !word.empty();
  if (roman) return word;
  if (word.empty() || !IsDigit(word.front()) || word.front() == '0' || word.size() > 6) return {};
  std::size_t figures = 0;
  std::size_t dashes = 0;
  for (std::size_t i = 0; i < word.size(); ++i) {
    figures += IsDigit(word[i]) ? 1U : 0U;
    dashes += word[i] == '-' ? 1U : 0U;
    const bool suffix = IsUpper(word[i]) && i + 1 == word.size() && named == Named::kFigure;
    if (!IsDigit(word[i]) && word[i] != '-' && !suffix) return {};
  }
  const bool page_or_volume = named == Named::kPage || named == Named::kVolume;
  if (dashes > 1 || word.back() == '-' || (page_or_volume && figures > 4)) return {};
  return word;
}

bool IsDrawing(PageKind kind) {
  return kind == PageKind::kSchematic || kind == PageKind::kPartsLocator || kind == PageKind::kBlockDiagram ||
         kind == PageKind::kWaveforms || kind == PageKind::kTubeLayout;
}

Reference From(const PageRecord& page, const std::vector<extract::Piece>& pieces, std::size_t from, std::size_t count) {
  Reference reference;
  const extract::Piece joined = extract::Joined(pieces, from, count);
  for (std::size_t i = from; i < from + count; ++i) {
    reference.read += (reference.read.empty() ? "" : " ") + pieces[i].read;
  }
  reference.box = ToScan(page.reading.frame, joined.box);
  reference.confidence = joined.confidence;
  return reference;
}

// "FIG. 5-3", also where the two were read as one word.
std::optional<Reference> ReferenceAt(const PageRecord& page, const extract::Line& line, std::size_t at) {
  const std::string word = extract::ListWord(line.pieces[at].text);
  for (const NamingWord& naming : kNamingWords) {
    if (word.compare(0, naming.word.size(), naming.word) != 0) continue;
    const bool alone = word.size() == naming.word.size();
    if (alone && at + 1 >= line.pieces.size()) continue;
    const std::string rest = alone ? extract::ListWord(line.pieces[at + 1].text) : word.substr(naming.word.size());
    std::string number = AsNumber(rest, naming.named);
    if (number.empty()) continue;
    Reference reference = From(page, line.pieces, at, alone ? 2 : 1);
    reference.named = naming.named;
    reference.number = std::move(number);
    const bool may_be_caption = naming.named == Named::kFigure || naming.named == Named::kSection;
    const bool begins_line = at == 0 && line.pieces.size() <= kLongestCaption;
    reference.is_caption = may_be_caption && page.facts.kind != PageKind::kContents &&
                           (begins_line || (naming.named == Named::kFigure && IsDrawing(page.facts.kind)));
    return reference;
  }
  return std::nullopt;
}

// "Parts list ........ 6".
std::optional<Reference> PageAtEnd(const PageRecord& page, const extract::Line& line) {
  const bool worded = std::any_of(line.pieces.begin(), line.pieces.end(), [](const extract::Piece& piece) {
    return piece.text.size() >= kFewestLetters && std::all_of(piece.text.begin(), piece.text.end(), IsLetter);
  });
  if (line.pieces.size() < 2 || !worded) return std::nullopt;
  // Leaders or free space stand before it: "channels 2 through 13" ends in no page.
  const extract::Piece& before = line.pieces[line.pieces.size() - 2];
  const bool leader = before.text.find_first_not_of(".-_") == std::string::npos || before.text.ends_with("..");
  if (!leader && extract::Gap(before, line.pieces.back()) < kColumnGap * extract::CapHeight(page.reading)) {
    return std::nullopt;
  }
  const std::string number = extract::ListWord(line.pieces.back().text);
  if (!ParsePageNumber(number, 0)) return std::nullopt;
  Reference reference = From(page, line.pieces, line.pieces.size() - 1, 1);
  reference.named = Named::kPage;
  reference.number = number;
  for (std::size_t i = line.pieces.size() - 1; i > 0; --i) {
    reference.read = line.pieces[i - 1].read + " " + reference.read;
  }
  return reference;
}

}  // namespace

std::vector<Reference> ReferencesOn(const PageRecord& page) {
  std::vector<Reference> references;
  for (const extract::Line& line : extract::UprightLines(page.reading)) {
    for (std::size_t at = 0; at < line.pieces.size(); ++at) {
      if (auto reference = ReferenceAt(page, line, at)) references.push_back(*std::move(reference));
    }
    if (page.facts.kind == PageKind::kContents) {
      if (auto reference = PageAtEnd(page, line)) references.push_back(*std::move(reference));
    }
  }
  return references;
}

}  // namespace benchleaf::gaps
