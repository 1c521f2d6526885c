#include "scan-maker/list_rows.h"

#include "scan-maker/list_parts.h"

#include <algorithm>
#include <array>
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

bool IsLaterSection(const Part& part) { return part.section > 'A'; }

// "Capacitor, .05 MFD, 600 V, paper" as words, with value, rating and type marked as the terms that they are.
std::vector<Token> DescriptionTokens(const Part& part, Wording wording) {
  std::vector<Token> tokens;
  const std::size_t name = part.description.find(", ");
  std::size_t from = wording == Wording::kTerse && name != std::string::npos ? name + 2 : 0;
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

std::string RangeSign(Grouping grouping) {
  switch (grouping) {
    case Grouping::kThrough:
      return " thru ";
    case Grouping::kTildes:
      return "~";
    default:
      return "-";
  }
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
    if (end - i >= 3 && grouping != Grouping::kCommas) {
      const bool number_alone = !first || grouping == Grouping::kTildes;
      const std::string stop = number_alone ? std::to_string(NumberOf(parts[end - 1])) : parts[end - 1];
      piece.text = start + RangeSign(grouping) + stop;
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

std::string Spaced(const std::string& text) {
  std::string spaced;
  for (const char c : text) {
    spaced += spaced.empty() ? std::string(1, c) : std::string(" ") + c;
  }
  return spaced;
}

ListRow RowOf(const Part& part, const std::vector<std::string>& parts, const std::string& assembly,
              const ListLayout& layout) {
  ListRow row;
  row.assembly = assembly;
  row.parts = parts;
  row.designators = DesignatorPieces(parts, layout.grouping);
  row.description = DescriptionTokens(part, layout.wording);
  row.description_text = part.description;
  row.part_number = part.part_number;
  if (!IsLaterSection(part) && !part.part_number.empty()) {
    row.number = TermToken("part-number", part.part_number);
  }
  row.quantity = std::to_string(parts.size());
  const bool valued = part.part_class == PartClass::kResistor || part.part_class == PartClass::kControl ||
                      part.part_class == PartClass::kCapacitor || part.part_class == PartClass::kElectrolytic ||
                      part.part_class == PartClass::kVariableCapacitor;
  row.value = valued ? Canonical(part.value) : "";
  for (Token& piece : row.designators) {
    piece.text = IsLaterSection(part)        ? std::string(1, part.section)
                 : layout.spaced_designators ? Spaced(piece.text)
                                             : piece.text;
  }
  for (int maker = 0; maker < layout.makers; ++maker) {
    const std::string number = IsLaterSection(part) ? std::string() : MakersNumber(part, maker);
    row.makers.push_back(number.empty() ? Token{} : TermToken("part-number", number));
  }
  return row;
}

// Puts signs of repetition for a class name and a part number that stand in the row above, too.
void AddDittos(std::vector<ListRow>& rows) {
  const auto ditto = [](Token& token) { token = {"text", "\"", {}}; };
  std::string above_word;
  std::string above_number;
  for (ListRow& row : rows) {
    const std::string word = row.description.empty() ? std::string() : row.description.front().text;
    if (!word.empty() && word == above_word && row.description.size() > 1) {
      ditto(row.description.front());
    }
    if (!row.part_number.empty() && row.part_number == above_number) {
      ditto(row.number);
    }
    above_word = word;
    above_number = row.part_number;
  }
}

// Refers a row with a description that an earlier one of its assembly has to that one.
void ReferToSame(std::vector<ListRow>& rows) {
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto same =
        std::find_if(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(i), [&](const ListRow& row) {
          return row.assembly == rows[i].assembly && row.part_number == rows[i].part_number &&
                 row.description_text == rows[i].description_text && row.parts.size() == 1 && !row.number.text.empty();
        });
    if (rows[i].heading.empty() && same != rows.begin() + static_cast<std::ptrdiff_t>(i)) {
      rows[i].description = TermBook{}.Tokens("Same as");
      rows[i].description.push_back(TermToken("designator", same->parts.front()));
      rows[i].description_text = "Same as " + same->parts.front();
      rows[i].number = {};
    }
  }
}

// Leaves the designators out and numbers the rows instead.
void NumberItems(std::vector<ListRow>& rows) {
  int item = 0;
  for (ListRow& row : rows) {
    if (row.heading.empty()) {
      row.item = std::to_string(++item);
      row.designators.clear();
      row.parts = {""};
    }
  }
}

ListRow AssemblyHeading(const ListSection& section, const ListLayout& layout) {
  ListRow heading;
  heading.heading =
      layout.units ? section.assembly + "  " + section.title : "ASSEMBLY " + section.assembly + "  " + section.title;
  heading.assembly_heading = true;
  return heading;
}

void AddSection(const ListSection& section, const ListLayout& layout, std::vector<ListRow>& rows) {
  constexpr std::size_t kMostInARow = 7;
  const std::vector<Part> listed = PartsAsListed(section.parts, layout);
  std::vector<bool> done(listed.size(), false);
  std::string class_heading;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    const Part& part = listed[i];
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
    const bool groups = layout.grouping != Grouping::kNone && part.section == 0;
    for (std::size_t j = i + 1; groups && j < listed.size(); ++j) {
      const Part& other = listed[j];
      if (!done[j] && other.description == part.description && parts.size() < kMostInARow &&
          LetterOf(other.designator) == LetterOf(part.designator)) {
        parts.push_back(other.designator);
        done[j] = true;
      }
    }
    rows.push_back(RowOf(part, parts, section.assembly, layout));
  }
}

}  // namespace

std::vector<ListRow> RowsOf(const std::vector<ListSection>& sections, const ListLayout& layout) {
  std::vector<ListRow> rows;
  for (const ListSection& section : sections) {
    if (!section.assembly.empty()) {
      rows.push_back(AssemblyHeading(section, layout));
    }
    AddSection(section, layout, rows);
  }
  if (layout.wording == Wording::kDittos) {
    AddDittos(rows);
  } else if (layout.wording == Wording::kSameAs) {
    ReferToSame(rows);
  }
  if (layout.form == ListForm::kItems) {
    NumberItems(rows);
  }
  return rows;
}

std::vector<ListRow> HardwareRows(const ListLayout& layout, int count) {
  static const std::array<const char*, 12> kThings = {
      "Knob, tuning", "Knob, volume", "Cabinet, walnut", "Grille cloth", "Foot, rubber", "Screw, shoulder",
      "Dial scale",   "Pointer",      "Cord, dial",      "Spring, dial", "Shield, tube", "Clip, mounting"};
  static const std::array<const char*, 4> kColors = {"brown", "ivory", "black", "maroon"};
  std::vector<ListRow> rows;
  for (int i = 0; i < count; ++i) {
    const auto number = static_cast<std::size_t>(i);
    Part part;
    part.designator = "H" + std::to_string(i + 1);
    part.description =
        std::string(kThings[number % kThings.size()]) + ", " + kColors[number / kThings.size() % kColors.size()];
    part.part_number = std::to_string(73000 + 37 * i) + "-" + std::to_string(1 + i % 7);
    rows.push_back(RowOf(part, {""}, "", layout));
    rows.back().designators.clear();
  }
  return rows;
}

}  // namespace benchleaf::scanmaker
