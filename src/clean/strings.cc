#include "clean/disjoint_sets.h"
#include "clean/glyphs.h"

#include "benchleaf/clean/clean_page.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <map>
#include <span>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// A letter, or a mark of punctuation.
struct Part : Glyph {
  bool mark = false;
};

// Dots, dashes, commas: too small for a letter, too large for dust. A typewriter's dash is as wide as its letters.
bool IsPunctuation(const Component& component, double cap) {
  const int larger = std::max(component.box.width, component.box.height);
  const double widest = component.box.height < 0.3 * cap ? 1.2 : 0.8;
  return larger >= 0.12 * cap && larger < widest * cap && component.box.height < 0.5 * cap &&
         component.ink * 3 >= component.box.width * component.box.height;
}

// A dash of its own, as a typewriter and a lettering guide make it. Boxes run along the text.
bool IsDash(const Box& box, int ink, double cap) {
  return box.height < 0.3 * cap && box.width >= 0.25 * cap && box.width < 1.0 * cap && box.width >= 2 * box.height &&
         ink * 3 >= box.width * box.height * 2;
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

// How far apart two letters of one string may stand: `gap_caps` capital heights of their own lettering, which may be
// smaller than the page's, but never larger. Narrow letters have more air about them: lettering guides and typewriters
// give a 1 almost as much room as a 0.
double WidestGap(const Part& a, const Part& b, double gap_caps, double cap) {
  constexpr double kRoom = 0.45;  // of a capital, that the narrowest letter takes
  if (a.mark || b.mark) {
    return gap_caps * cap;
  }
  const double own_cap = std::min(cap, (a.box.height + b.box.height) / 2.0);
  const auto air = [&](const Box& box) { return std::max(0.0, (kRoom * own_cap - box.width) / 2); };
  return gap_caps * own_cap + air(a.box) + air(b.box);
}

// Sets of parts that follow each other with gaps of at most `gap_caps` capital heights.
std::vector<std::vector<Part>> Chains(std::vector<Part> parts, double gap_caps, double cap) {
  std::sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
    return std::pair(a.box.x, a.components.front()) < std::pair(b.box.x, b.components.front());
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
      const double reach = box.x - (gap_caps + 8) * cap;
      std::erase_if(earlier, [&](std::size_t j) { return parts[j].box.x < reach; });
      for (const std::size_t j : earlier) {
        if (box.x - parts[j].box.right() <= WidestGap(parts[j], parts[i], gap_caps, cap) &&
            Follows(parts[j], parts[i])) {
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
  string.letters = chain.size();
  for (const Part& part : chain) {
    string.members.insert(string.members.end(), part.components.begin(), part.components.end());
  }
  string.box = BoxOf(page.components, string.members);
  return string;
}

// Letters and what stands between them; a letter in pieces is no part of running text, whose dust would be taken for
// it.
std::vector<Part> PartsOverPunctuation(const CleanPage& page, bool standing) {
  const double cap = page.measures.cap_height_px;
  std::vector<Part> parts;
  for (std::size_t i = 0; i < page.components.items.size(); ++i) {
    const Component& component = page.components.items[i];
    const Box box = AlongText(component.box, standing);
    if (IsTextSized(box, component.ink, cap)) {
      parts.push_back({{box, {i}}, false});
    } else if (IsPunctuation(component, cap)) {
      parts.push_back({{box, {i}}, true});
    }
  }
  return parts;
}

// Letters and dashes, which would part what they join: a typewriter gives a dash the room of a letter.
std::vector<Part> Letters(const CleanPage& page, bool standing) {
  const double cap = page.measures.cap_height_px;
  std::vector<Part> parts;
  std::vector<bool> in_letter(page.components.items.size(), false);
  for (Glyph& glyph : FindGlyphs(page.components, cap, standing)) {
    for (const std::size_t component : glyph.components) {
      in_letter[component] = true;
    }
    parts.push_back({std::move(glyph), false});
  }
  for (std::size_t i = 0; i < page.components.items.size(); ++i) {
    const Component& component = page.components.items[i];
    const Box box = AlongText(component.box, standing);
    if (!in_letter[i] && IsDash(box, component.ink, cap)) {
      parts.push_back({{box, {i}}, true});
    }
  }
  return parts;
}

// Takes dashes off a chain's ends, where they are ends of wires.
void StripDashes(std::vector<Part>& chain) {
  const auto is_letter = [](const Part& part) { return !part.mark; };
  chain.erase(std::find_if(chain.rbegin(), chain.rend(), is_letter).base(), chain.end());
  chain.erase(chain.begin(), std::find_if(chain.begin(), chain.end(), is_letter));
}

// Takes a letter off the end of a chain that is paler than the rest, which is alike: the tick of a pencil.
void StripPencil(const CleanPage& page, std::vector<Part>& chain) {
  constexpr int kPaler = 25;
  constexpr int kAlike = 25;
  constexpr std::size_t kFewest = 3;  // with the tick
  constexpr double kSmallPx = 17;     // of the scan
  // Thin strokes of small letters are pale by themselves.
  const bool small = page.measures.cap_height_px < kSmallPx * page.frame.scale;
  if (chain.size() < kFewest || page.grey.empty() || small) {
    return;
  }
  std::vector<int> levels;
  levels.reserve(chain.size());
  for (const Part& part : chain) levels.push_back(InkLevel(page, part.components));
  const auto is_tick = [](int level, std::span<const int> others) {
    int darkest = 255;
    int palest = 0;
    for (const int other : others) {
      darkest = std::min(darkest, other);
      palest = std::max(palest, other);
    }
    return level > palest + kPaler && palest - darkest <= kAlike;
  };
  const std::span<const int> all(levels);
  if (is_tick(all.back(), all.first(all.size() - 1))) {
    chain.pop_back();
  } else if (is_tick(all.front(), all.subspan(1))) {
    chain.erase(chain.begin());
  }
}

void AppendStrings(const CleanPage& page, bool standing, double gap_caps, bool over_punctuation,
                   std::vector<TextString>& strings) {
  std::vector<Part> parts = over_punctuation ? PartsOverPunctuation(page, standing) : Letters(page, standing);
  for (std::vector<Part>& chain : Chains(std::move(parts), gap_caps, page.measures.cap_height_px)) {
    if (!over_punctuation) {
      StripDashes(chain);
    }
    if (!over_punctuation && !standing) {
      StripPencil(page, chain);
    }
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
    if (component.box.height >= 1.3 * cap && IsTextSized(component.box, component.ink, kTitleCap * cap)) {
      parts.push_back({{component.box, {i}}, false});
    }
  }
  std::vector<bool> in_title(page.components.items.size(), false);
  std::vector<TextString> titles;
  for (const std::vector<Part>& chain : Chains(std::move(parts), gap_caps, kTitleCap * cap)) {
    if (chain.size() >= kFewest) {
      titles.push_back(StringOf(page, chain, false));
      for (const std::size_t member : titles.back().members) {
        in_title[member] = true;
      }
    }
  }
  std::erase_if(strings, [&](const TextString& string) {
    return std::all_of(string.members.begin(), string.members.end(), [&](std::size_t m) { return in_title[m]; });
  });
  strings.insert(strings.end(), std::make_move_iterator(titles.begin()), std::make_move_iterator(titles.end()));
}

// Leaves out lone standing letters that are among several of a lying string.
void EraseStandingLettersOfRows(std::size_t components, std::vector<TextString>& strings) {
  std::vector<bool> in_row(components, false);
  for (const TextString& string : strings) {
    if (!string.standing && string.letters > 1) {
      for (const std::size_t member : string.members) {
        in_row[member] = true;
      }
    }
  }
  std::erase_if(strings, [&](const TextString& string) {
    return string.standing && string.letters == 1 &&
           std::any_of(string.members.begin(), string.members.end(), [&](std::size_t m) { return in_row[m]; });
  });
}

}  // namespace

int InkLevel(const CleanPage& page, std::span<const std::size_t> members) {
  constexpr double kShare = 0.2;
  std::vector<std::uint8_t> levels;
  for (const std::size_t member : members) {
    const Component& component = page.components.items[member];
    for (std::size_t i = 0; i < component.run_count; ++i) {
      const Run& run = page.components.runs[component.first_run + i];
      levels.insert(levels.end(), page.grey.row(run.y) + run.begin, page.grey.row(run.y) + run.end);
    }
  }
  const auto level = levels.begin() + static_cast<std::ptrdiff_t>(kShare * static_cast<double>(levels.size()));
  std::nth_element(levels.begin(), level, levels.end());
  return *level;
}

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
    EraseStandingLettersOfRows(page.components.items.size(), strings);
  }
  AppendTitles(page, gaps.lying, strings);
  return strings;
}

}  // namespace benchleaf
