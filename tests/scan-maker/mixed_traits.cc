#include "scan-maker/mixed_traits.h"

#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>

namespace benchleaf::scanmaker {
namespace {

using enum PageTrait;

// Of each row a page has at most one, every other page none.
constexpr std::array kLying = {kLaid90, kLaid270, kSkew3, kSkew5};
constexpr std::array kScanning = {kJpeg150, kJpeg100, kThinPrint, kFalse72Dpi};
constexpr std::array kRound = {kPunchHoles, kCurledEdges, kBlackBorder, kNeighbour};
constexpr std::array kMarks = {kPencil, kDottedOutlines, kPhotographs};
constexpr std::array kCallouts = {kRings, kLeaders};
constexpr std::array kLetters = {kUpended, kWhiteOnBlack, kPale, kSpacedLetters, kDashes};

bool Turned(std::span<const PageTrait> traits) {
  return std::any_of(traits.begin(), traits.end(),
                     [](PageTrait trait) { return trait == kLaid90 || trait == kLaid270; });
}

}  // namespace

std::vector<PageTrait> MixedTraits(std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "traits"));
  std::vector<PageTrait> mixed;
  for (const std::span<const PageTrait> row :
       {std::span<const PageTrait>(kLying), std::span<const PageTrait>(kScanning), std::span<const PageTrait>(kRound),
        std::span<const PageTrait>(kMarks), std::span<const PageTrait>(kCallouts),
        std::span<const PageTrait>(kLetters)}) {
    const PageTrait one = row[static_cast<std::size_t>(random.Whole(0, static_cast<int>(row.size()) - 1))];
    const bool has = random.Whole(0, 1) == 1;
    if (has && !(one == kNeighbour && Turned(mixed))) mixed.push_back(one);
  }
  return mixed;
}

}  // namespace benchleaf::scanmaker
