#include "extract/item_number.h"
#include "gaps/checks.h"

#include "benchleaf/extract/item_callouts.h"
#include "benchleaf/linking/designator_beside.h"

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::gaps {
namespace {

constexpr double kNearlyWhole = 0.98;  // as of parts with designators
constexpr std::size_t kShortestList = 5;
constexpr double kDensest = 0.7;  // least share of a list's numbers that rows bear

using Position = std::pair<std::size_t, std::size_t>;  // page, entry

std::set<Position> LinkedRows(const ManualRecord& manual) {
  std::set<Position> linked;
  for (const Link& link : manual.links) linked.insert({link.entry_page, link.entry});
  return linked;
}

class ListSearch {
 public:
  ListSearch(const SearchedPages& pages, const ItemList& list, const std::set<Position>& linked)
      : pages_(pages), list_(list), linked_(linked) {}

  // Rows that no drawing calls out, where a drawing calls out others of the list.
  void AddNotDrawn(std::vector<Gap>& gaps) const {
    std::size_t found = 0;
    for (const ItemList::Row& row : list_.rows) found += IsLinked(row) ? 1U : 0U;
    const std::vector<PagePlace> bad = pages_.BadPages({PageKind::kSchematic, PageKind::kPartsLocator});
    for (const ItemList::Row& row : list_.rows) {
      if (found == 0 || IsLinked(row)) continue;
      Gap gap{GapKind::kNotDrawn,   GapGrade::kMissing,
              NameOf(EntryOf(row)), "listed, and called out on no drawing",
              {PlaceOf(row)},       {}};
      GradeAbsence(gap, bad);
      if (static_cast<double>(found) < kNearlyWhole * static_cast<double>(list_.rows.size())) {
        gap.grade = GapGrade::kNotSeen;
        gap.reason += "; " + std::to_string(found) + " of " + std::to_string(list_.rows.size()) +
                      " items of its list were found on drawings";
      }
      gaps.push_back(std::move(gap));
    }
  }

  // Numbers between others that no row bears.
  void AddHoles(std::vector<Gap>& gaps) const {
    std::optional<extract::ItemNumber> above;
    const auto first = extract::ParseItemNumber(EntryOf(list_.rows.front()).item);
    const auto last = extract::ParseItemNumber(EntryOf(list_.rows.back()).item);
    const int span = first && last ? last->number - first->number + 1 : 0;
    const auto rows = static_cast<double>(list_.rows.size());
    if (list_.rows.size() < kShortestList || rows < kDensest * span) return;
    for (const ItemList::Row& row : list_.rows) {
      const auto item = extract::ParseItemNumber(EntryOf(row).item);
      if (above && item && item->number > above->number + 1) AddHole(above->number + 1, item->number - 1, row, gaps);
      above = item && (!above || *above < *item) ? item : above;
    }
  }

 private:
  const Entry& EntryOf(const ItemList::Row& row) const { return pages_.manual().pages[row.page].entries[row.entry]; }

  GapPlace PlaceOf(const ItemList::Row& row) const {
    return pages_.At(row.page, EntryOf(row).box, EntryOf(row).description);
  }

  bool IsLinked(const ItemList::Row& row) const { return linked_.count({row.page, row.entry}) > 0; }

  void AddHole(int from, int to, const ItemList::Row& below, std::vector<Gap>& gaps) const {
    std::string what = "item " + std::to_string(from);
    if (to > from) what += " to " + std::to_string(to);
    Gap gap{GapKind::kNumbering, GapGrade::kMissing,
            std::move(what),     "no row of the list bears this number, before " + NameOf(EntryOf(below)),
            {PlaceOf(below)},    {}};
    GradeAbsence(gap, pages_.BadPages({PageKind::kPartsList}));
    gaps.push_back(std::move(gap));
  }

  const SearchedPages& pages_;
  const ItemList& list_;
  const std::set<Position>& linked_;
};

}  // namespace

std::size_t CountItems(const ManualRecord& manual) {
  std::size_t items = 0;
  for (const PageRecord& page : manual.pages) {
    for (const Entry& entry : page.entries) items += entry.designator.empty() && !entry.item.empty() ? 1U : 0U;
  }
  return items;
}

std::vector<Gap> ItemGaps(const SearchedPages& pages) {
  std::vector<const std::vector<Entry>*> entries;
  for (const PageRecord& page : pages.manual().pages) entries.push_back(&page.entries);
  const std::set<Position> linked = LinkedRows(pages.manual());
  std::vector<Gap> gaps;
  for (const ItemList& list : ItemListsOf(entries)) {
    const ListSearch search(pages, list, linked);
    search.AddNotDrawn(gaps);
    search.AddHoles(gaps);
  }
  return gaps;
}

}  // namespace benchleaf::gaps
