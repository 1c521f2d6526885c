#include "gaps/checks.h"
#include "gaps/unclaimed.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::gaps {
namespace {

using Parts = std::map<PartName, std::vector<PartPlace>>;

constexpr double kNearlyWhole = 0.98;

std::set<std::string> ClassesOf(const Parts& parts) {
  std::set<std::string> classes;
  for (const auto& [name, places] : parts) classes.insert(name.letters);
  return classes;
}

// Assemblies (A1) title drawings and head lists, and are rows of none.
bool IsAssembly(const PartName& name) { return name.letters == "A"; }

// The parts of a class that the other side leaves out whole, as one note.
struct LeftOutClass {
  std::size_t parts = 0;
  PartPlace first;
};

double Surest(const std::vector<PartPlace>& places) {
  double surest = 0;
  for (const PartPlace& place : places) surest = std::max(surest, place.confidence);
  return surest;
}

// How many of one side's parts the other side has. Where it has not nearly all, what lacks is more likely unread than
// missing: a reader that found nine designators of ten on the page will have passed over the tenth too.
struct Coverage {
  std::size_t found = 0;
  std::size_t all = 0;

  bool NearlyWhole() const { return static_cast<double>(found) >= kNearlyWhole * static_cast<double>(all); }
  std::string Words() const { return std::to_string(found) + " of " + std::to_string(all); }
};

// Of the parts of classes that both sides have, those read surely.
Coverage CoverageOf(const Parts& parts, const Parts& others) {
  const std::set<std::string> classes = ClassesOf(others);
  Coverage coverage;
  for (const auto& [name, places] : parts) {
    if (IsAssembly(name) || !classes.contains(name.letters) || Surest(places) < kSureText) continue;
    ++coverage.all;
    coverage.found += PlacesOf(others, name).empty() ? 0U : 1U;
  }
  return coverage;
}

// The pages of the manual that satisfy the test.
template <class Test>
std::vector<PagePlace> PagesThat(const SearchedPages& pages, const Test& test) {
  std::vector<PagePlace> found;
  for (std::size_t i = 0; i < pages.manual().pages.size(); ++i) {
    if (test(pages.manual().pages[i])) found.push_back(pages.PlaceOf(i));
  }
  return found;
}

// An absence that may be a failure to read, for a reason besides badly read pages.
void Doubt(Gap& gap, const std::string& reason, const std::vector<PagePlace>& may_hold) {
  gap.grade = GapGrade::kNotSeen;
  gap.reason += "; " + reason;
  if (gap.badly_read.empty()) gap.badly_read = may_hold;
}

std::string PartsWords(std::size_t count) { return std::to_string(count) + (count == 1 ? " part" : " parts"); }

GapPlace EntryPlace(const SearchedPages& pages, const PartPlace& place) {
  const Entry& entry = pages.manual().pages[place.page].entries[place.item];
  return pages.At(place.page, entry.box, entry.description);
}

GapPlace SightingPlace(const SearchedPages& pages, const PartPlace& place) {
  const Sighting& sighting = pages.manual().pages[place.page].sightings[place.item];
  return pages.At(place.page, sighting.box, sighting.read);
}

}  // namespace

std::vector<Gap> NotDrawn(const SearchedPages& pages, const PartIndex& parts) {
  const std::vector<PagePlace> bad = pages.BadPages({PageKind::kSchematic});
  const std::set<std::string> drawn = ClassesOf(parts.drawn);
  const UnclaimedValues unclaimed(pages);
  const Coverage coverage = CoverageOf(parts.listed, parts.drawn);
  const std::vector<PagePlace> schematics =
      PagesThat(pages, [](const PageRecord& page) { return page.facts.kind == PageKind::kSchematic; });
  std::map<std::string, LeftOutClass> left_out;
  std::vector<Gap> gaps;
  for (const auto& [name, places] : parts.listed) {
    if (IsAssembly(name) || !PlacesOf(parts.drawn, name).empty()) continue;
    if (!drawn.contains(name.letters)) {
      LeftOutClass& left = left_out[name.letters];
      if (left.parts++ == 0) left.first = places.front();
      continue;
    }
    Gap gap{GapKind::kNotDrawn, GapGrade::kMissing, name.Text(), "listed, and on no schematic", {}, {}};
    GradeAbsence(gap, bad);
    for (const PartPlace& place : places) gap.places.push_back(EntryPlace(pages, place));
    for (const PartPlace& place : PlacesOf(parts.located, name)) {
      gap.reason = "listed and on a locator, and on no schematic";
      gap.places.push_back(SightingPlace(pages, place));
    }
    const PartPlace& row = places.front();
    if (auto value = unclaimed.Find(pages.manual().pages[row.page].entries[row.item].value, name.letters)) {
      Doubt(gap, "a value of its size stands on a schematic without a readable designator", {value->place});
      gap.places.push_back(*std::move(value));
    }
    if (Surest(places) < kSureText) {
      Doubt(gap, "its row in the list was not surely read", {pages.PlaceOf(row.page)});
    } else if (!coverage.NearlyWhole()) {
      Doubt(gap, coverage.Words() + " listed parts were found on schematics", schematics);
    }
    gaps.push_back(std::move(gap));
  }
  for (const auto& [letters, left] : left_out) {
    gaps.push_back({GapKind::kNotDrawn,
                    GapGrade::kNote,
                    letters,
                    "no schematic shows a part of this class; " + PartsWords(left.parts) + " listed",
                    {EntryPlace(pages, left.first)},
                    bad});
  }
  return gaps;
}

std::vector<Gap> NotListed(const SearchedPages& pages, const PartIndex& parts) {
  const std::vector<PagePlace> bad = pages.BadPages({PageKind::kPartsList});
  const std::set<std::string> listed = ClassesOf(parts.listed);
  const UnclaimedRows unclaimed(pages, parts);
  const Coverage coverage = CoverageOf(parts.drawn, parts.listed);
  const std::vector<PagePlace> lists = PagesThat(pages, [](const PageRecord& page) { return !page.entries.empty(); });
  std::map<std::string, LeftOutClass> left_out;
  std::vector<Gap> gaps;
  for (const auto& [name, places] : parts.drawn) {
    if (IsAssembly(name) || !PlacesOf(parts.listed, name).empty() || Surest(places) < kSureText) continue;
    if (!listed.contains(name.letters)) {
      LeftOutClass& left = left_out[name.letters];
      if (left.parts++ == 0) left.first = places.front();
      continue;
    }
    Gap gap{GapKind::kNotListed, GapGrade::kMissing, name.Text(), "drawn, and in no parts list", {}, {}};
    if (IsUnused(parts, name)) gap.reason = "drawn, and the list says that it is not used";
    GradeAbsence(gap, bad);
    if (const std::vector<PagePlace> rows = unclaimed.PagesWith(name.letters); !rows.empty()) {
      Doubt(gap, "a row of such parts has no readable designator", rows);
    } else if (!coverage.NearlyWhole()) {
      Doubt(gap, coverage.Words() + " drawn parts were found in lists", lists);
    }
    for (const PartPlace& place : places) gap.places.push_back(SightingPlace(pages, place));
    gaps.push_back(std::move(gap));
  }
  for (const auto& [letters, left] : left_out) {
    gaps.push_back({GapKind::kNotListed,
                    GapGrade::kNote,
                    letters,
                    "the parts list names no part of this class; " + PartsWords(left.parts) + " drawn",
                    {SightingPlace(pages, left.first)},
                    bad});
  }
  return gaps;
}

}  // namespace benchleaf::gaps
