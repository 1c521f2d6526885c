#include "work/assemble_manual.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/linking/link.h"
#include "benchleaf/paging/paging.h"

#include <utility>

namespace benchleaf {
namespace {

void SearchPage(PageRecord& page, const Rules& rules, ListState& state) {
  page.facts = {};
  page.sightings.clear();
  page.entries.clear();
  if (page.failure) {
    page.reading = {};
    return;
  }
  page.facts = DescribePage(page.reading, rules);
  page.sightings = ExtractSightings(page.reading, rules);
  if (page.facts.kind == PageKind::kPartsList) {
    page.entries = ExtractEntries(page.reading, rules, state);
  }
}

std::vector<Link> Links(const std::vector<PageRecord>& pages) {
  std::vector<LinkPage> linked;
  linked.reserve(pages.size());
  for (const PageRecord& page : pages) {
    linked.push_back({page.facts.kind, page.sightings, page.entries});
  }
  return LinkManual(linked);
}

}  // namespace

std::optional<ManualRecord> AssembleManual(ManualRecord head, std::vector<PageRecord> pages, const Rules& rules,
                                           const std::atomic<bool>& cancel) {
  ListState state;
  for (PageRecord& page : pages) {
    if (cancel) {
      return std::nullopt;
    }
    SearchPage(page, rules, state);
  }
  head.links = Links(pages);
  head.pages = std::move(pages);
  return head;
}

}  // namespace benchleaf
