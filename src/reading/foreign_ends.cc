#include "reading/foreign_ends.h"

#include "reading/word_choice.h"

#include <algorithm>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace {

// How far the level of one component's ink lies outside those of the others, 0 to 255; less than 0 where it lies among
// them.
int LevelApart(const CleanPage& page, std::size_t one, std::span<const std::size_t> others) {
  const int level = InkLevel(page, {&one, 1});
  int darkest = 255;
  int palest = 0;
  for (const std::size_t other : others) {
    const int its = InkLevel(page, {&other, 1});
    darkest = std::min(darkest, its);
    palest = std::max(palest, its);
  }
  return std::max(level - palest, darkest - level);
}

// What the tick of a pencil is read as.
bool LooksLikeATick(char c) { return std::string_view("VJIYL17/").find(c) != std::string_view::npos; }

// How far apart the ink of the end must lie to be no letter, by how surely the whole was read. On the pages of
// `bench_mixed`, `bench_outside --half dev` and `practice` the first letters of designators lie 15 apart at most, ticks
// 23 and more; last figures, being the narrowest, lie up to 31 apart, and are cut only where the whole reads badly.
int LeastApart(const Word& word, bool front) {
  constexpr double kReadsBadly = 0.6;
  constexpr double kReadsWell = 0.9;
  constexpr int kNever = 256;
  if (front && LooksLikeATick(word.text.front()) && word.confidence < kReadsWell) {
    return 20;
  }
  if (front && word.text.front() == 'V') {
    return 40;
  }
  return word.confidence < kReadsBadly ? 30 : kNever;
}

}  // namespace

std::vector<TextString> WithoutForeignEnds(const CleanPage& page, const TextString& string, const Word& word) {
  constexpr std::size_t kFewest = 3;
  constexpr std::size_t kMost = 7;
  const std::span<const std::size_t> members(string.members);
  if (string.letters < kFewest || string.letters > kMost || members.size() < kFewest || word.text.size() < kFewest ||
      page.grey.empty()) {
    return {};
  }
  std::vector<TextString> cut;
  for (const bool front : {true, false}) {
    const std::string rest = front ? word.text.substr(1) : word.text.substr(0, word.text.size() - 1);
    const bool first = front == (word.turn == 0 || word.turn == 90);
    const std::size_t end = first ? members.front() : members.back();
    const std::span<const std::size_t> others = first ? members.subspan(1) : members.first(members.size() - 1);
    if (!HasDesignatorForm(rest) || LevelApart(page, end, others) < LeastApart(word, front)) {
      continue;
    }
    TextString without = string;
    without.members.assign(others.begin(), others.end());
    without.letters -= 1;
    without.box = BoxOf(page.components, without.members);
    cut.push_back(std::move(without));
  }
  return cut;
}

}  // namespace benchleaf
