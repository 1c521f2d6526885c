#include "store/misread_search.h"

#include "store/near_texts.h"
#include "store/schema.h"
#include "store/sighting_names.h"
#include "store/stored.h"
#include "store/text_search.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/core/geometry.h"
#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/misread_words.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf::store {

namespace {

constexpr std::size_t kLongTerm = 6;          // characters from which on one may be misread beyond look-alikes
constexpr std::size_t kMostNear = 40;         // texts that a long term may have been read as
constexpr double kLeastLikely = 0.01;         // chosen by bench_find on the development half
constexpr Xapian::doccount kMostPages = 200;  // that are looked at
constexpr double kSamePlace = 0.5;            // overlap
constexpr double kSureOfAnother = 0.85;       // a term read as surely is no other

// The texts of the index, look-alikes folded, that a term may have been read as.
std::vector<std::string> FoldedTexts(const Xapian::Database& database, const Rules& rules, const std::string& term) {
  const std::string folded = FoldLookAlikes(term, rules);
  std::vector<std::string> texts = {folded};
  if (term.size() >= kLongTerm) {
    for (std::string& text : NearTexts(database, rules, folded, kMostNear)) {
      if (text != folded) texts.push_back(std::move(text));
    }
  }
  return texts;
}

// What a term of this look is; only for show.
TermKind LooksLike(const std::string& term) {
  constexpr std::size_t kLongestDesignator = 6;
  if (term.size() > kLongestDesignator || term.find('-') != std::string::npos) return TermKind::kPartNumber;
  return IsDigit(term.front()) ? TermKind::kTube : TermKind::kDesignator;
}

bool IsTaken(const StoredPage& page, const std::vector<Sighting>& sightings, const FractionBox& box,
             const std::vector<FoundSighting>& found, double likely) {
  const bool answered = std::any_of(found.begin(), found.end(), [&](const FoundSighting& one) {
    return one.place.page == page.page.page && one.place.file == page.page.file &&
           OverlapOfSmaller(one.sighting.box, box) > kSamePlace;
  });
  return answered || std::any_of(sightings.begin(), sightings.end(), [&](const Sighting& sighting) {
           return sighting.kind != TermKind::kValue && sighting.confidence > std::max(likely, kSureOfAnother) &&
                  OverlapOfSmaller(sighting.box, box) > kSamePlace;
         });
}

Sighting Seen(const Word& word, const PageFrame& frame, const std::string& term, double likely) {
  Sighting sighting = SightingOfWord(word, frame);
  sighting.kind = LooksLike(term);
  sighting.confidence = likely;
  return sighting;
}

}  // namespace

std::vector<FoundSighting> FindMisread(const Xapian::Database& database, const Rules& rules, const std::string& term,
                                       const FindQuery& query, const std::vector<FoundSighting>& found,
                                       std::size_t most, std::set<Xapian::docid>& pages) {
  std::vector<FoundSighting> more;
  if (std::none_of(term.begin(), term.end(), IsDigit)) return more;
  const std::vector<std::string> texts = FoldedTexts(database, rules, term);
  std::vector<std::string> terms;
  for (const std::string& text : texts) terms.push_back(MisreadTerm(text));
  const std::set<std::string> wanted(texts.begin(), texts.end());

  Xapian::Enquire enquire(database);
  enquire.set_query(Filtered(Xapian::Query(Xapian::Query::OP_OR, terms.begin(), terms.end()), query));
  enquire.set_weighting_scheme(Xapian::BoolWeight());
  // By place, not by id: shards that are merged, or asked as one, answer like one index.
  enquire.set_sort_by_value(kPlaceSlot, false);
  const Xapian::MSet matches = enquire.get_mset(0, kMostPages);
  std::set<Xapian::docid> answered;
  for (auto at = matches.begin(); at != matches.end(); ++at) {
    const std::string data = at.get_document().get_data();
    const StoredPage page = ParsePage(data);
    if (pages.count(*at) != 0 || (!query.set.empty() && page.set != query.set)) continue;
    std::vector<Sighting> sightings;
    for (const StoredSighting& sighting : page.sightings) {
      if (sighting.text != term) sightings.push_back(sighting.Decode());
    }
    const PageReading reading = LoadReading(database, *at);
    for (const Word& word : reading.words) {
      const std::vector<std::string> folded = FoldedReadings(word, rules);
      if (std::none_of(folded.begin(), folded.end(), [&](const auto& one) { return wanted.count(one) != 0; })) continue;
      const double likely = LikenessOf(word, term, rules);
      if (likely < kLeastLikely || IsTaken(page, sightings, ToScan(reading.frame, word.box), found, likely)) continue;
      answered.insert(*at);
      more.push_back({page.Place(), Seen(word, reading.frame, term, likely), Match::kLookAlike});
    }
  }
  pages.insert(answered.begin(), answered.end());
  std::stable_sort(more.begin(), more.end(), [](const FoundSighting& a, const FoundSighting& b) {
    return std::tie(b.sighting.confidence, a.place.set, a.place.manual, a.place.file, a.place.page) <
           std::tie(a.sighting.confidence, b.place.set, b.place.manual, b.place.file, b.place.page);
  });
  if (more.size() > most) more.resize(most);
  return more;
}

}  // namespace benchleaf::store
