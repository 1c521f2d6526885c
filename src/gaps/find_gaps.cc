#include "benchleaf/gaps/find_gaps.h"

#include "gaps/checks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::array<std::string_view, 9> kKinds = {"unread", "volume",    "page",       "section",  "figure",
                                                    "value",  "not-drawn", "not-listed", "numbering"};

std::vector<Gap> UnreadPages(const gaps::SearchedPages& pages) {
  std::vector<Gap> gaps;
  for (const FileRecord& file : pages.manual().files) {
    if (!file.failure) continue;
    Gap gap{GapKind::kUnread, GapGrade::kNotSeen, file.path, {}, {}, {}};
    gap.reason = "the file could not be read: " + file.failure->message;
    gap.places = {{{pages.manual().set, pages.manual().manual, file.path, 1, PageKind::kOther, ""}, {}, ""}};
    gaps.push_back(std::move(gap));
  }
  for (const PageQuality& quality : pages.qualities()) {
    if (!quality.badly_read) continue;
    Gap gap{GapKind::kUnread, GapGrade::kNotSeen, gaps::PageName(quality.place), {}, {{quality.place, {}, {}}}, {}};
    gap.reason = quality.failure ? "could not be read: " + quality.failure->message
                                 : "badly read: " + std::to_string(std::lround(quality.sure_share * 100)) +
                                       " % of its letters are in words read surely";
    gaps.push_back(std::move(gap));
  }
  return gaps;
}

}  // namespace

std::string_view Name(GapKind kind) { return kKinds.at(static_cast<std::size_t>(kind)); }

std::optional<GapKind> GapKindNamed(std::string_view name) {
  const auto* found = std::find(kKinds.begin(), kKinds.end(), name);
  if (found == kKinds.end()) return std::nullopt;
  return static_cast<GapKind>(found - kKinds.begin());
}

std::string_view Name(GapGrade grade) {
  constexpr std::array<std::string_view, 5> kGrades = {"missing", "not seen", "differs", "may differ", "note"};
  return kGrades.at(static_cast<std::size_t>(grade));
}

ManualGaps FindGaps(const ManualRecord& manual, const Rules& rules) {
  const gaps::SearchedPages pages(manual);
  const gaps::PartIndex parts = gaps::IndexParts(manual, rules);
  ManualGaps result;
  result.set = manual.set;
  result.manual = manual.manual;
  result.pages = pages.qualities();
  const std::vector<bool> lists = gaps::PagesOfLists(manual);
  result.list_pages = static_cast<std::size_t>(std::count(lists.begin(), lists.end(), true));
  for (const PageRecord& page : manual.pages) {
    result.schematic_pages += page.facts.kind == PageKind::kSchematic ? 1U : 0U;
  }
  for (const auto& [name, places] : parts.listed) result.entries += places.size();
  result.items = gaps::CountItems(manual);

  const auto add = [&](std::vector<Gap> found) {
    std::move(found.begin(), found.end(), std::back_inserter(result.gaps));
  };
  add(UnreadPages(pages));
  add(gaps::PageGaps(pages));
  add(gaps::NamedAndNotFound(pages));
  add(gaps::ValueGaps(pages, rules));
  if (result.entries > 0 && result.HasSchematic()) {
    add(gaps::NotDrawn(pages, parts));
    add(gaps::NotListed(pages, parts));
  }
  add(gaps::NumberingHoles(pages, parts));
  add(gaps::ItemGaps(pages));
  std::stable_sort(result.gaps.begin(), result.gaps.end(), [](const Gap& a, const Gap& b) { return a.kind < b.kind; });
  return result;
}

}  // namespace benchleaf
