// A page made ready for reading: even ground, level, lettering brought to a known height, lines taken out, and the
// places where text may stand.

#ifndef BENCHLEAF_CLEAN_CLEAN_PAGE_H_
#define BENCHLEAF_CLEAN_CLEAN_PAGE_H_

#include "benchleaf/clean/components.h"
#include "benchleaf/clean/page_measures.h"
#include "benchleaf/clean/page_steps.h"
#include "benchleaf/core/image.h"

#include <cstddef>
#include <span>
#include <vector>

namespace benchleaf {

// The lettering's capital height on every level page, about that of a schematic at 300 dpi.
inline constexpr double kLevelCapPx = 24;

struct CleanPage {
  PageSteps steps;
  PageFrame frame;
  PageMeasures measures;
  GreyImage grey;          // the level page, ground near 255
  InkImage ink;            // all its ink, lines included
  Components components;   // of the level page's ink without its lines
  std::vector<Box> rings;  // round callouts, px of the level page; taken out of `components`
};

// `image` is the page as scanned; `dpi` its resolution as claimed, 0 when unknown; `orientation` the clockwise turn
// (0, 90, 180, 270 degrees) to give it first; `steps` those that are done, here and by all that work on the page.
CleanPage MakeCleanPage(const GreyImage& image, double dpi, int orientation, const PageSteps& steps = {});

// A place where text may stand.
struct TextString {
  Box box;                           // px of the level page
  bool standing = false;             // the text runs up or down the page
  bool broken = false;               // made of fragments that only closeness joins
  std::vector<std::size_t> members;  // components, along the string; several where a letter is in pieces
  std::size_t letters = 0;           // and marks; what touches counts as one; 0 when `broken`

  // px along the text, and across it.
  int length() const { return standing ? box.height : box.width; }
  int breadth() const { return standing ? box.width : box.height; }
};

// The box round these components.
Box BoxOf(const Components& components, const std::vector<std::size_t>& members);

// How dark the ink of these components is: the level, 0 black to 255, that a fifth of its pixels are darker than.
int InkLevel(const CleanPage& page, std::span<const std::size_t> members);

// How far apart letters of one string may stand, in capital heights.
struct JoinGaps {
  double lying = 0.62;
  double standing = 0.5;          // 0: no standing strings are looked for
  bool over_punctuation = false;  // dots, dashes and commas join what stands to their sides
};

// Words on a drawing, and phrases of running text or of a list's columns: a typewriter leaves 1.3 capital heights
// between words, and columns stand further apart.
inline constexpr JoinGaps kStringGaps{};
inline constexpr JoinGaps kPhraseGaps{.lying = 1.6, .standing = 0, .over_punctuation = true};

// Strings of letter-sized components that follow each other along a row, lying and standing. A component may be in
// one of each.
std::vector<TextString> FindStrings(const CleanPage& page, const JoinGaps& gaps);

// Blobs of fragments, for lettering so broken that no component is the size of a letter.
std::vector<TextString> FindBrokenStrings(const CleanPage& page);

// Whether a string of FindStrings is worth a reader's time on a drawing: no lone letter, no outline of a symbol, and no
// longer than strings of drawings are.
bool IsReadable(const CleanPage& page, const TextString& string);

// A string cut out for a reader: upright, scaled, with all foreign ink blanked and a light border around it.
struct StringCrop {
  GreyImage image;
  Box source;        // the part of the level page that was cut, px
  int turn = 0;      // degrees clockwise that the text stands turned on the level page: 0, 90, 180 or 270
  double scale = 1;  // px of `image` per px of the level page
  int border = 0;    // px of `image`
};

// The capital height, px, at which the reader does best.
inline constexpr double kReaderCapPx = 32;

// `turn` is 0 or 180 for a lying string, 90 or 270 for a standing one; the string's capitals come out `cap_px` high.
StringCrop CutString(const CleanPage& page, const TextString& string, int turn, double cap_px = kReaderCapPx);

// The box on the level page of a box in the crop.
Box ToLevel(const StringCrop& crop, const Box& box);

}  // namespace benchleaf

#endif  // BENCHLEAF_CLEAN_CLEAN_PAGE_H_
