#include "benchleaf/report/parts.h"

#include "report/place.h"

#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/report/csv.h"
#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf {
namespace {

Table PartsTable() {
  return Table({{"part"},
                {"description", Column::Align::kLeft, Column::Fit::kWrap},
                {"value"},
                {"part number"},
                {"qty", Column::Align::kRight},
                {"list page", Column::Align::kLeft, Column::Fit::kWrap},
                {"drawn on", Column::Align::kLeft, Column::Fit::kWrap},
                {"sure", Column::Align::kRight}});
}

// Why a link is to be looked at, in brackets; empty for one that nothing speaks against.
std::string Doubt(const std::string& reason) {
  const bool doubtful = reason.find("differs") != std::string::npos || reason.find("candidates") != std::string::npos;
  return doubtful ? " (" + reason + ")" : "";
}

std::vector<std::string> DrawnOn(const FoundEntry& found) {
  std::vector<std::string> lines;
  for (const FoundEntry::Seen& seen : found.seen) {
    lines.push_back(ShortPlace(seen.place) + ", " + RegionOnPage(seen.sighting.box) + Doubt(seen.reason));
  }
  if (lines.empty() && !NameOf(found.entry).empty()) lines.emplace_back("not seen");
  return lines;
}

std::size_t CountLinked(const std::vector<FoundEntry>& entries, const std::string& manual) {
  return static_cast<std::size_t>(std::count_if(entries.begin(), entries.end(), [&](const FoundEntry& found) {
    return found.place.manual == manual && !found.seen.empty();
  }));
}

}  // namespace

std::string PartsText(const std::string& set, const std::vector<FoundEntry>& entries, const Look& look) {
  std::vector<std::string> manuals;
  for (const FoundEntry& found : entries) {
    if (std::find(manuals.begin(), manuals.end(), found.place.manual) == manuals.end()) {
      manuals.push_back(found.place.manual);
    }
  }
  std::string text;
  for (const std::string& manual : manuals) {
    Table table = PartsTable();
    std::size_t rows = 0;
    for (const FoundEntry& found : entries) {
      if (found.place.manual != manual) continue;
      ++rows;
      const Entry& entry = found.entry;
      table.Add({NameOf(entry), entry.description, entry.value, entry.part_number, entry.quantity,
                 ShortPlace(found.place), Cell(DrawnOn(found), found.seen.empty() ? Paint::kFaint : Paint::kPlain),
                 Sureness(entry.confidence)});
    }
    if (!text.empty()) text += "\n";
    text += CleanText(set) + (manuals.size() > 1 ? ", " + CleanText(manual) : "") + ": " + Counted(rows, "part") +
            ", " + std::to_string(CountLinked(entries, manual)) + " of them seen on a drawing\n";
    text += table.Render(look);
  }
  return text;
}

std::string PartsCsv(const std::vector<FoundEntry>& entries) {
  std::string csv = CsvRecord({"set", "manual", "designator", "assembly", "item", "description", "value", "part_number",
                               "quantity", "file", "page", "confidence", "drawn_on"});
  for (const FoundEntry& found : entries) {
    const Entry& entry = found.entry;
    std::string drawn;
    for (const FoundEntry::Seen& seen : found.seen) {
      drawn += (drawn.empty() ? "" : "; ") + seen.place.file + " p. " + std::to_string(seen.place.page) + ", " +
               WhereOnPage(seen.sighting.box) + (seen.reason.empty() ? "" : ", " + seen.reason);
    }
    csv += CsvRecord({found.place.set, found.place.manual, entry.designator, entry.assembly, entry.item,
                      entry.description, entry.value, entry.part_number, entry.quantity, found.place.file,
                      std::to_string(found.place.page), Json(entry.confidence).Dump(), drawn});
  }
  return csv;
}

std::string PartsJson(const std::vector<FoundEntry>& entries) {
  std::string lines;
  for (const FoundEntry& found : entries) {
    const Entry& entry = found.entry;
    Json object = Json::Object({{"type", "part"}});
    SetPlace(object, found.place);
    object.Set("designator", entry.designator);
    object.Set("assembly", entry.assembly);
    object.Set("item", entry.item);
    object.Set("description", entry.description);
    object.Set("value", entry.value);
    object.Set("part_number", entry.part_number);
    object.Set("quantity", entry.quantity);
    object.Set("box", ToJson(entry.box));
    object.Set("confidence", entry.confidence);
    Json drawn = Json::Array();
    for (const FoundEntry::Seen& seen : found.seen) {
      drawn.Add(Json::Object({{"file", seen.place.file},
                              {"page", seen.place.page},
                              {"printed_page", seen.place.printed_number},
                              {"page_kind", std::string(Name(seen.place.kind))},
                              {"box", ToJson(seen.sighting.box)},
                              {"where", WhereOnPage(seen.sighting.box)},
                              {"confidence", seen.confidence},
                              {"reason", seen.reason}}));
    }
    object.Set("drawn", drawn);
    lines += object.Dump() + "\n";
  }
  return lines;
}

}  // namespace benchleaf
