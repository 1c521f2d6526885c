#include "store/text_search.h"

#include "store/schema.h"
#include "store/sighting_names.h"
#include "store/stored.h"

#include "benchleaf/core/geometry.h"

#include <algorithm>
#include <optional>
#include <sstream>
#include <string>
#include <utility>

namespace benchleaf::store {

namespace {

// A word that is asked for, as the index holds words.
struct AskedWord {
  std::string text;
  bool any_ending = false;

  bool Fits(const std::string& word) const { return any_ending ? word.starts_with(text) : word == text; }
};

// The words of a text, split and lower-cased as when the page was indexed, in their order.
std::vector<std::string> IndexedWords(const std::string& text) {
  Xapian::Document document;
  Xapian::TermGenerator generator;
  generator.set_document(document);
  generator.index_text(text);
  std::vector<std::pair<Xapian::termpos, std::string>> placed;
  for (auto term = document.termlist_begin(); term != document.termlist_end(); ++term) {
    for (auto at = term.positionlist_begin(); at != term.positionlist_end(); ++at) placed.emplace_back(*at, *term);
  }
  std::sort(placed.begin(), placed.end());
  std::vector<std::string> words;
  words.reserve(placed.size());
  for (auto& [position, word] : placed) words.push_back(std::move(word));
  return words;
}

// The words of a query that a page may be found by: neither its operators nor what must not stand on the page.
std::vector<AskedWord> AskedWords(const std::string& text) {
  std::vector<AskedWord> asked;
  std::istringstream pieces(text);
  bool excluded = false;
  for (std::string piece; pieces >> piece;) {
    const bool excludes_next = piece == "NOT";
    if (excludes_next || piece == "AND" || piece == "OR" || piece == "XOR") {
      excluded = excludes_next;
      continue;
    }
    const bool leave_out = excluded || piece.front() == '-';
    excluded = false;
    if (leave_out) continue;
    const std::size_t before = asked.size();
    for (std::string& word : IndexedWords(piece)) asked.push_back({std::move(word), false});
    if (asked.size() > before) asked.back().any_ending = piece.back() == '*';
  }
  return asked;
}

// The pages that the text asks for in Xapian's syntax. What cannot be parsed so is taken for words.
Xapian::Query AskedPages(const Xapian::Database& database, const std::string& text,
                         const std::vector<AskedWord>& asked) {
  // An ending may have thousands of words; the most frequent ones are enough, and keep the query quick.
  constexpr Xapian::termcount kMostWords = 500;
  Xapian::QueryParser parser;
  parser.set_database(database);
  parser.set_default_op(Xapian::Query::OP_AND);
  parser.set_max_expansion(kMostWords, Xapian::Query::WILDCARD_LIMIT_MOST_FREQUENT);
  constexpr unsigned kSyntax = Xapian::QueryParser::FLAG_BOOLEAN | Xapian::QueryParser::FLAG_LOVEHATE |
                               Xapian::QueryParser::FLAG_PHRASE | Xapian::QueryParser::FLAG_WILDCARD |
                               Xapian::QueryParser::FLAG_PURE_NOT;
  try {
    return parser.parse_query(text, kSyntax);
  } catch (const Xapian::QueryParserError&) {
    std::vector<Xapian::Query> words;
    for (const AskedWord& word : asked) words.emplace_back(word.text);
    return {Xapian::Query::OP_AND, words.begin(), words.end()};
  }
}

// Which of the words that are asked for the word holds; most words hold none. Splitting a word as the index does is
// dear, so it is done only where the letters occur at all.
std::vector<std::size_t> Held(const Word& word, const std::vector<AskedWord>& asked) {
  std::string lowered;
  for (Xapian::Utf8Iterator at(word.text); at != Xapian::Utf8Iterator(); ++at) {
    Xapian::Unicode::append_utf8(lowered, Xapian::Unicode::tolower(*at));
  }
  const bool may_hold = std::any_of(asked.begin(), asked.end(), [&lowered](const AskedWord& one) {
    return lowered.find(one.text) != std::string::npos;
  });
  std::vector<std::size_t> held;
  if (!may_hold) return held;
  const std::vector<std::string> parts = IndexedWords(word.text);
  for (std::size_t i = 0; i < asked.size(); ++i) {
    if (std::any_of(parts.begin(), parts.end(), [&](const std::string& part) { return asked[i].Fits(part); })) {
      held.push_back(i);
    }
  }
  return held;
}

// The first word that fits, of those where the most of what is asked for stands together.
std::optional<std::size_t> BestWord(const std::vector<Word>& words, const std::vector<AskedWord>& asked) {
  std::vector<std::vector<std::size_t>> held;
  held.reserve(words.size());
  for (const Word& word : words) held.push_back(Held(word, asked));

  std::optional<std::size_t> best;
  std::size_t best_count = 0;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (held[i].empty()) continue;
    std::set<std::size_t> together;
    for (std::size_t j = i; j < words.size() && j < i + asked.size(); ++j)
      together.insert(held[j].begin(), held[j].end());
    if (together.size() > best_count) {
      best = i;
      best_count = together.size();
    }
  }
  return best;
}

}  // namespace

