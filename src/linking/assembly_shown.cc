#include "linking/assembly_shown.h"

#include <algorithm>
#include <cstddef>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace benchleaf::linking {
namespace {

// How much more likely the drawing is this assembly's than another's, by what a part says: a natural logarithm. On the
// development half of bench_links, as printed, 93 % of the values that can be compared agree with the right row and 7 %
// with a row of another assembly; weights are less than that gives, since values on scans are misread.
double Weight(Agreement value) {
  switch (value) {
    case Agreement::kAgrees:
      return 2.3;
    case Agreement::kDiffers:
      return -1.5;
    case Agreement::kUnknown:
      break;
  }
  return 0;
}

// A part that another assembly lists and this one does not: misread, or a sign that it is not this assembly.
constexpr double kNotListed = -2;
// The best must lead by this much: one in a thousand drawings would be taken for another assembly's.
constexpr double kClear = 7;

double ScoreOf(const std::string& assembly, const std::vector<DrawnPart>& parts) {
  double score = 0;
  for (const DrawnPart& part : parts) {
    std::optional<double> best;
    for (const auto& [listed_in, value] : part.listed) {
      if (listed_in == assembly) {
        best = std::max(best.value_or(Weight(value)), Weight(value));
      }
    }
    score += best.value_or(kNotListed);
  }
  return score;
}

}  // namespace

std::string AssemblyShown(const DrawnParts& drawn) {
  if (drawn.told) {
    return {};
  }
  std::set<std::string> assemblies;
  std::map<std::string, int> times;
  for (const DrawnPart& part : drawn.parts) {
    ++times[part.name];
    for (const auto& [assembly, value] : part.listed) {
      assemblies.insert(assembly);
    }
  }
  const auto twice = static_cast<std::size_t>(
      std::count_if(times.begin(), times.end(), [](const auto& name) { return name.second > 1; }));
  if (assemblies.size() < 2 || assemblies.count("") != 0 || 3 * twice > times.size()) {
    return {};
  }
  std::string best;
  double best_score = 0;
  double next_score = 0;
  for (const std::string& assembly : assemblies) {
    const double score = ScoreOf(assembly, drawn.parts);
    if (best.empty() || score > best_score) {
      next_score = best.empty() ? -std::numeric_limits<double>::infinity() : best_score;
      best_score = score;
      best = assembly;
    } else {
      next_score = std::max(next_score, score);
    }
  }
  return best_score - next_score >= kClear ? best : std::string();
}

}  // namespace benchleaf::linking
