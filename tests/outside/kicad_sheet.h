// Renders schematics that others drew: Debian's kicad-demos, files of KiCad 6 with their symbols inside.

#ifndef BENCHLEAF_TESTS_OUTSIDE_KICAD_SHEET_H_
#define BENCHLEAF_TESTS_OUTSIDE_KICAD_SHEET_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <cstdint>
#include <filesystem>

namespace benchleaf::outside {

// Pixels of the page for a millimetre of the drawing. KiCad letters at 1.27 mm, which is 15 px high at 300 dpi:
// lettering for screens. Printed schematics are lettered 2 to 2.5 mm high (ISO 3098-0 and common drawing practice), so
// the sheet is enlarged 1.6 times: capitals 24 px high, an A4 sheet 5613 x 3969 px, an A3 sheet a fold-out of
// 7937 x 5613 px.
inline constexpr double kPxPerMm = 1.6 * 300 / 25.4;

// References smaller than this on the drawing are no lettering that anyone could read, and count as "text".
inline constexpr double kLeastReferenceMm = 0.6;

// The sheet at 300 dpi: symbols, wires, junctions, labels, texts and boxes of further sheets. Left out: the frame and
// title block, pictures, bars over names, shapes of clock pins, and properties other than reference and value, which
// are notes of the drawing program and never printed. The types of integrated circuits and transistors are lettered as
// tube types (tube_lettering.h). Visible references that have the form of a designator are "designator", the types
// "tube", other visible values "value", labels of nets and rails "net", names and numbers of pins "pin", all other
// words "text". Throws std::runtime_error when the file is missing or is no KiCad schematic on A4 or A3.
scanmaker::MadePage DrawKicadSheet(const std::filesystem::path& file, scanmaker::Lettering lettering,
                                   std::uint64_t seed);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_KICAD_SHEET_H_
