#include "bench/link_scorer.h"

#include "benchleaf/core/ascii.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

namespace benchleaf::bench {
namespace {

constexpr double kLeastOverlap = 0.3;  // as for terms

bool ShowsParts(const scanmaker::PageTruth& page) { return page.kind == "schematic" || page.kind == "parts locator"; }

// "C1" of C1A; the designator itself when it has no section letter.
std::string WithoutSection(const std::string& designator) {
  const std::size_t size = designator.size();
  const bool section = size > 2 && IsUpper(designator[size - 1]) && IsDigit(designator[size - 2]);
  return section ? designator.substr(0, size - 1) : designator;
}

std::set<std::string> Listed(const std::vector<PageAsItIs>& pages) {
  std::set<std::string> listed;
  for (const PageAsItIs& page : pages) {
    for (const scanmaker::TruthEntry& entry : page.truth.entries) {
      listed.insert(entry.designator);
    }
  }
  return listed;
}

// Positions of the page's rows, or terms, that `fits` holds for, the one that overlaps the box most; nothing when none
// overlaps enough.
template <class Item, class Fits>
std::optional<std::size_t> At(const std::vector<Item>& items, const FractionBox& box, const Fits& fits) {
  std::optional<std::size_t> best;
  double best_overlap = kLeastOverlap;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const double overlap = OverlapOfSmaller(items[i].box, box);
    if (fits(items[i]) && overlap >= best_overlap) {
      best = i;
      best_overlap = overlap;
    }
  }
  return best;
}

std::optional<std::size_t> TrueEntry(const PageAsItIs& page, const Entry& entry) {
  return At(page.truth.entries, entry.box, [&](const scanmaker::TruthEntry& one) {
    return one.designator == entry.designator && one.assembly == entry.assembly && one.item == entry.item;
  });
}

std::optional<std::size_t> TrueTerm(const PageAsItIs& page, const Sighting& sighting) {
  return At(page.truth.terms, sighting.box, [&](const scanmaker::TruthTerm& one) {
    return one.kind == Name(sighting.kind) && (one.text == sighting.text || page.assembly + one.text == sighting.text);
  });
}

}  // namespace

std::vector<TrueLink> TrueLinks(const std::vector<PageAsItIs>& pages) {
  const std::set<std::string> listed = Listed(pages);
  std::vector<TrueLink> links;
  for (std::size_t list = 0; list < pages.size(); ++list) {
    for (std::size_t entry = 0; entry < pages[list].truth.entries.size(); ++entry) {
      const scanmaker::TruthEntry& row = pages[list].truth.entries[entry];
      for (std::size_t drawing = 0; drawing < pages.size() && !(row.designator.empty() && row.item.empty());
           ++drawing) {
        const PageAsItIs& page = pages[drawing];
        if (!ShowsParts(page.truth) || (!page.assembly.empty() && page.assembly != row.assembly)) {
          continue;
        }
        for (std::size_t i = 0; i < page.truth.terms.size(); ++i) {
          const scanmaker::TruthTerm& term = page.truth.terms[i];
          const std::string& own = listed.count(term.text) != 0 ? term.text : WithoutSection(term.text);
          const bool by_item = row.designator.empty();
          if (by_item ? term.kind == "item" && term.text == row.item
                      : term.kind == "designator" && own == row.designator) {
            links.push_back({list, entry, drawing, i});
          }
        }
      }
    }
  }
  return links;
}

JudgedLinks JudgeLinks(const std::vector<PageAsItIs>& pages, const ManualRecord& manual) {
  JudgedLinks judged;
  judged.there = TrueLinks(pages);
  judged.found.assign(judged.there.size(), false);
  for (const Link& link : manual.links) {
    const auto entry = TrueEntry(pages[link.entry_page], manual.pages[link.entry_page].entries[link.entry]);
    const auto term = TrueTerm(pages[link.seen_page], manual.pages[link.seen_page].sightings[link.sighting]);
    const auto there = std::find_if(judged.there.begin(), judged.there.end(), [&](const TrueLink& one) {
      return one.entry_page == link.entry_page && one.seen_page == link.seen_page && entry == one.entry &&
             term == one.term;
    });
    const auto position = there - judged.there.begin();
    const bool right = there != judged.there.end() && !judged.found[static_cast<std::size_t>(position)];
    if (right) {
      judged.found[static_cast<std::size_t>(position)] = true;
    }
    judged.right.push_back(right);
  }
  return judged;
}

}  // namespace benchleaf::bench
