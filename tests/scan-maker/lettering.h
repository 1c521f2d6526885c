// Draws text as draughtsmen and typewriters put it on manuals, and tells where the ink lies.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LETTERING_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LETTERING_H_

#include "scan-maker/cairo_names.h"

#include "benchleaf/core/geometry.h"

#include <array>
#include <cstdint>
#include <string>

namespace benchleaf::scanmaker {

enum class Lettering {
  kSimplex,     // one pen stroke, plain (Hershey "futural")
  kDuplex,      // one wider pen stroke with small serifs (Hershey "rowmans")
  kHand,        // the plain strokes, jittered as by hand
  kDrafting,    // ISO 3098 drafting letters (osifont)
  kTypewriter,  // a typewriter's face
  kBook,        // a printed serif face, for running text
  kSans,        // a printed face without serifs
  kNarrow,      // the same, narrow
  kBold,        // the same, heavy
  // For a reader to learn from; their fonts are in the package group "training":
  kBroadPen,         // the plain strokes, drawn double (Hershey "futuram")
  kCapitalsByHand,   // a hand's capitals (Humor Sans)
  kRoundHand,        // a rounder hand (Comic Neue)
  kInkedTypewriter,  // a typewriter's face with its blots (GNUTypewriter)
  kThinTypewriter,   // a typewriter's face with thin strokes (FreeMono)
  kEvenWidth,        // letters of one width without serifs (Inconsolata)
  kRounded,          // round ends and narrow letters, as from a template (Dosis)
  kWide,             // wide square letters (Jura)
  kTemplate,         // letters guided by a template, one even pen (Routed Gothic)
  kTemplateWide,     // the same, wide
  kTemplateNarrow,   // the same, narrow
  kSlabTypewriter,   // a wide typewriter's face (Compagnon Roman)
  kHeavyTypewriter,  // a typewriter's face with heavy strokes (Compagnon Medium)
  kFineTypewriter,   // a typewriter's face with fine strokes (Nimbus Mono)
  kMachineRead,      // letters made for machines to read, ISO 1073-2 (OCR-B)
  kGrotesque,        // printed faces without serifs, from here on (Nimbus Sans)
  kGrotesqueNarrow,  // (Nimbus Sans Narrow)
  kGeometric,        // (URW Gothic)
  kPanel,            // (B612)
  kScreen,           // (DejaVu Sans)
  kScreenEvenWidth,  // (DejaVu Sans Mono)
  kCircular,         // (Comfortaa)
  kPlain,            // (Tuffy)
  kSchoolbook,       // printed faces with serifs (C059)
  kCatalogue,        // (Century Catalogue)
  kLooseHand,        // hands (Breip)
  kMarkerHand,       // (BecauseWeLearn)
  kQuickHand,        // (BecauseWeOrganize)
  // No reader learns from these: they tell how far to trust it on letterings that it has not met.
  kBookPen,         // a printed serif face in strokes (Hershey "timesr")
  kUnmetSans,       // a printed face without serifs (Lato)
  kUnmetEvenWidth,  // letters of one width (Liberation Mono)
};

inline constexpr std::array kUnmetLetterings = {Lettering::kBookPen, Lettering::kUnmetSans, Lettering::kUnmetEvenWidth};

// A file of outlines.
struct FontFile {
  const char* path;     // below /usr/share/fonts
  const char* package;  // that installs it
};

struct TextStyle {
  Lettering lettering = Lettering::kSimplex;
  const FontFile* font = nullptr;  // outlines to use in place of the lettering's own
  double cap_height_px = 24;       // height of a capital letter
  double stroke_px = 2.5;          // pen width; only where letters are pen strokes
  std::uint64_t seed = 1;          // of the jitter of kHand, and of a writer
  double letter_space = 0;         // extra space between letters, as a share of the capital height
  double word_space = 1;           // width of a space against the template's
  double stretch = 1;              // width of the letters against their template's
  double slant = 0;                // how far letters lean to the right at a capital height, as a share of it
  double looseness = 0;            // how far a writer's letters leave their template, as a share of the capital height
};

// Draws `text` in black with the left end of its baseline at (x, y), turned clockwise by `turn` degrees (0, 90, 180
// or 270) about that point. Gives the upright box of its ink in px.
Box DrawText(cairo_t* cairo, double x, double y, const std::string& text, const TextStyle& style, int turn = 0);

// How far the pen moves along the baseline, px.
double TextAdvance(const std::string& text, const TextStyle& style);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LETTERING_H_
