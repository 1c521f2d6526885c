// Lines of a parts list, or of a drawing's title, that are no rows: headings that name an assembly, titles of columns,
// titles of groups.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_HEADING_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_HEADING_H_

#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <vector>

namespace benchleaf::extract {

// The pieces' texts as ListWord gives them.
std::vector<std::string> WordsOf(const std::vector<Piece>& pieces);

// The assembly that a line sets for what follows: "A4" for ASSEMBLY A4 and for A4 POWER SUPPLY BOARD, "UNIT 2" for
// UNIT 2. Lines that mention an assembly in passing ("MOUNTED ON A4") set none.
std::optional<std::string> AssemblyHeading(const std::vector<std::string>& words, const Rules::Tables& tables);

// The same for a line of which the readers saw several texts: where the words as read name no assembly, what else was
// read behind a word like ASSEMBLY may.
// `words` are the line's.
std::optional<std::string> AssemblyHeading(const Line& line, const std::vector<std::string>& words,
                                           const Rules::Tables& tables);

// The assembly or unit that the title of a drawing names: SCHEMATIC DIAGRAM, UNIT 2; A4 SCHEMATIC DIAGRAM.
std::optional<std::string> TitledAssembly(const std::vector<std::string>& words, const Rules::Tables& tables);

// The assembly that another line on a drawing says it shows: headings as above, P/O A4.
std::optional<std::string> DrawnAssembly(const std::vector<std::string>& words, const Rules::Tables& tables);

// Whether the words are titles of columns (REF DESIG, DESCRIPTION, PART NO.).
bool IsColumnTitles(const std::vector<std::string>& words, const Rules::Tables& tables);

// Whether the words are the title of a group (RESISTORS, CAPACITORS - CONTINUED).
bool IsGroupTitle(const std::vector<std::string>& words, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_HEADING_H_
