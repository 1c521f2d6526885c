#include "benchleaf/lettering/step_texts.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

namespace benchleaf {
namespace {

constexpr double kNever = -std::numeric_limits<double>::infinity();

double LogSum(double a, double b) {
  if (a < b) {
    std::swap(a, b);
  }
  return b == kNever ? a : a + std::log1p(std::exp(b - a));
}

// What is known of a prefix: the chance of all ways to spell it that end with a blank, and of those that do not.
struct Prefix {
  double ends_blank = kNever;
  double ends_symbol = kNever;
  std::vector<std::size_t> steps;  // of the likeliest way so far
  double steps_chance = kNever;

  double chance() const { return LogSum(ends_blank, ends_symbol); }
  void KeepSteps(std::vector<std::size_t> other, double chance) {
    if (chance > steps_chance) {
      steps = std::move(other);
      steps_chance = chance;
    }
  }
};

using Prefixes = std::vector<std::pair<std::vector<std::size_t>, Prefix>>;

// The symbols worth trying at a step: those that are not all but impossible.
std::vector<std::size_t> SymbolsAt(const StepChances& chances, std::size_t step) {
  constexpr float kLeast = -7;
  std::vector<std::size_t> symbols;
  for (std::size_t symbol = 1; symbol < chances.symbols; ++symbol) {
    if (chances.at(step, symbol) > kLeast) {
      symbols.push_back(symbol);
    }
  }
  return symbols;
}

void Extend(const std::vector<std::size_t>& text, const Prefix& prefix, std::size_t symbol, std::size_t step,
            double log_chance, std::map<std::vector<std::size_t>, Prefix>& next) {
  const bool again = !text.empty() && text.back() == symbol;
  // A symbol that goes on is the same character; after a blank it is another.
  const double from = again ? prefix.ends_blank : prefix.chance();
  if (again && prefix.ends_symbol != kNever) {
    Prefix& same = next[text];
    same.ends_symbol = LogSum(same.ends_symbol, prefix.ends_symbol + log_chance);
    same.KeepSteps(prefix.steps, prefix.ends_symbol + log_chance);
  }
  if (from == kNever) {
    return;
  }
  std::vector<std::size_t> longer = text;
  longer.push_back(symbol);
  std::vector<std::size_t> steps = prefix.steps;
  steps.push_back(step);
  Prefix& extended = next[std::move(longer)];
  extended.ends_symbol = LogSum(extended.ends_symbol, from + log_chance);
  extended.KeepSteps(std::move(steps), from + log_chance);
}

}  // namespace

std::vector<StepText> LikeliestTexts(const StepChances& chances, std::size_t most) {
  constexpr std::size_t kBeam = 8;
  constexpr float kBlankSure = -0.005F;
  const std::size_t width = std::max(most, kBeam);
  Prefixes beam(1);
  beam.front().second.ends_blank = 0;
  beam.front().second.steps_chance = 0;
  for (std::size_t step = 0; step < chances.steps; ++step) {
    const double blank = chances.at(step, 0);
    if (chances.at(step, 0) > kBlankSure) {  // most steps are: nothing but the blank need be weighed
      for (auto& [text, prefix] : beam) {
        prefix.ends_blank = prefix.chance() + blank;
        prefix.ends_symbol = kNever;
      }
      continue;
    }
    const std::vector<std::size_t> symbols = SymbolsAt(chances, step);
    std::map<std::vector<std::size_t>, Prefix> next;
    for (const auto& [text, prefix] : beam) {
      Prefix& same = next[text];
      same.ends_blank = LogSum(same.ends_blank, prefix.chance() + blank);
      same.KeepSteps(prefix.steps, prefix.chance() + blank);
      for (const std::size_t symbol : symbols) {
        Extend(text, prefix, symbol, step, chances.at(step, symbol), next);
      }
    }
    Prefixes kept(std::make_move_iterator(next.begin()), std::make_move_iterator(next.end()));
    const auto end = kept.begin() + static_cast<std::ptrdiff_t>(std::min(width, kept.size()));
    std::partial_sort(kept.begin(), end, kept.end(),
                      [](const auto& a, const auto& b) { return a.second.chance() > b.second.chance(); });
    kept.erase(end, kept.end());
    beam = std::move(kept);
  }
  std::sort(beam.begin(), beam.end(),
            [](const auto& a, const auto& b) { return a.second.chance() > b.second.chance(); });
  std::vector<StepText> texts;
  for (auto& [text, prefix] : beam) {
    if (texts.size() < most) {
      const double chance = std::min(0.0, prefix.chance());
      texts.push_back({std::move(text), std::move(prefix.steps), chance});
    }
  }
  return texts;
}

}  // namespace benchleaf
