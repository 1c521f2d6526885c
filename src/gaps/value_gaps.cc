#include "extract/value.h"
#include "gaps/checks.h"
#include "gaps/part_names.h"
#include "gaps/value_rounding.h"
#include "linking/near_values.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf::gaps {
namespace {

// Whether a dot that was lost or seen in dirt would explain it: 4.7K and 47K.
bool DotApart(double a, double b) {
  return a > 0 && b > 0 &&
         (extract::SameMagnitude(a, 10 * b) || extract::SameMagnitude(10 * a, b) ||
          extract::SameMagnitude(a, 100 * b) || extract::SameMagnitude(100 * a, b));
}

// 47K7 and 47K: a comma behind the value was read as a figure.
bool TailApart(const std::string& a, const std::string& b) {
  const std::string& longer = a.size() > b.size() ? a : b;
  const std::string& shorter = a.size() > b.size() ? b : a;
  return longer.size() == shorter.size() + 1 && longer.compare(0, shorter.size(), shorter) == 0;
}

// .65MFD and .05MFD: figures whose outlines differ in a stroke that a bad scan closes or breaks (common practice, no
// source).
bool FigureApart(const std::string& a, const std::string& b) {
  constexpr std::array<std::string_view, 9> kAlike = {"06", "08", "38", "35", "56", "58", "68", "69", "17"};
  const auto [in_a, in_b] = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
  if (a.size() != b.size() || in_a == a.end() || !std::equal(in_a + 1, a.end(), in_b + 1)) {
    return false;
  }
  const std::string pair = {std::min(*in_a, *in_b), std::max(*in_a, *in_b)};
  return std::find(kAlike.begin(), kAlike.end(), pair) != kAlike.end();
}

// Whether the value is that of one section: 40MFD of 80-40MFD.
bool IsSectionOf(const std::string& whole, double magnitude) {
  const std::size_t unit = whole.find_last_of("0123456789") + 1;
  std::size_t from = 0;
  std::size_t sections = 0;
  bool is_one = false;
  while (from < unit) {
    const std::size_t end = std::min(whole.find_first_of("-/", from), unit);
    const auto section = extract::ParseValue(whole.substr(from, end - from) + whole.substr(unit));
    is_one = is_one || (section && extract::SameMagnitude(section->magnitude, magnitude));
    ++sections;
    from = end + 1;
  }
  return sections > 1 && is_one;
}

class ValueSearch {
 public:
  ValueSearch(const SearchedPages& pages, const Rules& rules)
      : pages_(pages), rules_(rules), lists_(PagesOfLists(pages.manual())) {}

  // The drawn value that contradicts the list's most; nothing where one agrees or none can be compared.
  std::optional<Gap> Check(const Link& link) {
    const PageRecord& list = pages_.manual().pages[link.entry_page];
    const PageRecord& drawing = pages_.manual().pages[link.seen_page];
    const Entry& entry = list.entries[link.entry];
    const auto name = PartNameOf(entry.designator, entry.assembly, rules_);
    // Where the drawing may show another assembly's part, its value says nothing.
    if (link.reason.find("candidates") != std::string::npos) return std::nullopt;
    if (!name || !lists_[link.entry_page] || drawing.facts.kind != PageKind::kSchematic) return std::nullopt;
    const auto listed = extract::ParsePartValue(entry.value, name->letters);
    if (!listed) return std::nullopt;
    const Sighting* other = nullptr;
    std::optional<extract::Value> drawn;
    for (const std::size_t i : Beside(link.seen_page)[link.sighting]) {
      const Sighting& sighting = drawing.sightings[i];
      auto value = extract::ParsePartValue(sighting.text, name->letters);
      if (!value || value->quantity != listed->quantity) continue;
      if (extract::SameMagnitude(value->magnitude, listed->magnitude) || IsSectionOf(entry.value, value->magnitude) ||
          IsSectionOf(sighting.text, listed->magnitude)) {
        return std::nullopt;
      }
      if (other != nullptr) continue;  // the nearest counts
      other = &sighting;
      drawn = std::move(value);
    }
    if (other == nullptr) return std::nullopt;
    Gap gap{GapKind::kValue, GapGrade::kDiffers, name->Text(), {}, {}, {}};
    const std::string both = entry.value + " in the list, " + other->text + " beside the symbol";
    const Sighting& symbol = drawing.sightings[link.sighting];
    if (TailApart(entry.value, other->text)) {
      gap.grade = GapGrade::kMayDiffer;
      gap.reason = both + ": a mark behind the value, read as a figure, would explain it";
    } else if (IsRounding(listed->magnitude, drawn->magnitude)) {
      gap.grade = GapGrade::kNote;
      gap.reason = both + ": one is the preferred value (IEC 60063) of the other";
    } else if (DotApart(listed->magnitude, drawn->magnitude)) {
      gap.grade = GapGrade::kMayDiffer;
      gap.reason = both + ": a decimal point misread would explain it";
    } else if (FigureApart(entry.value, other->text)) {
      gap.grade = GapGrade::kMayDiffer;
      gap.reason = both + ": a figure misread would explain it";
    } else if (std::min({entry.confidence, other->confidence, symbol.confidence}) < kSureText) {
      gap.grade = GapGrade::kMayDiffer;
      gap.reason = both + ": not surely read";
    } else {
      gap.reason = both;
    }
    gap.places = {pages_.At(link.entry_page, entry.box, entry.value),
                  pages_.At(link.seen_page, Union(symbol.box, other->box), other->text)};
    return gap;
  }

 private:
  const std::vector<std::vector<std::size_t>>& Beside(std::size_t page) {
    const auto [known, is_new] = beside_.try_emplace(page);
    if (is_new) known->second = linking::ValuesBeside(pages_.manual().pages[page].sightings);
    return known->second;
  }

  const SearchedPages& pages_;
  const Rules& rules_;
  std::vector<bool> lists_;                                              // by page
  std::map<std::size_t, std::vector<std::vector<std::size_t>>> beside_;  // by page
};

}  // namespace

std::vector<Gap> ValueGaps(const SearchedPages& pages, const Rules& rules) {
  ValueSearch search(pages, rules);
  std::vector<Gap> gaps;
  for (const Link& link : pages.manual().links) {
    auto gap = search.Check(link);
    if (!gap) continue;
    const bool known = std::any_of(gaps.begin(), gaps.end(), [&](const Gap& other) {
      return other.what == gap->what && other.reason == gap->reason;
    });
    if (!known) gaps.push_back(*std::move(gap));
  }
  return gaps;
}

}  // namespace benchleaf::gaps