Sighting SightingOfWord(const Word& word, const PageFrame& frame) {
  constexpr int kFullTurn = 360;
  Sighting sighting;
  sighting.text = Canonical(word.text);
  sighting.read = word.text;
  sighting.box = ToScan(frame, word.box);
  // The scan had to be turned by `orientation` to be upright.
  sighting.turn = (word.turn + kFullTurn - frame.orientation) % kFullTurn;
  sighting.confidence = word.confidence;
  return sighting;
}

Xapian::Query Filtered(const Xapian::Query& pages, const FindQuery& query) {
  Xapian::Query filtered = pages;
  if (!query.set.empty()) {
    filtered = Xapian::Query(Xapian::Query::OP_FILTER, filtered, Xapian::Query(SetTerm(query.set)));
  }
  if (query.kind) filtered = Xapian::Query(Xapian::Query::OP_FILTER, filtered, Xapian::Query(KindTerm(*query.kind)));
  return filtered;
}

std::vector<FoundSighting> FindText(const Xapian::Database& database, const FindQuery& query,
                                    const std::set<Xapian::docid>& leave_out, std::size_t most) {
  std::vector<FoundSighting> found;
  const std::vector<AskedWord> asked = AskedWords(query.term);
  if (asked.empty()) return found;

  Xapian::Enquire enquire(database);
  enquire.set_query(Filtered(AskedPages(database, query.term, asked), query));
  // Without regard to the page's length (b = 0), which the frequencies of other terms would distort.
  enquire.set_weighting_scheme(Xapian::BM25Weight(1, 0, 1, 0, 0.5));
  if (std::any_of(asked.begin(), asked.end(), [](const AskedWord& word) { return word.any_ending; })) {
    // How rare all words of an ending are is told for each database by itself: of several asked as one, each would
    // weigh its pages otherwise. By mentions alone they weigh the same.
    enquire.set_weighting_scheme(Xapian::TfIdfWeight("nnn"));
  }
  enquire.set_sort_by_relevance_then_value(kPlaceSlot, false);
  const auto wanted = static_cast<Xapian::doccount>(most + leave_out.size());
  const Xapian::MSet matches = enquire.get_mset(0, wanted);
  for (auto at = matches.begin(); at != matches.end() && found.size() < most; ++at) {
    if (leave_out.count(*at) != 0) continue;
    const std::string data = at.get_document().get_data();
    const StoredPage page = ParsePage(data);
    if (!query.set.empty() && page.set != query.set) continue;
    const PageReading reading = LoadReading(database, *at);
    const std::optional<std::size_t> word = BestWord(reading.words, asked);
    if (word) found.push_back({page.Place(), SightingOfWord(reading.words[*word], reading.frame), Match::kText});
  }
  return found;
}

}  // namespace benchleaf::store
