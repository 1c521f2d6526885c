#include "linking/item_links.h"

#include "benchleaf/extract/item_callouts.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::linking {
namespace {

// Of the lists that number their items anew, those whose items a drawing may call out.
std::vector<std::size_t> ListsShown(const std::vector<ItemList>& lists, const std::set<std::string>& called_out) {
  constexpr double kClearlyBest = 0.2;  // of a list's items
  std::vector<double> shares;
  double best = 0;
  for (const ItemList& list : lists) {
    shares.push_back(ShareCalledOut(list, called_out));
    best = std::max(best, shares.back());
  }
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < lists.size(); ++i) {
    if (shares[i] > best - kClearlyBest) {
      shown.push_back(i);
    }
  }
  return shown;
}

}  // namespace

std::vector<Link> ItemLinks(const std::vector<LinkPage>& pages) {
  std::vector<const std::vector<Entry>*> entries;
  entries.reserve(pages.size());
  for (const LinkPage& page : pages) {
    entries.push_back(&page.entries);
  }
  const std::vector<ItemList> lists = ItemListsOf(entries);
  std::vector<Link> links;
  for (std::size_t page = 0; page < pages.size() && !lists.empty(); ++page) {
    const LinkPage& drawing = pages[page];
    std::set<std::string> called_out;
    std::map<std::string, std::vector<std::size_t>> places;  // by item
    for (std::size_t i = 0; i < drawing.sightings.size(); ++i) {
      const Sighting& sighting = drawing.sightings[i];
      if (sighting.kind == TermKind::kItem && drawing.kind != PageKind::kPartsList) {
        called_out.insert(sighting.text);
        places[sighting.text].push_back(i);
      }
    }
    if (called_out.empty()) {
      continue;
    }
    const std::vector<std::size_t> shown = ListsShown(lists, called_out);
    constexpr double kOnlyList = 0.95;
    constexpr double kBestList = 0.9;
    constexpr double kOneOfSeveral = 0.8;
    const auto candidates = static_cast<double>(shown.size());
    const double believed = lists.size() == 1 ? kOnlyList : shown.size() == 1 ? kBestList : kOneOfSeveral / candidates;
    const std::string reason = lists.size() == 1   ? "only candidate"
                               : shown.size() == 1 ? "the drawing calls out the items of this list"
                                                   : "one of " + std::to_string(shown.size()) + " candidates";
    for (const std::size_t list : shown) {
      for (const ItemList::Row& row : lists[list].rows) {
        const Entry& entry = pages[row.page].entries[row.entry];
        const auto at = places.find(entry.item);
        for (const std::size_t i : at == places.end() ? std::vector<std::size_t>() : at->second) {
          const double confidence = drawing.sightings[i].confidence * entry.confidence * believed;
          links.push_back({row.page, row.entry, page, i, confidence, reason});
        }
      }
    }
  }
  return links;
}

}  // namespace benchleaf::linking
