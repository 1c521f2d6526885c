#include "store/near_texts.h"

#include "store/schema.h"

#include "benchleaf/core/utf8.h"
#include "benchleaf/extract/misread_words.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace benchleaf::store {

namespace {

constexpr std::size_t kAsAsked = 2;  // bytes at the beginning that were read right

bool IsInside(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }

// Where the character at `at` ends.
std::size_t EndOfCharacter(std::string_view text, std::size_t at) {
  ++at;
  while (at < text.size() && IsInside(text[at])) ++at;
  return at;
}

// The first text, in the order of bytes, behind all that begin with this one.
std::string Behind(std::string text) {
  text.back() = static_cast<char>(static_cast<unsigned char>(text.back()) + 1);
  return text;
}

// The next text that may be near, behind one whose first `end` bytes cannot begin such a text while its first `alive`
// can.
std::string NextText(const std::string& text, std::size_t alive, std::size_t end, const std::string& folded,
                     const Rules& rules) {
  const std::string beginning = text.substr(0, alive);
  // A character of several bytes is not put together here: every text is looked at, then.
  if (!IsAscii(folded) || BeginningOf(beginning, folded, rules) == Beginning::kWithAny)
    return Behind(text.substr(0, end));
  const auto seen = static_cast<unsigned char>(text[alive]);
  std::string next;
  for (const char own : folded) {
    const auto byte = static_cast<unsigned char>(own);
    const bool later = byte > seen && (next.empty() || byte < static_cast<unsigned char>(next.back()));
    if (later && BeginningOf(beginning + own, folded, rules) != Beginning::kNoLikeness) next = beginning + own;
  }
  return next.empty() ? Behind(beginning) : next;
}

}  // namespace

std::vector<std::string> NearTexts(const Xapian::Database& database, const Rules& rules, const std::string& folded,
                                   std::size_t most) {
  std::vector<std::pair<double, std::string>> near;
  const std::string prefix = MisreadTerm("");
  const std::string first = MisreadTerm(folded.substr(0, kAsAsked));
  auto at = database.allterms_begin(first);
  while (at != database.allterms_end(first)) {
    const std::string text = (*at).substr(prefix.size());
    std::size_t alive = kAsAsked;
    std::size_t end = alive;
    while (alive < text.size()) {
      end = EndOfCharacter(text, alive);
      if (BeginningOf(std::string_view(text).substr(0, end), folded, rules) == Beginning::kNoLikeness) break;
      alive = end;
    }
    if (alive < text.size()) {
      at.skip_to(prefix + NextText(text, alive, end, folded, rules));
      continue;
    }
    const double likeness = text == folded ? 1 : LikenessOf(text, folded, rules);
    if (likeness > 0) near.emplace_back(-likeness, text);
    ++at;
  }
  std::sort(near.begin(), near.end());
  if (near.size() > most) near.resize(most);
  std::vector<std::string> texts;
  texts.reserve(near.size());
  for (auto& [likeness, text] : near) texts.push_back(std::move(text));
  return texts;
}

}  // namespace benchleaf::store
