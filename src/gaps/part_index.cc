#include "gaps/part_index.h"

#include "extract/dashed_designators.h"
#include "extract/designator_range.h"
#include "extract/list_words.h"
#include "extract/pieces.h"

#include <algorithm>
#include <string>
#include <utility>

namespace benchleaf::gaps {
namespace {

// Where the phrase for an unused designator begins among the words; their number when there is none.
std::size_t UnusedAt(const std::vector<std::string>& words, const Rules& rules) {
  std::size_t at = 0;
  while (at < words.size() && extract::PhraseAt(words, at, extract::ListRole::kUnused, rules.tables()) == 0) ++at;
  return at;
}

// "R143 NOT USED", "R120, R143 NOT USED", "R150 THRU R155 OMITTED", on whatever page.
void AddUnused(const PageRecord& page, const Rules& rules, std::vector<PartName>& unused) {
  for (const extract::Line& line : extract::UprightLines(page.reading)) {
    std::vector<std::string> words;
    for (const extract::Piece& piece : line.pieces) words.push_back(extract::ListWord(piece.text));
    const std::size_t end = UnusedAt(words, rules);
    if (end == words.size()) continue;
    // The last designators before the phrase: what stands before them belongs to another column.
    std::string cell;
    for (std::size_t i = end; i > 0; --i) {
      const std::string longer = extract::WithSignsForWords(line.pieces[i - 1].text + cell, rules.tables());
      const auto named = extract::ExpandDesignators(extract::WithoutDesignatorDashes(longer, rules.tables()),
                                                    rules.tables(), extract::RangeStyle::kList);
      cell.insert(0, line.pieces[i - 1].text);
      if (!named) continue;
      for (const extract::Designator& one : *named) {
        if (auto name = PartNameOf(one.Text(), {}, rules)) unused.push_back(*std::move(name));
      }
    }
  }
}

bool SaysUnused(const Entry& entry, const Rules& rules) {
  std::vector<std::string> words;
  std::size_t from = 0;
  while (from < entry.description.size()) {
    const std::size_t end = std::min(entry.description.find(' ', from), entry.description.size());
    words.push_back(extract::ListWord(entry.description.substr(from, end - from)));
    from = end + 1;
  }
  return UnusedAt(words, rules) < words.size();
}

}  // namespace

std::vector<bool> PagesOfLists(const ManualRecord& manual) {
  constexpr double kNearlyEvery = 0.8;
  std::size_t rows = 0;
  std::size_t numbered = 0;
  const auto with_number = [](const PageRecord& page) {
    return static_cast<std::size_t>(std::count_if(page.entries.begin(), page.entries.end(),
                                                  [](const Entry& entry) { return !entry.part_number.empty(); }));
  };
  for (const PageRecord& page : manual.pages) {
    if (with_number(page) == 0) continue;
    rows += page.entries.size();
    numbered += with_number(page);
  }
  const bool gives_numbers = rows > 0 && static_cast<double>(numbered) >= kNearlyEvery * static_cast<double>(rows);
  std::vector<bool> lists;
  for (const PageRecord& page : manual.pages) {
    lists.push_back(!page.entries.empty() && (!gives_numbers || with_number(page) > 0));
  }
  return lists;
}

PartIndex IndexParts(const ManualRecord& manual, const Rules& rules) {
  PartIndex index;
  const std::vector<bool> lists = PagesOfLists(manual);
  for (std::size_t p = 0; p < manual.pages.size(); ++p) {
    const PageRecord& page = manual.pages[p];
    for (std::size_t i = 0; lists[p] && i < page.entries.size(); ++i) {
      const Entry& entry = page.entries[i];
      auto name = PartNameOf(entry.designator, entry.assembly, rules);
      if (!name) continue;
      if (SaysUnused(entry, rules)) {
        index.unused.push_back(*std::move(name));
      } else {
        index.listed[*std::move(name)].push_back({p, i, entry.confidence});
      }
    }
    AddUnused(page, rules, index.unused);
    const bool schematic = page.facts.kind == PageKind::kSchematic;
    if (!schematic && page.facts.kind != PageKind::kPartsLocator && page.facts.kind != PageKind::kTubeLayout) continue;
    for (std::size_t i = 0; i < page.sightings.size(); ++i) {
      const Sighting& sighting = page.sightings[i];
      if (sighting.kind != TermKind::kDesignator) continue;
      if (auto name = PartNameOf(sighting.text, sighting.assembly, rules)) {
        (schematic ? index.drawn : index.located)[*std::move(name)].push_back({p, i, sighting.confidence});
      }
    }
  }
  return index;
}

std::vector<PartPlace> PlacesOf(const std::map<PartName, std::vector<PartPlace>>& parts, const PartName& name) {
  std::vector<PartPlace> places;
  for (const auto& [other, where] : parts) {
    if (name.MayBe(other)) places.insert(places.end(), where.begin(), where.end());
  }
  return places;
}

bool IsUnused(const PartIndex& index, const PartName& name) {
  return std::any_of(index.unused.begin(), index.unused.end(),
                     [&](const PartName& other) { return name.MayBe(other); });
}

}  // namespace benchleaf::gaps
