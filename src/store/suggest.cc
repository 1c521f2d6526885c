#include "store/suggest.h"

#include "store/letters.h"
#include "store/schema.h"
#include "store/sighting_names.h"

#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace benchleaf::store {

namespace {

struct Candidate {
  std::size_t distance = 0;         // with look-alikes folded
  std::size_t letter_distance = 0;  // without
  Xapian::doccount pages = 0;
  std::string text;

  // Better ones first.
  friend bool operator<(const Candidate& a, const Candidate& b) {
    return std::tie(a.distance, a.letter_distance, b.pages, a.text) <
           std::tie(b.distance, b.letter_distance, a.pages, b.text);
  }
};

bool IsUpper(char c) { return c >= 'A' && c <= 'Z'; }

class NearTermSearch {
 public:
  NearTermSearch(const Xapian::Database& database, const Rules& rules, std::string text)
      : database_(database),
        rules_(rules),
        text_(std::move(text)),
        letters_(Lowered(text_)),
        folded_(Lowered(FoldLookAlikes(text_, rules))),
        most_(letters_.size() <= 4 ? 1 : 2) {}

  // Looks at the terms with the prefix whose text begins with the same character or one that looks like it. The rest of
  // the index is left out: a slip in the first character is rare, and an index may have millions of terms.
  void LookAt(const std::string& prefix) {
    for (const char first : FirstCharacters()) {
      const std::string beginning = prefix + first;
      for (auto at = database_.allterms_begin(beginning); at != database_.allterms_end(beginning); ++at) {
        Consider((*at).substr(prefix.size()), at.get_termfreq());
      }
    }
  }

  std::vector<std::string> Best(std::size_t most) const {
    std::vector<Candidate> sorted;
    sorted.reserve(candidates_.size());
    for (const auto& [text, candidate] : candidates_) sorted.push_back(candidate);
    std::sort(sorted.begin(), sorted.end());
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < sorted.size() && i < most; ++i) texts.push_back(sorted[i].text);
    return texts;
  }

 private:
  std::string FirstCharacters() const {
    const std::string first = text_.substr(0, 1);
    const std::string folded = FoldLookAlikes(first, rules_);
    std::string characters = first;
    for (char c = '!'; c <= '~'; ++c) {
      if (IsUpper(c) && !IsUpper(first.front())) continue;  // words of text are lower-case, prefixes are not
      if (c != first.front() && FoldLookAlikes(std::string(1, c), rules_) == folded) characters += c;
    }
    return characters;
  }

  void Consider(const std::string& text, Xapian::doccount pages) {
    const std::u32string letters = Lowered(text);
    // The cheap test first: folding exchanges characters one for one.
    if (std::max(letters.size(), letters_.size()) - std::min(letters.size(), letters_.size()) > most_) return;
    const std::size_t distance = EditDistance(folded_, Lowered(FoldLookAlikes(text, rules_)), most_);
    if (distance > most_ || text == text_) return;
    const std::size_t letter_distance = EditDistance(letters_, letters, std::max(letters.size(), letters_.size()));
    Candidate& candidate = candidates_[text];
    candidate = {distance, letter_distance, candidate.pages + pages, text};
  }

  const Xapian::Database& database_;
  const Rules& rules_;
  std::string text_;
  std::u32string letters_;
  std::u32string folded_;
  std::size_t most_;
  std::map<std::string, Candidate> candidates_;  // a text may stand under several kinds
};

std::string LowerCase(const std::string& text) {
  std::string lowered;
  for (const char32_t letter : Lowered(text)) Xapian::Unicode::append_utf8(lowered, letter);
  return lowered;
}

bool HasFigure(const std::string& text) { return text.find_first_of("0123456789") != std::string::npos; }

}  // namespace

std::vector<std::string> NearTerms(const Xapian::Database& database, const Rules& rules, const std::string& term,
                                   std::size_t most) {
  const std::string canonical = Canonical(term);
  if (canonical.empty()) return {};

  NearTermSearch terms(database, rules, canonical);
  for (const TermKind kind : kAllTermKinds) terms.LookAt(ExactTerm(kind, ""));
  std::vector<std::string> near = terms.Best(most);
  if (near.size() < most) {
    NearTermSearch words(database, rules, LowerCase(canonical));
    words.LookAt("");
    for (std::string& word : words.Best(most)) {
      const bool known = std::find(near.begin(), near.end(), Canonical(word)) != near.end();
      // R11 is no slip for a word of the text.
      const bool alike = HasFigure(word) == HasFigure(canonical);
      if (!known && alike && Canonical(word) != canonical && near.size() < most) near.push_back(std::move(word));
    }
  }
  return near;
}

}  // namespace benchleaf::store
