#include "extract/list_heading.h"
#include "extract/list_words.h"
#include "extract/look_alikes.h"
#include "extract/page_terms.h"
#include "extract/plain_text.h"
#include "extract/value.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace benchleaf::extract {
namespace {

bool SpeaksOfAlignment(std::string_view text) {
  constexpr std::string_view kWord = "ALIGNMENT";
  return text.size() >= kWord.size() && Upper(text).find(kWord) != std::string::npos;
}

// Whether some character of the text is, or may be put right to, the class letter of tubes: told at a glance, while to
// tell the terms takes long.
bool MayHoldTubeDesignator(std::string_view text, const Rules::Tables& tables) {
  constexpr char kLetter = 'V';
  return !IsAscii(text) || std::any_of(text.begin(), text.end(), [&](const char& c) {
    return ToUpper(c) == kLetter || LookAlikeOf(std::string_view(&c, 1), tables).letter == kLetter;
  });
}

}  // namespace

PageSense SenseOf(const std::vector<Piece>& pieces, bool list, double cap, const Rules::Tables& tables) {
  PageSense sense;
  sense.list = list;
  sense.cap = cap;
  sense.tube_designators = Places(BottomOf(pieces), pieces.size());
  for (const Piece& piece : pieces) {
    const std::string_view text = TrimmedView(piece.text);
    sense.alignment = sense.alignment || SpeaksOfAlignment(text);
    const auto value = ParseValue(text);
    // Only letters that no tube type of that form has tell how values are written.
    if (value && value->rkm && !ParseTubeType(text, tables, TubeContext::kNone)) {
      sense.rkm_in_use = true;
    }
    if (!MayHoldTubeDesignator(text, tables)) {
      continue;
    }
    for (const Term& term : TermsIn(piece.text, tables, {})) {
      const auto designator = term.kind == TermKind::kDesignator ? ParseDesignator(term.text, tables) : std::nullopt;
      if (designator && designator->letters == "V") {
        sense.tube_designators.Add(piece.box);
      }
    }
  }
  return sense;
}

std::string AssemblyNamedBy(const std::vector<Line>& lines, const Rules::Tables& tables) {
  std::set<std::string> titled;
  std::set<std::string> named;
  for (const Line& line : lines) {
    const std::vector<std::string> words = WordsOf(line.pieces);
    if (auto title = TitledAssembly(words, tables)) {
      titled.insert(*title);
    } else if (auto assembly = DrawnAssembly(words, tables)) {
      named.insert(*assembly);
    }
  }
  // The title tells of the whole drawing, other lines perhaps of a board that is on it.
  const std::set<std::string>& told = titled.empty() ? named : titled;
  return told.size() == 1 ? *told.begin() : std::string();
}

}  // namespace benchleaf::extract
