#include "store/find.h"

#include "store/asked_term.h"
#include "store/misread_search.h"
#include "store/page_tubes.h"
#include "store/schema.h"
#include "store/text_search.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf::store {

namespace {

auto PlaceKey(const PagePlace& place) { return std::tie(place.set, place.manual, place.file, place.page); }

// Better ones first, then by place.
bool IsBefore(const FoundSighting& a, const FoundSighting& b) {
  const Xapian::termcount units_a = ConfidenceUnits(a.sighting.confidence);
  const Xapian::termcount units_b = ConfidenceUnits(b.sighting.confidence);
  return units_a != units_b ? units_a > units_b : PlaceKey(a.place) < PlaceKey(b.place);
}

// Adds the sightings of one page that fit so.
void AddSightings(const StoredPage& page, const AskedTerm& asked, Match match, std::vector<FoundSighting>& found) {
  for (const StoredSighting& sighting : page.sightings) {
    if (asked.Fits(sighting, match)) found.push_back({page.Place(), sighting.Decode(), match});
  }
}

// The `most` best sightings that fit so, in order, and in `pages` the ids of the pages they are on.
std::vector<FoundSighting> BestOf(const Xapian::Database& database, const AskedTerm& asked, Match match,
                                  const FindQuery& query, std::size_t most, std::set<Xapian::docid>& pages) {
  Xapian::Enquire enquire(database);
  enquire.set_query(Filtered(asked.Pages(match), query));
  // The weight is the wdf alone: the best confidence of the term on the page.
  enquire.set_weighting_scheme(Xapian::TfIdfWeight("nnn"));
  enquire.set_sort_by_relevance_then_value(kPlaceSlot, false);

  // The best sighting of a page gives the page its rank, so the best `most` pages hold the best `most` sightings.
  // Further pages are opened only when some of these turn out not to fit.
  std::vector<FoundSighting> found;
  const auto batch = static_cast<Xapian::doccount>(most);
  for (Xapian::doccount first = 0; found.size() < most; first += batch) {
    const Xapian::MSet matches = enquire.get_mset(first, batch);
    for (auto at = matches.begin(); at != matches.end(); ++at) {
      const std::string data = at.get_document().get_data();
      const StoredPage page = ParsePage(data);
      if (!query.set.empty() && page.set != query.set) continue;
      const std::size_t before = found.size();
      AddSightings(page, asked, match, found);
      if (found.size() > before) pages.insert(*at);
    }
    if (matches.size() < batch) break;
  }
  std::stable_sort(found.begin(), found.end(), IsBefore);
  if (found.size() > most) found.resize(most);
  return found;
}

}  // namespace

std::vector<FoundSighting> Find(const Xapian::Database& database, const Rules& rules, const FindQuery& query) {
  std::vector<FoundSighting> found;
  const AskedTerm asked(query.term, rules);
  if (query.limit <= 0 || asked.canonical().empty()) return found;

  const auto limit = static_cast<std::size_t>(query.limit);
  std::set<Xapian::docid> pages;
  for (const Match match : {Match::kExact, Match::kForm, Match::kLookAlike}) {
    if (found.size() == limit) return found;
    std::vector<FoundSighting> more = BestOf(database, asked, match, query, limit - found.size(), pages);
    std::move(more.begin(), more.end(), std::back_inserter(found));
  }
  if (found.size() == limit || asked.item_alone()) return found;
  for (FoundSighting& misread :
       FindMisread(database, rules, asked.canonical(), query, found, limit - found.size(), pages)) {
    found.push_back(std::move(misread));
  }
  if (found.size() == limit) return found;
  std::vector<FoundSighting> more = FindText(database, query, pages, limit - found.size());
  std::move(more.begin(), more.end(), std::back_inserter(found));
  return found;
}

std::vector<FoundTube> FindTube(const Xapian::Database& database, const Rules& rules, const std::string& type) {
  std::vector<FoundTube> found;
  const AskedTerm asked(type, rules);
  if (asked.canonical().empty()) return found;

  Xapian::Enquire enquire(database);
  enquire.set_query(asked.PagesOfTubes());
  enquire.set_weighting_scheme(Xapian::BoolWeight());
  enquire.set_docid_order(Xapian::Enquire::ASCENDING);
  const Xapian::MSet matches = enquire.get_mset(0, database.get_doccount());
  for (auto at = matches.begin(); at != matches.end(); ++at) {
    const std::string value = at.get_document().get_value(kTubesSlot);
    const PageTubes page = ParsePageTubes(value);
    for (const PageTube& tube : page.tubes) {
      for (const Match match : {Match::kExact, Match::kForm}) {
        if (!asked.Fits(tube.sighting, match)) continue;
        found.push_back({{page.place, tube.sighting.Decode(), match}, std::string(tube.designator)});
      }
    }
  }
  std::stable_sort(found.begin(), found.end(), [](const FoundTube& one, const FoundTube& other) {
    const FoundSighting& a = one.found;
    const FoundSighting& b = other.found;
    if (a.place.set != b.place.set) return a.place.set < b.place.set;
    return a.match != b.match ? a.match < b.match : IsBefore(a, b);
  });
  return found;
}

}  // namespace benchleaf::store
