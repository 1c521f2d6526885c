#include "clean/disjoint_sets.h"

#include "benchleaf/clean/clean_page.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// A component seen along the string's direction: `x` runs along it, so that lying and standing text are one case.
struct Part {
  Box box;
  std::size_t component = 0;
  bool mark = false;  // punctuation
};

Box Transposed(const Box& box) { return {box.y, box.x, box.height, box.width}; }

// May be a letter, or a few that touch.
bool IsTextSized(const Component& component, const Box& box, double cap) {
  // A letter leaves ink of a stroke's width all over its box; frames and long thin arcs leave much less.
  const double area = 1.0 * box.width * box.height;
  return box.height >= 0.5 * cap && box.height <= 1.7 * cap && box.width <= 7 * cap &&
         (box.width <= 2 * cap || component.ink >= 0.1 * area);
}

// Dots, dashes, commas: too small for a letter, too large for dust.
bool IsPunctuation(const Component& component, double cap) {
  const int larger = std::max(component.box.width, component.box.height);
  return larger >= 0.12 * cap && larger < 0.8 * cap && component.box.height < 0.5 * cap &&
         component.ink * 3 >= component.box.width * component.box.height;
}

// A mark belongs to the row of a letter from its top to a little under its foot.
bool MarkOnRow(const Box& mark, const Box& letter) {
  return mark.center_y() >= letter.y && mark.center_y() <= letter.bottom() + 0.2 * letter.height;
}

bool OnOneRow(const Box& a, const Box& b) {
  const double common = std::min(a.bottom(), b.bottom()) - std::max(a.y, b.y);
  return common >= 0.55 * std::min(a.height, b.height) && common >= 0.4 * std::max(a.height, b.height);
}

// Whether both stand on one row. Two marks do not: dust and dotted leaders would tie rows together.
bool Follows(const Part& a, const Part& b) {
  if (a.mark || b.mark) {
    return !(a.mark && b.mark) && (a.mark ? MarkOnRow(a.box, b.box) : MarkOnRow(b.box, a.box));
  }
  return OnOneRow(a.box, b.box);
}

// Sets of parts that follow each other with gaps of at most `gap` px.
std::vector<std::vector<Part>> Chains(std::vector<Part> parts, double gap, double cap) {
  std::sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
    return std::pair(a.box.x, a.component) < std::pair(b.box.x, b.component);
  });
  // Bands of one capital height; a part can only follow parts whose top lies within two bands of its own.
  std::map<int, std::vector<std::size_t>> bands;
  DisjointSets sets;
  sets.Grow(parts.size());
  const auto band_of = [cap](const Box& box) { return static_cast<int>(box.y / cap); };
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Box& box = parts[i].box;
    for (int band = band_of(box) - 2; band <= band_of(box) + 2; ++band) {
      const auto found = bands.find(band);
      if (found == bands.end()) {
        continue;
      }
      std::vector<std::size_t>& earlier = found->second;
      // Parts that end far to the left cannot be followed any more; the order by x lets them be dropped for good.
      const double reach = box.x - gap - 7 * cap;
      std::erase_if(earlier, [&](std::size_t j) { return parts[j].box.x < reach; });
      for (const std::size_t j : earlier) {
        if (box.x - parts[j].box.right() <= gap && Follows(parts[j], parts[i])) {
          sets.Join(i, j);
        }
      }
    }
    bands[band_of(box)].push_back(i);
  }
  std::map<std::size_t, std::vector<Part>> by_root;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    by_root[sets.Find(i)].push_back(parts[i]);
  }
  std::vector<std::vector<Part>> chains;
  chains.reserve(by_root.size());
  for (auto& [root, chain] : by_root) {
    chains.push_back(std::move(chain));
  }
  return chains;
}

TextString StringOf(const CleanPage& page, const std::vector<Part>& chain, bool standing) {
  TextString string;
  string.standing = standing;
  for (const Part& part : chain) {
    string.members.push_back(part.component);
  }
  string.box = BoxOf(page.components, string.members);
  return string;
}

void AppendStrings(const CleanPage& page, bool standing, double gap_caps, bool over_punctuation,
                   std::vector<TextString>& strings) {
  const double cap = page.measures.cap_height_px;
  std::vector<Part> parts;
  for (std::size_t i = 0; i < page.components.items.size(); ++i) {
    const Component& component = page.components.items[i];
    const Box box = standing ? Transposed(component.box) : component.box;
    if (IsTextSized(component, box, cap)) {
      parts.push_back({box, i, false});
    } else if (over_punctuation && IsPunctuation(component, cap)) {
      parts.push_back({box, i, true});
    }
  }
  for (const std::vector<Part>& chain : Chains(std::move(parts), gap_caps * cap, cap)) {
    const bool only_marks = std::all_of(chain.begin(), chain.end(), [](const Part& part) { return part.mark; });
    if (!only_marks) {
      strings.push_back(StringOf(page, chain, standing));
    }
  }
}

// Rows of large letters: titles. They take the place of what their letters give among smaller ones.
void AppendTitles(const CleanPage& page, double gap_caps, std::vector<TextString>& strings) {
  constexpr double kTitleCap = 1.8;   // in capital heights of the page: the middle of 1.3 to 3
  constexpr std::size_t kFewest = 4;  // letters; symbols stand in a row too, but seldom so many
  const double cap = page.measures.cap_height_px;
  std::vector<Part> parts;
  for (std::size_t i = 0; i < page.components.items.size(); ++i) {
    const Component& component = page.components.items[i];
    if (component.box.height >= 1.3 * cap && IsTextSized(component, component.box, kTitleCap * cap)) {
      parts.push_back({component.box, i, false});
    }
  }
  std::vector<bool> in_title(page.components.items.size(), false);
  std::vector<TextString> titles;
  for (const std::vector<Part>& chain : Chains(std::move(parts), gap_caps * kTitleCap * cap, kTitleCap * cap)) {
    if (chain.size() >= kFewest) {
      titles.push_back(StringOf(page, chain, false));
      for (const Part& part : chain) {
        in_title[part.component] = true;
      }
    }
  }
  std::erase_if(strings, [&](const TextString& string) {
    return std::all_of(string.members.begin(), string.members.end(), [&](std::size_t m) { return in_title[m]; });
  });
  strings.insert(strings.end(), std::make_move_iterator(titles.begin()), std::make_move_iterator(titles.end()));
}

}  // namespace

Box BoxOf(const Components& components, const std::vector<std::size_t>& members) {
  Box box;
  for (const std::size_t member : members) {
    box = Union(box, components.items[member].box);
  }
  return box;
}

std::vector<TextString> FindStrings(const CleanPage& page, const JoinGaps& gaps) {
  std::vector<TextString> strings;
  AppendStrings(page, false, gaps.lying, gaps.over_punctuation, strings);
  if (gaps.standing > 0) {
    AppendStrings(page, true, gaps.standing, gaps.over_punctuation, strings);
  }
  AppendTitles(page, gaps.lying, strings);
  return strings;
}

}  // namespace benchleaf
