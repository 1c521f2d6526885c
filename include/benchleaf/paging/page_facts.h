// What a page is: its kind, its printed number, the figure and section titles on it.

#ifndef BENCHLEAF_PAGING_PAGE_FACTS_H_
#define BENCHLEAF_PAGING_PAGE_FACTS_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class PageKind {
  kSchematic,
  kPartsList,
  kPartsLocator,
  kText,
  kCover,
  kContents,
  kSpecifications,
  kAlignment,
  kBlockDiagram,
  kWaveforms,
  kTubeLayout,
  kTroubleshooting,
  kOther,
};

// "schematic", "parts list", "parts locator", "text", ... as in the export.
std::string_view Name(PageKind kind);
std::optional<PageKind> PageKindNamed(std::string_view name);

// Whether a page of this kind may show parts at their places: schematics and locators, and pages of which too little
// can be read to tell their kind, which are drawings more often than not.
bool MayShowParts(PageKind kind);

struct PageFacts {
  PageKind kind = PageKind::kOther;
  double kind_confidence = 0;       // 0 to 1
  std::string printed_number;       // "8-17", "42"; empty when none is seen
  std::vector<std::string> titles;  // of figures and sections, as read
  std::string model;                // that the page names ("MODEL 1420"), empty when it names none

  friend bool operator==(const PageFacts&, const PageFacts&) = default;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_PAGING_PAGE_FACTS_H_
