#include "gaps/checks.h"
#include "gaps/page_numbers.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::gaps {
namespace {

constexpr int kLongestFront = 12;  // pages before the first numbered one, beyond which the scans are likely an extract

std::string Pages(const std::string& prefix, int first, int last) {
  const std::string from = prefix + std::to_string(first);
  return first == last ? "page " + from : "pages " + from + " to " + prefix + std::to_string(last);
}

// Numbers that should stand between two pages, of which some may be pages whose number was not read.
struct Hole {
  std::string prefix;
  int first = 0;  // numbers, both included
  int last = 0;
  std::vector<std::size_t> beside;      // the numbered pages next to it
  std::vector<std::size_t> unnumbered;  // between them
};

void AddGap(const SearchedPages& pages, const Hole& hole, std::vector<Gap>& gaps) {
  const int wanted = hole.last - hole.first + 1;
  const int there = static_cast<int>(hole.unnumbered.size());
  if (there >= wanted) return;
  Gap gap{GapKind::kPage, GapGrade::kMissing, Pages(hole.prefix, hole.first, hole.last), {}, {}, {}};
  gap.reason = "no page bears " + std::string(wanted == 1 ? "this number" : "these numbers");
  for (const std::size_t page : hole.beside) {
    gap.places.push_back(pages.At(page, std::nullopt, "page " + pages.PlaceOf(page).printed_number));
    if (pages.IsBad(page)) gap.badly_read.push_back(pages.PlaceOf(page));
  }
  for (const std::size_t page : hole.unnumbered) gap.badly_read.push_back(pages.PlaceOf(page));
  if (there > 0) {
    gap.reason = std::to_string(wanted) + " numbers, and " + std::to_string(there) + (there == 1 ? " page" : " pages") +
                 " whose number was not read";
  }
  if (!gap.badly_read.empty()) gap.grade = GapGrade::kNotSeen;
  if (hole.beside.size() == 1 && wanted > kLongestFront) {
    gap.grade = GapGrade::kNote;
    gap.reason = "the numbers begin with " + std::to_string(hole.last + 1) + ": these scans may be a part of a manual";
  }
  gaps.push_back(std::move(gap));
}

// Whether another page of the same volume's numbers comes behind: a number that stands alone proves nothing.
bool HasFollower(const std::vector<NumberedPage>& numbered, const NumberedPage& page) {
  return std::any_of(numbered.begin(), numbered.end(), [&](const NumberedPage& other) {
    return other.page > page.page && other.prefix == page.prefix && other.number > page.number;
  });
}

// Sections are skipped when the printed numbers go from 3-x to 5-x.
void AddSections(const SearchedPages& pages, const std::vector<NumberedPage>& numbered, std::vector<Gap>& gaps) {
  std::map<int, std::size_t> sections;  // to a page of it
  for (const NumberedPage& page : numbered) {
    if (const int section = page.Section(); section > 0) sections.emplace(section, page.page);
  }
  for (auto section = sections.begin(); section != sections.end(); ++section) {
    const auto next = std::next(section);
    if (next == sections.end()) break;
    for (int skipped = section->first + 1; skipped < next->first; ++skipped) {
      Gap gap{GapKind::kSection,
              GapGrade::kMissing,
              "section " + std::to_string(skipped),
              "no page " + std::to_string(skipped) + "-1 or later of it, between sections " +
                  std::to_string(section->first) + " and " + std::to_string(next->first),
              {pages.At(section->second, std::nullopt, "page " + pages.PlaceOf(section->second).printed_number),
               pages.At(next->second, std::nullopt, "page " + pages.PlaceOf(next->second).printed_number)},
              {}};
      GradeAbsence(gap, pages.BadPages());
      gaps.push_back(std::move(gap));
    }
  }
}

}  // namespace

std::vector<Gap> PageGaps(const SearchedPages& pages) {
  const std::vector<NumberedPage> numbered = NumberedPages(pages.manual());
  std::set<std::size_t> taken;
  for (const NumberedPage& page : numbered) taken.insert(page.page);
  const auto unnumbered = [&](std::size_t from, std::size_t to) {
    std::vector<std::size_t> between;
    for (std::size_t page = from; page < to; ++page) {
      if (!taken.contains(page)) between.push_back(page);
    }
    return between;
  };

  std::vector<Gap> gaps;
  std::map<std::string, NumberedPage> last_of;  // by prefix: the number before, in reading order
  std::size_t after_last = 0;                   // the page behind the last numbered one, of whatever prefix
  for (const NumberedPage& page : numbered) {
    const auto before = last_of.find(page.prefix);
    const bool goes_on = before != last_of.end() && before->second.number < page.number;
    const bool restarts = !goes_on;  // the first of its prefix, or a volume that counts anew
    Hole hole{page.prefix, restarts ? 1 : before->second.number + 1, page.number - 1, {}, {}};
    hole.unnumbered = unnumbered(restarts ? after_last : before->second.page + 1, page.page);
    if (!restarts) hole.beside.push_back(before->second.page);
    hole.beside.push_back(page.page);
    const bool lone = restarts && page.prefix.empty() && !HasFollower(numbered, page);
    if (hole.first <= hole.last && !lone) AddGap(pages, hole, gaps);
    last_of.insert_or_assign(page.prefix, page);
    after_last = page.page + 1;
  }
  AddSections(pages, numbered, gaps);
  return gaps;
}

}  // namespace benchleaf::gaps
