// What a manual lacks, and where it contradicts itself.

#ifndef BENCHLEAF_GAPS_FIND_GAPS_H_
#define BENCHLEAF_GAPS_FIND_GAPS_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_reader.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class GapKind {
  kUnread,     // a page or file that could not be read, or only badly
  kVolume,     // a volume whose number is skipped or named
  kPage,       // a printed page number that no page bears
  kSection,    // a section that is named, or whose pages are skipped
  kFigure,     // a figure that is named and nowhere captioned
  kValue,      // another value beside the symbol than in the list
  kNotDrawn,   // listed, but on no schematic
  kNotListed,  // drawn, but in no list
  kNumbering,  // a number between others that no part bears
};
// "unread", "volume", "page", "section", "figure", "value", "not-drawn", "not-listed", "numbering".
std::string_view Name(GapKind kind);
std::optional<GapKind> GapKindNamed(std::string_view name);

enum class GapGrade {
  kMissing,    // every page that would hold it was read well
  kNotSeen,    // some of them were not, or not well: `badly_read` names them
  kDiffers,    // both sides were read well and contradict each other
  kMayDiffer,  // they contradict each other as read, and a misreading would explain it
  kNote,       // for the reader to know; no fault of the manual
};
// "missing", "not seen", "differs", "may differ", "note".
std::string_view Name(GapGrade grade);

// Where a finding shows.
struct GapPlace {
  PagePlace place;
  std::optional<FractionBox> box;  // of the page as scanned; nothing: the whole page
  std::string read;                // what stands there
};

struct Gap {
  GapKind kind = GapKind::kUnread;
  GapGrade grade = GapGrade::kNote;
  std::string what;    // "C112", "page 8-17", "Fig. 5-3"
  std::string reason;  // in words
  std::vector<GapPlace> places;
  std::vector<PagePlace> badly_read;  // pages that may hold it all the same
};

// How well one page was read.
struct PageQuality {
  PagePlace place;
  std::optional<Error> failure;  // not read at all
  double sure_share = 1;         // of the letters read, in words of a confidence of one half and more: 0 to 1
  bool badly_read = false;       // failed, read in the plainer mode, or too few letters surely read
};

struct ManualGaps {
  std::string set;
  std::string manual;
  std::vector<PageQuality> pages;  // in reading order: what was searched
  std::size_t list_pages = 0;
  std::size_t entries = 0;  // with a designator
  std::size_t items = 0;    // rows with an item number instead
  std::size_t schematic_pages = 0;
  std::vector<Gap> gaps;  // by kind, then in the order of a person's counting

  bool HasList() const { return entries + items > 0; }
  bool HasSchematic() const { return schematic_pages > 0; }
};

// Pure. Where the manual has no list or no schematic, nothing is compared with it, and the counts above say so.
ManualGaps FindGaps(const ManualRecord& manual, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_GAPS_FIND_GAPS_H_
