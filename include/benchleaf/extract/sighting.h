// Terms seen on pages, and rows of parts lists: what the index holds.

#ifndef BENCHLEAF_EXTRACT_SIGHTING_H_
#define BENCHLEAF_EXTRACT_SIGHTING_H_

#include "benchleaf/core/geometry.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class TermKind { kDesignator, kTube, kPartNumber, kSemiconductor, kValue, kItem };

// "designator", "tube", "part-number", "semiconductor", "value", "item", as in the export.
std::string_view Name(TermKind kind);
std::optional<TermKind> TermKindNamed(std::string_view name);

// One place where a term is seen on a page.
struct Sighting {
  TermKind kind = TermKind::kDesignator;
  std::string text;       // canonical: upper case, no spaces (A4C12, 12AX7A/ECC83, .047MFD; of an item its number)
  std::string read;       // as read
  FractionBox box;        // of the page as scanned
  int turn = 0;           // degrees clockwise that the term stands turned from upright on the scan: 0, 90, 180, 270
  double confidence = 0;  // 0 to 1
  std::string assembly;   // assembly that the page or heading sets ("A4"), empty when none is known

  friend bool operator==(const Sighting&, const Sighting&) = default;
};

// One part of a parts list. A row that names several designators (R1-R8; C2,3,6) gives an entry for each, with the
// same box.
struct Entry {
  std::string designator;  // canonical, without assembly prefix unless printed so; empty when the row has none
  std::string assembly;    // from the heading above ("A4"), empty when none is set
  std::string description;
  std::string part_number;
  std::string quantity;
  std::string value;      // canonical, as far as the description holds one
  FractionBox box;        // the whole row, its continuation lines included, on the page as scanned
  double confidence = 0;  // 0 to 1, of the reading of designator, or item number, and part number
  // Of a list that numbers its rows and names no designators: "12", "12A"; empty in others and where it was not told.
  std::string item;

  friend bool operator==(const Entry&, const Entry&) = default;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_SIGHTING_H_
