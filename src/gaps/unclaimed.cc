#include "gaps/unclaimed.h"

#include "extract/list_words.h"
#include "extract/value.h"
#include "linking/near_values.h"

#include <algorithm>

namespace benchleaf::gaps {
namespace {

// The word that says what kind of part it is.
std::string FirstWord(const Entry& entry) {
  return extract::ListWord(entry.description.substr(0, entry.description.find_first_of(" ,")));
}

}  // namespace

UnclaimedValues::UnclaimedValues(const SearchedPages& pages) : pages_(pages) {
  for (std::size_t p = 0; p < pages.manual().pages.size(); ++p) {
    const PageRecord& page = pages.manual().pages[p];
    if (page.facts.kind != PageKind::kSchematic) continue;
    std::set<std::size_t> claimed;
    for (const std::vector<std::size_t>& beside : linking::ValuesBeside(page.sightings)) {
      claimed.insert(beside.begin(), beside.end());
    }
    for (std::size_t i = 0; i < page.sightings.size(); ++i) {
      if (page.sightings[i].kind == TermKind::kValue && !claimed.contains(i)) values_.push_back({p, i, 0});
    }
  }
}

std::optional<GapPlace> UnclaimedValues::Find(const std::string& listed, const std::string& letters) const {
  const auto wanted = extract::ParsePartValue(listed, letters);
  if (!wanted) return std::nullopt;
  for (const PartPlace& place : values_) {
    const Sighting& sighting = pages_.manual().pages[place.page].sightings[place.item];
    const auto value = extract::ParsePartValue(sighting.text, letters);
    if (value && value->quantity == wanted->quantity && extract::SameMagnitude(value->magnitude, wanted->magnitude)) {
      return pages_.At(place.page, sighting.box, sighting.read);
    }
  }
  return std::nullopt;
}

UnclaimedRows::UnclaimedRows(const SearchedPages& pages, const PartIndex& parts) : pages_(pages) {
  std::map<std::string, std::set<std::string>> classes;  // first word to class letters
  for (const auto& [name, places] : parts.listed) {
    for (const PartPlace& place : places) {
      classes[FirstWord(pages.manual().pages[place.page].entries[place.item])].insert(name.letters);
    }
  }
  classes.erase("");
  for (std::size_t p = 0; p < pages.manual().pages.size(); ++p) {
    for (const Entry& entry : pages.manual().pages[p].entries) {
      if (!entry.designator.empty()) continue;
      // A designator that could not be read may stand in the description: "V~ Tube, 6AU6".
      const std::size_t space = entry.description.find(' ');
      Entry behind;
      behind.description = space == std::string::npos ? std::string() : entry.description.substr(space + 1);
      for (const std::string& word : {FirstWord(entry), FirstWord(behind)}) {
        const auto known = classes.find(word);
        if (known == classes.end()) continue;
        for (const std::string& letters : known->second) pages_of_[letters].insert(p);
      }
    }
  }
}

std::vector<PagePlace> UnclaimedRows::PagesWith(const std::string& letters) const {
  std::vector<PagePlace> places;
  const auto pages = pages_of_.find(letters);
  if (pages == pages_of_.end()) return places;
  for (const std::size_t page : pages->second) places.push_back(pages_.PlaceOf(page));
  return places;
}

}  // namespace benchleaf::gaps
