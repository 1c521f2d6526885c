// Faults of real scans that concern whole pages, each to be given to a page on its own or with others.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PAGE_TRAIT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PAGE_TRAIT_H_

#include "scan-maker/made_page.h"

#include <cstdint>
#include <span>
#include <string_view>

namespace benchleaf::scanmaker {

enum class PageTrait {
  kNone,
  kLaid90,       // lies on its side: turned by 90 degrees clockwise
  kUpsideDown,   // turned by 180 degrees
  kLaid270,      // on its other side
  kSkew3,        // 3 degrees askew
  kSkew5,        // 5 degrees
  kFalse72Dpi,   // claims 72 dpi: its page box has as many points as the scan has pixels
  kFalse600Dpi,  // claims 600 dpi
  kJpeg150,      // 150-dpi JPEG, quality 35
  kJpeg100,      // 100-dpi JPEG, quality 35
  kJpeg75,       // 75-dpi JPEG: as small as the lettering of a reduced drawing is at 100 dpi
  kPunchHoles,   // see page_surroundings.h
  kCurledEdges,
  kBlackBorder,
  kNeighbour,
  kPencil,  // see page_marks.h
  kDottedOutlines,
  kThinPrint,  // thin, broken strokes
  kRings,      // see callouts.h
  kLeaders,
  kUpended,
  kWhiteOnBlack,
  kPale,
  kSpacedLetters,
  kDashes,
  kPhotographs,
};

// All of them, kNone first.
std::span<const PageTrait> AllPageTraits();

// "upside-down"
std::string_view Name(PageTrait trait);

// The page with the trait, scanned. Same page, grade, trait and seed: same bytes; without a trait as DegradeMade has
// it.
ScannedPage ScanWithTrait(const MadePage& page, Grade grade, PageTrait trait, std::uint64_t seed);

// The page with several traits, in whatever order they are named: letters change first, then come marks, what lies
// round the page, and how it lies. Throws std::invalid_argument for kNeighbour beside kBlackBorder or a page that is
// laid otherwise than upright, whose binding would lie elsewhere.
ScannedPage ScanWithTraits(const MadePage& page, Grade grade, std::span<const PageTrait> traits, std::uint64_t seed);

// Two pages of a book in one scan, with the shadow of the binding between them.
ScannedPage ScanSpread(const MadePage& left, const MadePage& right, Grade grade, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PAGE_TRAIT_H_
