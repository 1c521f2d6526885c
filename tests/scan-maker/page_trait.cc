#include "scan-maker/page_trait.h"

#include "scan-maker/callouts.h"
#include "scan-maker/page_marks.h"
#include "scan-maker/page_surroundings.h"
#include "scan-maker/scan_shade.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

constexpr int kPoorJpeg = 35;
constexpr double kBindingInches = 0.25;  // of its shadow, to either side

// What a trait does: to the page before it is scanned, to the scanning, and to the scan. Null where it does nothing.
struct TraitMaker {
  PageTrait trait;
  std::string_view name;
  MadePage (*draw)(const MadePage& page, std::uint64_t seed) = nullptr;
  void (*scan)(ScanChanges& changes) = nullptr;
  void (*shade)(ScannedPage& scan, Grade grade) = nullptr;
};

MadePage Sideways(const MadePage& page, std::uint64_t /*seed*/) { return Laid(page, 90); }
MadePage UpsideDown(const MadePage& page, std::uint64_t /*seed*/) { return Laid(page, 180); }
MadePage OtherSideways(const MadePage& page, std::uint64_t /*seed*/) { return Laid(page, 270); }

// For what takes no seed.
template <MadePage (*draw)(const MadePage&)>
MadePage Seedless(const MadePage& page, std::uint64_t /*seed*/) {
  return draw(page);
}

template <int degrees>
void Skewed(ScanChanges& changes) {
  changes.skew_degrees = degrees;
}

template <int dpi>
void PoorJpeg(ScanChanges& changes) {
  changes.dpi = dpi;
  changes.jpeg_quality = kPoorJpeg;
}

void ThinPrint(ScanChanges& changes) { changes.thin_print = true; }

template <int dpi>
void Claiming(ScannedPage& page, Grade /*grade*/) {
  page.dpi = dpi;
}

void Curled(ScannedPage& page, Grade grade) { ShadeEdges(page, grade == Grade::kSevere); }

// In the order in which AllPageTraits has them; drawn from the last to the first.
constexpr std::array kMakers = {
    TraitMaker{PageTrait::kNone, "none"},
    TraitMaker{PageTrait::kLaid90, "laid-90", Sideways},
    TraitMaker{PageTrait::kUpsideDown, "upside-down", UpsideDown},
    TraitMaker{PageTrait::kLaid270, "laid-270", OtherSideways},
    TraitMaker{PageTrait::kSkew3, "skew-3", nullptr, Skewed<3>},
    TraitMaker{PageTrait::kSkew5, "skew-5", nullptr, Skewed<5>},
    TraitMaker{PageTrait::kFalse72Dpi, "false-72-dpi", nullptr, nullptr, Claiming<72>},
    TraitMaker{PageTrait::kFalse600Dpi, "false-600-dpi", nullptr, nullptr, Claiming<600>},
    TraitMaker{PageTrait::kJpeg150, "jpeg-150", nullptr, PoorJpeg<150>},
    TraitMaker{PageTrait::kJpeg100, "jpeg-100", nullptr, PoorJpeg<100>},
    TraitMaker{PageTrait::kJpeg75, "jpeg-75", nullptr, PoorJpeg<75>},
    TraitMaker{PageTrait::kPunchHoles, "punch-holes", Seedless<WithPunchHoles>},
    TraitMaker{PageTrait::kCurledEdges, "curled-edges", nullptr, nullptr, Curled},
    TraitMaker{PageTrait::kBlackBorder, "black-border", WithBlackBorder},
    TraitMaker{PageTrait::kNeighbour, "neighbour", WithNeighbour},
    TraitMaker{PageTrait::kPencil, "pencil", WithPencil},
    TraitMaker{PageTrait::kDottedOutlines, "dotted-outlines", WithDottedOutlines},
    TraitMaker{PageTrait::kThinPrint, "thin-print", nullptr, ThinPrint},
    TraitMaker{PageTrait::kRings, "rings", WithRings},
    TraitMaker{PageTrait::kLeaders, "leaders", WithLeaders},
    TraitMaker{PageTrait::kUpended, "upended", Seedless<WithUpended>},
    TraitMaker{PageTrait::kWhiteOnBlack, "white-on-black", Seedless<WithWhiteOnBlack>},
    TraitMaker{PageTrait::kPale, "pale", Seedless<WithPale>},
    TraitMaker{PageTrait::kSpacedLetters, "spaced-letters", Seedless<WithSpacedLetters>},
    TraitMaker{PageTrait::kDashes, "dashes", Seedless<WithDashes>},
    TraitMaker{PageTrait::kPhotographs, "photographs", WithPhotographs},
};

constexpr auto kTraits = [] {
  std::array<PageTrait, kMakers.size()> traits{};
  std::transform(kMakers.begin(), kMakers.end(), traits.begin(), [](const TraitMaker& maker) { return maker.trait; });
  return traits;
}();

bool Has(std::span<const PageTrait> traits, PageTrait trait) {
  return std::find(traits.begin(), traits.end(), trait) != traits.end();
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
  return std::find_if(kMakers.begin(), kMakers.end(), [&](const TraitMaker& maker) { return maker.trait == trait; })
      ->name;
}

ScannedPage ScanWithTraits(const MadePage& page, Grade grade, std::span<const PageTrait> traits, std::uint64_t seed) {
  if (Has(traits, PageTrait::kNeighbour) && (Has(traits, PageTrait::kBlackBorder) || Has(traits, PageTrait::kLaid90) ||
                                             Has(traits, PageTrait::kUpsideDown) || Has(traits, PageTrait::kLaid270))) {
    throw std::invalid_argument("a page with its neighbour lies upright and has no border");
  }
  MadePage drawn = page;
  ScanChanges changes;
  std::for_each(kMakers.rbegin(), kMakers.rend(), [&](const TraitMaker& maker) {
    if (!Has(traits, maker.trait)) return;
    if (maker.draw != nullptr) drawn = maker.draw(drawn, seed);
    if (maker.scan != nullptr) maker.scan(changes);
  });
  ScannedPage scan = DegradeMade(drawn, grade, seed, changes);
  if (Has(traits, PageTrait::kNeighbour)) {
    ShadeBinding(scan, 1.0 * page.image.width / drawn.image.width, kBindingInches, grade == Grade::kSevere);
  }
  for (const TraitMaker& maker : kMakers) {
    if (maker.shade != nullptr && Has(traits, maker.trait)) maker.shade(scan, grade);
  }
  return scan;
}

ScannedPage ScanWithTrait(const MadePage& page, Grade grade, PageTrait trait, std::uint64_t seed) {
  return ScanWithTraits(page, grade, {&trait, 1}, seed);
}

}  // namespace benchleaf::scanmaker
