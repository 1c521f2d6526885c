// A schematic diagram of a circuit, stage after stage in rows, on a sheet of any size.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SCHEMATIC_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SCHEMATIC_PAGE_H_

#include "scan-maker/circuit.h"
#include "scan-maker/drawing.h"
#include "scan-maker/made_page.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct SchematicSheet {
  double width_in = 11;    // inches
  double height_in = 8.5;  // inches
  std::string title;       // "FIG. 3  SCHEMATIC DIAGRAM, MODEL 512"
  std::string footer;      // at the foot, left
  std::string page_number;
  std::vector<std::string> notes = {};  // lines at the lower right, where the rows of stages must leave room
};

// Stages that find no place on the sheet are left out; their number is the size of the circuit less `drawn`.
struct SchematicResult {
  MadePage page;
  std::size_t drawn = 0;  // stages
};

SchematicResult MakeSchematicPage(const Circuit& circuit, const SchematicSheet& sheet, const DrawingStyle& style,
                                  std::uint64_t seed);

// A drawing style with lettering of that kind at the size of printed manuals (capitals of 2 mm).
DrawingStyle UsualDrawingStyle(Lettering lettering, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SCHEMATIC_PAGE_H_
