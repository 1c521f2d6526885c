#include "benchleaf/record/codec.h"
#include "benchleaf/record/json.h"

#include <utility>

namespace benchleaf {

namespace {

using Fields = std::vector<std::pair<std::string, Json>>;

// What every line begins with: its record's name and the manual; then, for all but links, the page.
Fields Start(const char* record, const ManualRecord& manual) {
  return {{"record", record}, {"set", manual.set}, {"manual", manual.manual}};
}

Fields Start(const char* record, const ManualRecord& manual, const PageRecord& page) {
  Fields fields = Start(record, manual);
  fields.emplace_back("file", page.file);
  fields.emplace_back("page", page.page);
  return fields;
}

std::string Line(Fields fields, Fields more) {
  for (auto& field : more) fields.push_back(std::move(field));
  return Json::Object(std::move(fields)).Dump() + '\n';
}

std::string PageLine(const ManualRecord& manual, const PageRecord& page) {
  const PageFrame& frame = page.reading.frame;
  const std::string reason =
      page.failure ? std::string(Name(page.failure->code)) + ": " + page.failure->message : std::string();
  return Line(Start("page", manual, page), {{"kind", std::string(Name(page.facts.kind))},
                                            {"width", frame.scan_width},
                                            {"height", frame.scan_height},
                                            {"dpi", frame.dpi},
                                            {"status", page.failure ? "failed" : "read"},
                                            {"reason", reason},
                                            {"printed_number", page.facts.printed_number}});
}

std::string SightingLine(const ManualRecord& manual, const PageRecord& page, const Sighting& sighting) {
  return Line(Start("sighting", manual, page), {{"kind", std::string(Name(sighting.kind))},
                                                {"text", sighting.text},
                                                {"read", sighting.read},
                                                {"box", ToJson(sighting.box)},
                                                {"turn", sighting.turn},
                                                {"confidence", sighting.confidence}});
}

std::string EntryLine(const ManualRecord& manual, const PageRecord& page, const Entry& entry) {
  return Line(Start("entry", manual, page), {{"designator", entry.designator},
                                             {"assembly", entry.assembly},
                                             {"item", entry.item},
                                             {"description", entry.description},
                                             {"part_number", entry.part_number},
                                             {"quantity", entry.quantity},
                                             {"value", entry.value},
                                             {"box", ToJson(entry.box)}});
}

Json Spot(const PageRecord& page, const FractionBox& box) {
  return Json::Object({{"file", page.file}, {"page", page.page}, {"box", ToJson(box)}});
}

std::string LinkLine(const ManualRecord& manual, const Link& link) {
  const PageRecord& entry_page = manual.pages[link.entry_page];
  const PageRecord& seen_page = manual.pages[link.seen_page];
  const Entry& entry = entry_page.entries[link.entry];
  return Line(Start("link", manual), {{"designator", entry.designator},
                                      {"assembly", entry.assembly},
                                      {"item", entry.item},
                                      {"entry", Spot(entry_page, entry.box)},
                                      {"seen", Spot(seen_page, seen_page.sightings[link.sighting].box)},
                                      {"confidence", link.confidence},
                                      {"reason", link.reason}});
}

}  // namespace

std::string ExportLines(const ManualRecord& manual) {
  std::string lines;
  for (const PageRecord& page : manual.pages) lines += PageLine(manual, page);
  for (const PageRecord& page : manual.pages) {
    for (const Sighting& sighting : page.sightings) lines += SightingLine(manual, page, sighting);
  }
  for (const PageRecord& page : manual.pages) {
    for (const Entry& entry : page.entries) lines += EntryLine(manual, page, entry);
  }
  for (const Link& link : manual.links) lines += LinkLine(manual, link);
  return lines;
}

}  // namespace benchleaf
