#include "clean/page_skew.h"

#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kMaxSkewDegrees = 6;
constexpr int kParts = 3;  // each way

// Which part of a side a pixel is in: that which begins last at or before it.
int PartAt(int at, int length) {
  int part = kParts - 1;
  while (length * part / kParts > at) {
    --part;
  }
  return part;
}

struct Vote {
  double degrees = 0;
  double weight = 0;
};

// A part that hardly tells has no vote, and one that a single heavy line makes very sure no more than others.
void AddVote(const Skew& skew, std::vector<Vote>& votes) {
  constexpr double kTellsNothing = 1.3;
  constexpr double kSurest = 4;
  if (skew.confidence > kTellsNothing && std::abs(skew.degrees) < kMaxSkewDegrees) {
    votes.push_back({skew.degrees, std::min(skew.confidence, kSurest) - 1});
  }
}

// The ink of large components, in nine parts.
std::vector<InkImage> Parts(const Components& components, int width, int height, double least_px) {
  std::vector<InkImage> parts;
  for (int row = 0; row < kParts; ++row) {
    for (int column = 0; column < kParts; ++column) {
      parts.emplace_back(width * (column + 1) / kParts - width * column / kParts,
                         height * (row + 1) / kParts - height * row / kParts);
    }
  }
  for (const Component& component : components.items) {
    if (std::max(component.box.width, component.box.height) < least_px) {
      continue;
    }
    for (std::size_t i = component.first_run; i < component.first_run + component.run_count; ++i) {
      const Run& run = components.runs[i];
      const int row = PartAt(run.y, height);
      for (int column = PartAt(run.begin, width); column <= PartAt(run.end - 1, width); ++column) {
        InkImage& part = parts[static_cast<std::size_t>(row * kParts + column)];
        const int left = width * column / kParts;
        part.row(run.y - height * row / kParts)
            .Ink(std::max(0, run.begin - left), std::min(part.width, run.end - left));
      }
    }
  }
  return parts;
}

}  // namespace

double SkewOf(const Components& components, int width, int height, double least_px) {
  std::vector<Vote> votes;
  for (const InkImage& part : Parts(components, width, height, least_px)) {
    AddVote(FindSkew(part, kMaxSkewDegrees), votes);
    AddVote(FindSkew(OnItsSide(part), kMaxSkewDegrees), votes);
  }
  // The angle about which most votes lie, and their mean.
  constexpr double kAgree = 0.3;
  constexpr double kFewestVotes = 1.5;  // weight
  double best_weight = 0;
  double best = 0;
  for (const Vote& about : votes) {
    double weight = 0;
    double sum = 0;
    for (const Vote& vote : votes) {
      if (std::abs(vote.degrees - about.degrees) <= kAgree) {
        weight += vote.weight;
        sum += vote.weight * vote.degrees;
      }
    }
    if (weight > best_weight) {
      best_weight = weight;
      best = sum / weight;
    }
  }
  return best_weight >= kFewestVotes ? best : 0;
}

}  // namespace benchleaf
