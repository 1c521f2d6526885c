#include "scan-maker/list_rows.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf::scanmaker {
namespace {

std::size_t FirstDigit(const std::string& designator) { return designator.find_first_of("0123456789"); }
std::string LetterOf(const std::string& designator) { return designator.substr(0, FirstDigit(designator)); }
int NumberOf(const std::string& designator) { return std::stoi(designator.substr(FirstDigit(designator))); }

bool IsMeasure(const std::string& segment) {
  return segment.find_first_of("0123456789") != std::string::npos && !segment.empty() && segment.back() != '%' &&
         (segment.ends_with(" W") || segment.ends_with(" V") || segment.ends_with(" KV"));
}

// "Capacitor, .05 MFD, 600 V, paper" as words, with value, rating and type marked as the terms that they are.
std::vector<Token> DescriptionTokens(const Part& part) {
  std::vector<Token> tokens;
  std::size_t from = 0;
  while (from < part.description.size()) {
    const std::size_t comma = std::min(part.description.find(", ", from), part.description.size());
    const std::string segment = part.description.substr(from, comma - from);
    const std::string tail = comma < part.description.size() ? "," : "";
    std::string kind;
    if (segment == part.value) {
      const bool tube = part.part_class == PartClass::kTube;
      const bool semiconductor = part.part_class == PartClass::kDiode || part.part_class == PartClass::kTransistor;
      kind = tube ? "tube" : (semiconductor ? "semiconductor" : "value");
    } else if (IsMeasure(segment)) {
      kind = "value";
    }
    if (!kind.empty()) {
      tokens.push_back({kind, segment + tail, {Canonical(segment)}});
    } else {
      for (const Token& word : TermBook{}.Tokens(segment + tail)) {
        tokens.push_back(word);
      }
    }
    from = comma + 2;
  }
  return tokens;
}

// The printed designators of parts in one row, in pieces: runs of three and more as ranges, the letter only once.
std::vector<Token> DesignatorPieces(const std::vector<std::string>& parts, Grouping grouping) {
  std::vector<Token> pieces;
  for (std::size_t i = 0; i < parts.size();) {
    std::size_t end = i + 1;
    while (end < parts.size() && NumberOf(parts[end]) == NumberOf(parts[end - 1]) + 1) {
      ++end;
    }
    Token piece{"designator", "", {}};
    const bool first = i == 0;
    const std::string start = first ? parts[i] : std::to_string(NumberOf(parts[i]));
    if (end - i >= 3) {
      const std::string stop = first ? parts[end - 1] : std::to_string(NumberOf(parts[end - 1]));
      piece.text = start + (grouping == Grouping::kThrough ? " thru " : "-") + stop;
      piece.terms.assign(parts.begin() + static_cast<std::ptrdiff_t>(i),
                         parts.begin() + static_cast<std::ptrdiff_t>(end));
    } else {
      end = i + 1;
      piece.text = start;
      piece.terms = {parts[i]};
    }
    piece.text += end < parts.size() ? "," : "";
    pieces.push_back(piece);
    i = end;
  }
  return pieces;
}

ListRow RowOf(const Part& part, const std::vector<std::string>& parts, const std::string& assembly, Grouping grouping) {
  ListRow row;
  row.assembly = assembly;
  row.parts = parts;
  row.designators = DesignatorPieces(parts, grouping);
  row.description = DescriptionTokens(part);
  row.description_text = part.description;
  row.part_number = part.part_number;
  row.quantity = std::to_string(parts.size());
  const bool valued = part.part_class == PartClass::kResistor || part.part_class == PartClass::kControl ||
                      part.part_class == PartClass::kCapacitor || part.part_class == PartClass::kElectrolytic ||
                      part.part_class == PartClass::kVariableCapacitor;
  row.value = valued ? Canonical(part.value) : "";
  return row;
}

}  // namespace

std::vector<ListRow> RowsOf(const std::vector<ListSection>& sections, const ListLayout& layout) {
  constexpr std::size_t kMostInARow = 7;
  std::vector<ListRow> rows;
  for (const ListSection& section : sections) {
    if (!section.assembly.empty()) {
      ListRow heading;
      heading.heading = "ASSEMBLY " + section.assembly + "  " + section.title;
      heading.assembly_heading = true;
      rows.push_back(heading);
    }
    std::vector<bool> done(section.parts.size(), false);
    std::string class_heading;
    for (std::size_t i = 0; i < section.parts.size(); ++i) {
      const Part& part = section.parts[i];
      if (done[i]) {
        continue;
      }
      if (layout.class_headings && ClassHeading(part.part_class) != class_heading) {
        class_heading = ClassHeading(part.part_class);
        ListRow heading;
        heading.heading = class_heading;
        rows.push_back(heading);
      }
      std::vector<std::string> parts = {part.designator};
      for (std::size_t j = i + 1; layout.grouping != Grouping::kNone && j < section.parts.size(); ++j) {
        const Part& other = section.parts[j];
        if (!done[j] && other.description == part.description && parts.size() < kMostInARow &&
            LetterOf(other.designator) == LetterOf(part.designator)) {
          parts.push_back(other.designator);
          done[j] = true;
        }
      }
      rows.push_back(RowOf(part, parts, section.assembly, layout.grouping));
    }
  }
  return rows;
}

}  // namespace benchleaf::scanmaker
