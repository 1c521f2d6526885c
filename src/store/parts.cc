#include "store/parts.h"

#include "store/fields.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace benchleaf::store {

namespace {

void AddParts(const Xapian::Database& database, const StoredManual& manual, std::vector<FoundEntry>& parts) {
  // Pages by position. The data is kept, since what is parsed points into it.
  std::vector<std::string> data;
  std::vector<StoredPage> pages;
  data.reserve(manual.pages.size());
  for (const Xapian::docid page : manual.pages) {
    data.push_back(database.get_document(page).get_data());
    pages.push_back(ParsePage(data.back(), WithEntries::kYes));
  }
  std::map<std::pair<std::size_t, std::size_t>, std::size_t> positions;  // of page and entry, in `parts`
  for (std::size_t i = 0; i < pages.size(); ++i) {
    for (std::size_t j = 0; j < pages[i].page.entries.size(); ++j) {
      positions[{i, j}] = parts.size();
      parts.push_back({pages[i].Place(), pages[i].page.entries[j], {}});
    }
  }
  for (const Link& link : LinksOf(manual)) {
    const auto position = positions.find({link.entry_page, link.entry});
    if (position == positions.end() || link.seen_page >= pages.size() ||
        link.sighting >= pages[link.seen_page].sightings.size()) {
      ThrowDamaged();
    }
    const StoredPage& seen = pages[link.seen_page];
    parts[position->second].seen.push_back(
        {seen.Place(), seen.sightings[link.sighting].Decode(), link.confidence, link.reason});
  }
}

}  // namespace

std::vector<FoundEntry> PartsOf(const Xapian::Database& database, const std::vector<StoredManual>& manuals) {
  std::vector<FoundEntry> parts;
  for (const StoredManual& manual : manuals) AddParts(database, manual, parts);
  for (FoundEntry& part : parts) {
    std::stable_sort(part.seen.begin(), part.seen.end(),
                     [](const FoundEntry::Seen& a, const FoundEntry::Seen& b) { return a.confidence > b.confidence; });
  }
  return parts;
}

}  // namespace benchleaf::store
