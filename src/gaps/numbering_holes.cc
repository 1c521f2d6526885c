#include "gaps/checks.h"

#include <array>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::gaps {
namespace {

// Numbers that follow each other closely enough to be one series. R1 to R86 and R101 to R186 are two.
constexpr int kWidestHole = 9;
constexpr std::size_t kShortestSeries = 5;
constexpr double kDensest = 0.7;  // least share of a series' numbers that parts bear

struct Series {
  std::string assembly;
  std::string letters;
  std::set<int> numbers;
};

// The numbers of every assembly and class. What does not know its assembly may belong to any.
std::vector<Series> SeriesOf(const PartIndex& parts) {
  std::map<std::pair<std::string, std::string>, std::set<int>> numbers;
  for (const auto* side : {&parts.listed, &parts.drawn}) {
    for (const auto& [name, places] : *side) numbers[{name.assembly, name.letters}].insert(name.number);
  }
  std::vector<Series> series;
  for (const auto& [key, all] : numbers) {
    Series run{key.first, key.second, {}};
    for (const int number : all) {
      if (!run.numbers.empty() && number - *run.numbers.rbegin() > kWidestHole) {
        series.push_back(std::exchange(run, {key.first, key.second, {}}));
      }
      run.numbers.insert(number);
    }
    series.push_back(std::move(run));
  }
  return series;
}

bool Bears(const PartIndex& parts, const PartName& name) {
  return !PlacesOf(parts.listed, name).empty() || !PlacesOf(parts.drawn, name).empty() ||
         !PlacesOf(parts.located, name).empty() || IsUnused(parts, name);
}

// Where one of the parts beside the hole is listed, else drawn; one of them may be noted as not used.
std::vector<GapPlace> Neighbour(const SearchedPages& pages, const PartIndex& parts,
                                const std::array<PartName, 2>& names) {
  for (const PartName& name : names) {
    const std::vector<PartPlace> listed = PlacesOf(parts.listed, name);
    if (!listed.empty()) {
      const Entry& entry = pages.manual().pages[listed.front().page].entries[listed.front().item];
      return {pages.At(listed.front().page, entry.box, name.Text())};
    }
    const std::vector<PartPlace> drawn = PlacesOf(parts.drawn, name);
    if (!drawn.empty()) {
      const Sighting& sighting = pages.manual().pages[drawn.front().page].sightings[drawn.front().item];
      return {pages.At(drawn.front().page, sighting.box, name.Text())};
    }
  }
  return {};
}

}  // namespace

std::vector<Gap> NumberingHoles(const SearchedPages& pages, const PartIndex& parts) {
  const std::vector<PagePlace> bad = pages.BadPages({PageKind::kSchematic, PageKind::kPartsList});
  std::vector<Gap> gaps;
  for (const Series& series : SeriesOf(parts)) {
    const int first = *series.numbers.begin();
    const int last = *series.numbers.rbegin();
    const auto count = static_cast<double>(series.numbers.size());
    if (series.numbers.size() < kShortestSeries || count < kDensest * (last - first + 1)) continue;
    const auto named = [&](int number) { return PartName{series.assembly, series.letters, number}; };
    for (int number = first + 1; number < last; ++number) {
      int end = number;
      while (!Bears(parts, named(end))) ++end;
      if (end == number) continue;
      std::string what = named(number).Text();
      if (end - number > 1) what += " to " + named(end - 1).Text();
      Gap gap{GapKind::kNumbering,
              GapGrade::kMissing,
              std::move(what),
              "no part bears this number, listed, drawn or noted as not used, between " + named(number - 1).Text() +
                  " and " + named(end).Text(),
              Neighbour(pages, parts, {named(number - 1), named(end)}),
              {}};
      GradeAbsence(gap, bad);
      gaps.push_back(std::move(gap));
      number = end;
    }
  }
  return gaps;
}

}  // namespace benchleaf::gaps
