#include "scan-maker/page_trait.h"

#include "scan-maker/callouts.h"
#include "scan-maker/page_marks.h"
#include "scan-maker/page_surroundings.h"
#include "scan-maker/scan_shade.h"

#include <algorithm>
#include <array>

namespace benchleaf::scanmaker {
namespace {

struct NamedTrait {
  PageTrait trait;
  std::string_view name;
};

constexpr std::array kNames = {
    NamedTrait{PageTrait::kNone, "none"},
    NamedTrait{PageTrait::kLaid90, "laid-90"},
    NamedTrait{PageTrait::kUpsideDown, "upside-down"},
    NamedTrait{PageTrait::kLaid270, "laid-270"},
    NamedTrait{PageTrait::kSkew3, "skew-3"},
    NamedTrait{PageTrait::kSkew5, "skew-5"},
    NamedTrait{PageTrait::kFalse72Dpi, "false-72-dpi"},
    NamedTrait{PageTrait::kFalse600Dpi, "false-600-dpi"},
    NamedTrait{PageTrait::kJpeg150, "jpeg-150"},
    NamedTrait{PageTrait::kJpeg100, "jpeg-100"},
    NamedTrait{PageTrait::kJpeg75, "jpeg-75"},
    NamedTrait{PageTrait::kPunchHoles, "punch-holes"},
    NamedTrait{PageTrait::kCurledEdges, "curled-edges"},
    NamedTrait{PageTrait::kBlackBorder, "black-border"},
    NamedTrait{PageTrait::kNeighbour, "neighbour"},
    NamedTrait{PageTrait::kPencil, "pencil"},
    NamedTrait{PageTrait::kDottedOutlines, "dotted-outlines"},
    NamedTrait{PageTrait::kThinPrint, "thin-print"},
    NamedTrait{PageTrait::kRings, "rings"},
    NamedTrait{PageTrait::kLeaders, "leaders"},
    NamedTrait{PageTrait::kUpended, "upended"},
    NamedTrait{PageTrait::kWhiteOnBlack, "white-on-black"},
    NamedTrait{PageTrait::kPale, "pale"},
    NamedTrait{PageTrait::kSpacedLetters, "spaced-letters"},
    NamedTrait{PageTrait::kDashes, "dashes"},
    NamedTrait{PageTrait::kPhotographs, "photographs"},
};

constexpr auto kTraits = [] {
  std::array<PageTrait, kNames.size()> traits{};
  std::transform(kNames.begin(), kNames.end(), traits.begin(), [](const NamedTrait& named) { return named.trait; });
  return traits;
}();

constexpr int kPoorJpeg = 35;
constexpr double kBindingInches = 0.25;  // of its shadow, to either side

ScannedPage Claiming(ScannedPage page, double dpi) {
  page.dpi = dpi;
  return page;
}

ScannedPage Curled(ScannedPage page, Grade grade) {
  ShadeEdges(page, grade == Grade::kSevere);
  return page;
}

ScannedPage BesideItsNeighbour(const MadePage& page, Grade grade, std::uint64_t seed) {
  const MadePage both = WithNeighbour(page, seed);
  ScannedPage scan = DegradeMade(both, grade, seed);
  ShadeBinding(scan, 1.0 * page.image.width / both.image.width, kBindingInches, grade == Grade::kSevere);
  return scan;
}

}  // namespace

ScannedPage ScanSpread(const MadePage& left, const MadePage& right, Grade grade, std::uint64_t seed) {
  const MadePage both = TwoUp(left, right);
  ScannedPage scan = DegradeMade(both, grade, seed);
  ShadeBinding(scan, 1.0 * left.image.width / both.image.width, kBindingInches, grade == Grade::kSevere);
  return scan;
}

std::span<const PageTrait> AllPageTraits() { return kTraits; }

std::string_view Name(PageTrait trait) {
  return std::find_if(kNames.begin(), kNames.end(), [&](const NamedTrait& named) { return named.trait == trait; })
      ->name;
}

ScannedPage ScanWithTrait(const MadePage& page, Grade grade, PageTrait trait, std::uint64_t seed) {
  switch (trait) {
    case PageTrait::kLaid90:
      return DegradeMade(Laid(page, 90), grade, seed);
    case PageTrait::kUpsideDown:
      return DegradeMade(Laid(page, 180), grade, seed);
    case PageTrait::kLaid270:
      return DegradeMade(Laid(page, 270), grade, seed);
    case PageTrait::kSkew3:
      return DegradeMade(page, grade, seed, {.skew_degrees = 3});
    case PageTrait::kSkew5:
      return DegradeMade(page, grade, seed, {.skew_degrees = 5});
    case PageTrait::kFalse72Dpi:
      return Claiming(DegradeMade(page, grade, seed), 72);
    case PageTrait::kFalse600Dpi:
      return Claiming(DegradeMade(page, grade, seed), 600);
    case PageTrait::kJpeg150:
      return DegradeMade(page, grade, seed, {.dpi = 150, .jpeg_quality = kPoorJpeg});
    case PageTrait::kJpeg100:
      return DegradeMade(page, grade, seed, {.dpi = 100, .jpeg_quality = kPoorJpeg});
    case PageTrait::kJpeg75:
      return DegradeMade(page, grade, seed, {.dpi = 75, .jpeg_quality = kPoorJpeg});
    case PageTrait::kPunchHoles:
      return DegradeMade(WithPunchHoles(page), grade, seed);
    case PageTrait::kCurledEdges:
      return Curled(DegradeMade(page, grade, seed), grade);
    case PageTrait::kBlackBorder:
      return DegradeMade(WithBlackBorder(page, seed), grade, seed);
    case PageTrait::kNeighbour:
      return BesideItsNeighbour(page, grade, seed);
    case PageTrait::kPencil:
      return DegradeMade(WithPencil(page, seed), grade, seed);
    case PageTrait::kDottedOutlines:
      return DegradeMade(WithDottedOutlines(page, seed), grade, seed);
    case PageTrait::kThinPrint:
      return DegradeMade(page, grade, seed, {.thin_print = true});
    case PageTrait::kRings:
      return DegradeMade(WithRings(page, seed), grade, seed);
    case PageTrait::kLeaders:
      return DegradeMade(WithLeaders(page, seed), grade, seed);
    case PageTrait::kUpended:
      return DegradeMade(WithUpended(page), grade, seed);
    case PageTrait::kWhiteOnBlack:
      return DegradeMade(WithWhiteOnBlack(page), grade, seed);
    case PageTrait::kPale:
      return DegradeMade(WithPale(page), grade, seed);
    case PageTrait::kSpacedLetters:
      return DegradeMade(WithSpacedLetters(page), grade, seed);
    case PageTrait::kDashes:
      return DegradeMade(WithDashes(page), grade, seed);
    case PageTrait::kPhotographs:
      return DegradeMade(WithPhotographs(page, seed), grade, seed);
    case PageTrait::kNone:
      break;
  }
  return DegradeMade(page, grade, seed);
}

}  // namespace benchleaf::scanmaker
