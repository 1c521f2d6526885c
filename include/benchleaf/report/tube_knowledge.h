// What is known of a tube type, before any library is asked: its number decoded, and its row in the tables.

#ifndef BENCHLEAF_REPORT_TUBE_KNOWLEDGE_H_
#define BENCHLEAF_REPORT_TUBE_KNOWLEDGE_H_

#include "benchleaf/report/table.h"
#include "benchleaf/tubes/decode.h"
#include "benchleaf/tubes/tube_table.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// One name of a tube.
struct TubeKnowledge {
  DecodedType decoded;
  // Its row: of the very type, else of the type without its suffix (6CB6 for 6CB6B). nullptr when there is none. It
  // belongs to the table.
  const TubeEntry* entry = nullptr;

  bool is_of_the_very_type() const { return entry != nullptr && entry->type == decoded.type; }
};

// Of every name that was asked for: two for 12AX7A/ECC83. The table must outlive the answer.
std::vector<TubeKnowledge> KnowTube(std::string_view asked, const TubeTable& table);

// The other names of the tubes, each once: those that a library may call them by.
std::vector<std::string> OtherNames(const std::vector<TubeKnowledge>& tubes);

// One thing that is known: "heater", "6.3 V, 0.3 A". A line without a label goes on with the one before.
struct KnownLine {
  std::string label;
  std::string words;
};

// What the tube is, or that the tables have no row for it.
std::string KnownClass(const TubeKnowledge& tube);

// What its row says, with the source, and what the number says by its standard. The table is asked for the heaters of
// relatives.
std::vector<KnownLine> KnownLines(const TubeKnowledge& tube, const TubeTable& table);

// A block of lines for each name: what the table says, with its source, and what the number says by its standard. Only
// the second where there is no row. The table is asked for the heaters of relatives.
std::string KnowledgeText(const std::vector<TubeKnowledge>& tubes, const TubeTable& table, const Look& look);

// One {"type":"tube-type"} object a name.
std::string KnowledgeJson(const std::vector<TubeKnowledge>& tubes);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_TUBE_KNOWLEDGE_H_
