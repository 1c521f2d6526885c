#include "scan-maker/mixed_traits.h"

#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>

namespace benchleaf::scanmaker {
namespace {

using enum PageTrait;

using Row = std::span<const PageTrait>;

// Of each row a page has at most one, every other page none.
constexpr std::array kLying = {kLaid90, kLaid270, kSkew3, kSkew5};
constexpr std::array kScanning = {kJpeg150, kJpeg100, kThinPrint, kFalse72Dpi};
constexpr std::array kRound = {kPunchHoles, kCurledEdges, kBlackBorder, kNeighbour};
constexpr std::array kMarksOnDrawings = {kPencil, kDottedOutlines};
constexpr std::array kLettersOnDrawings = {kPale, kSpacedLetters, kDashes};
constexpr std::array kMarksOnLocators = {kPencil, kDottedOutlines, kPhotographs};
constexpr std::array kCallouts = {kRings, kLeaders};
constexpr std::array kLettersOnLocators = {kUpended, kWhiteOnBlack, kPale, kSpacedLetters};
constexpr std::array kMarksOnLists = {kPencil};
constexpr std::array kLettersOnLists = {kDashes};

std::vector<Row> RowsOf(PageForm form) {
  switch (form) {
    case PageForm::kDrawing:
      return {kLying, kScanning, kRound, kMarksOnDrawings, kLettersOnDrawings};
    case PageForm::kLocator:
      return {kLying, kScanning, kRound, kMarksOnLocators, kCallouts, kLettersOnLocators};
    case PageForm::kList:
      break;
  }
  return {kLying, kScanning, kRound, kMarksOnLists, kLettersOnLists};
}

bool HasAny(Row traits, Row wanted) {
  return std::find_first_of(traits.begin(), traits.end(), wanted.begin(), wanted.end()) != traits.end();
}

// A binding lies at the side of a page that stands upright, and no ring is drawn on a black label.
bool Excluded(PageTrait trait, Row others) {
  constexpr std::array kSideways = {kLaid90, kLaid270};
  return (trait == kNeighbour && HasAny(others, kSideways)) || (trait == kWhiteOnBlack && HasAny(others, kCallouts));
}

}  // namespace

std::vector<PageTrait> MixedTraits(PageForm form, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "traits"));
  std::vector<PageTrait> mixed;
  for (const Row row : RowsOf(form)) {
    const PageTrait one = row[static_cast<std::size_t>(random.Whole(0, static_cast<int>(row.size()) - 1))];
    const bool has = random.Whole(0, 1) == 1;
    if (has && !Excluded(one, mixed)) mixed.push_back(one);
  }
  return mixed;
}

}  // namespace benchleaf::scanmaker
