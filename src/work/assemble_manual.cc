#include "work/assemble_manual.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/item_callouts.h"
#include "benchleaf/extract/lexicon.h"
#include "benchleaf/linking/link.h"
#include "benchleaf/paging/paging.h"

#include <cstddef>
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
  const PageRows rows = ReadRows(page.reading, rules);
  page.facts = DescribePage(page.reading, rows, rules);
  page.sightings = ExtractSightings(page.reading, rows, rules);
  if (page.facts.kind == PageKind::kPartsList) {
    page.entries = ExtractEntries(page.reading, rows, rules, state);
  }
}

LexiconPart PartOf(PageKind kind) {
  switch (kind) {
    case PageKind::kSchematic:
    case PageKind::kPartsLocator:
    case PageKind::kTubeLayout:
    case PageKind::kBlockDiagram:
    case PageKind::kWaveforms:
    case PageKind::kOther:  // pages of which too little can be read to tell their kind are drawings more often than not
      return LexiconPart::kDrawing;
    case PageKind::kPartsList:
    case PageKind::kText:
    case PageKind::kSpecifications:
    case PageKind::kTroubleshooting:
      return LexiconPart::kSource;
    case PageKind::kAlignment:
      return LexiconPart::kAlignment;
    default:
      return LexiconPart::kNone;
  }
}

void RankDrawings(std::vector<PageRecord>& pages, const Rules& rules) {
  std::vector<LexiconPage> told;
  told.reserve(pages.size());
  for (const PageRecord& page : pages) {
    told.push_back({PartOf(page.facts.kind), &page.reading, &page.sightings, &page.entries});
  }
  std::vector<std::vector<Sighting>> ranked = RankByLexicon(told, rules);
  for (std::size_t i = 0; i < pages.size(); ++i) {
    pages[i].sightings = std::move(ranked[i]);
  }
}

void AddCallouts(std::vector<PageRecord>& pages, const Rules& rules) {
  std::vector<const std::vector<Entry>*> entries;
  entries.reserve(pages.size());
  for (const PageRecord& page : pages) {
    entries.push_back(&page.entries);
  }
  const std::vector<ItemList> lists = ItemListsOf(entries);
  for (PageRecord& page : pages) {
    // Waveforms and voltages are numbered, too, and call out no items.
    if (lists.empty() || !MayShowParts(page.facts.kind)) {
      continue;
    }
    for (Sighting& callout : ItemCallouts(page.reading, page.facts.printed_number, page.sightings, lists, rules)) {
      page.sightings.push_back(std::move(callout));
    }
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
  RankDrawings(pages, rules);
  AddCallouts(pages, rules);
  head.links = Links(pages);
  head.pages = std::move(pages);
  return head;
}

}  // namespace benchleaf
