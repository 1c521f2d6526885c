// A small invented set with a schematic and a list, and one whose names and words are hostile.

#ifndef BENCHLEAF_TESTS_BINDER_SAMPLE_BOOK_H_
#define BENCHLEAF_TESTS_BINDER_SAMPLE_BOOK_H_

#include "benchleaf/binder/book.h"

#include <string>
#include <vector>

namespace benchleaf::binder {

// What tries to become a script wherever it is written.
inline const std::string kHostile =
    "\"'><script>window.hurt=1</script><img src=x onerror=window.hurt=1>&lt;javascript:window.hurt=1//"
    "\xE2\x80\xA8</title><svg onload=window.hurt=1>../../../etc";

inline Sighting SeenAt(TermKind kind, const std::string& text, double x, double y) {
  Sighting sighting;
  sighting.kind = kind;
  sighting.text = text;
  sighting.read = text;
  sighting.box = {x, y, 0.03, 0.01};
  sighting.confidence = 0.9;
  return sighting;
}

inline PageRecord SheetOf(const std::string& file, int page, PageKind kind, int orientation = 0) {
  PageRecord record;
  record.file = file;
  record.page = page;
  record.facts.kind = kind;
  record.reading.frame.scan_width = 1700;
  record.reading.frame.scan_height = 2200;
  record.reading.frame.dpi = 200;
  record.reading.frame.orientation = orientation;
  record.reading.frame.level_width = 1700;
  record.reading.frame.level_height = 2200;
  return record;
}

inline Entry ListedPart(const std::string& designator, const std::string& description, double y) {
  Entry entry;
  entry.designator = designator;
  entry.description = description;
  entry.value = ".047MFD";
  entry.part_number = "23-117";
  entry.box = {0.1, y, 0.8, 0.01};
  entry.confidence = 0.8;
  return entry;
}

// C112 listed and drawn, C113 listed alone, R7 drawn alone, V3 a 6CB6A. The drawing lies on its side.
inline ManualRecord SampleManual(const std::string& set = "QUILLHAVEN 12", const std::string& file = "chassis.png",
                                 const std::string& words = "CAPACITOR, PAPER, 400 V") {
  ManualRecord manual;
  manual.set = set;
  manual.maker = set;
  manual.model = "12";
  manual.manual = file;
  manual.title = words;
  manual.files = {{file, std::string(64, 'a'), 1, 1, 2, std::nullopt}};
  PageRecord drawing = SheetOf(file, 1, PageKind::kSchematic, 90);
  drawing.facts.titles = {words};
  drawing.sightings = {SeenAt(TermKind::kDesignator, "C112", 0.2, 0.1), SeenAt(TermKind::kDesignator, "R7", 0.4, 0.6),
                       SeenAt(TermKind::kDesignator, "V3", 0.5, 0.5), SeenAt(TermKind::kTube, "6CB6A", 0.5, 0.52)};
  PageRecord list = SheetOf(file, 2, PageKind::kPartsList);
  list.entries = {ListedPart("C112", words, 0.2), ListedPart("C113", words, 0.3)};
  list.sightings = {SeenAt(TermKind::kDesignator, "C112", 0.1, 0.2)};
  manual.pages = {drawing, list};
  manual.links = {
      {.entry_page = 1, .entry = 0, .seen_page = 0, .sighting = 0, .confidence = 0.9, .reason = "only candidate"}};
  return manual;
}

inline ManualRecord HostileManual() {
  ManualRecord manual = SampleManual(kHostile, "../../" + kHostile + ".png", kHostile);
  manual.pages[0].sightings.push_back(SeenAt(TermKind::kDesignator, kHostile, 0.7, 0.7));
  manual.pages[0].sightings.push_back(SeenAt(TermKind::kTube, kHostile, 0.7, 0.8));
  manual.pages[1].entries.push_back(ListedPart(kHostile, kHostile, 0.4));
  manual.pages[1].facts.printed_number = kHostile;
  manual.files.push_back({kHostile, "", 1, 1, 0, Error{ErrorCode::kDamaged, kHostile, kHostile, 0}});
  return manual;
}

// A list by item numbers and a drawing of the cabinet that calls them out: items 1 to 12 listed, all but 5 drawn.
inline ManualRecord ItemsManual() {
  ManualRecord manual;
  manual.set = "HARTFELL K-40";
  manual.maker = "HARTFELL";
  manual.model = "K-40";
  manual.manual = "cabinet";
  manual.title = "Cabinet and chassis parts, invented";
  manual.files = {{"cabinet.png", std::string(64, 'b'), 1, 1, 2, std::nullopt}};
  PageRecord drawing = SheetOf("cabinet.png", 1, PageKind::kPartsLocator);
  PageRecord list = SheetOf("cabinet.png", 2, PageKind::kPartsList);
  const std::vector<std::string> names = {"KNOB, tuning", "KNOB, volume",   "ESCUTCHEON",      "DIAL GLASS",
                                          "POINTER",      "GRILLE CLOTH",   "CABINET, walnut", "BACK, fibre board",
                                          "CHASSIS BOLT", "RUBBER GROMMET", "LINE CORD",       "SPEAKER, 8 inch"};
  for (std::size_t i = 0; i < names.size(); ++i) {
    const std::string number = std::to_string(i + 1);
    Entry entry = ListedPart("", names[i], 0.2 + 0.03 * static_cast<double>(i));
    entry.value = "";
    entry.item = number;
    entry.part_number = "40-" + std::to_string(110 + i);
    list.entries.push_back(entry);
    if (number == "5") continue;
    drawing.sightings.push_back(SeenAt(TermKind::kItem, number, 0.1 + 0.07 * static_cast<double>(i % 6),
                                       0.2 + 0.3 * static_cast<double>(i / 6)));
    manual.links.push_back({.entry_page = 1,
                            .entry = i,
                            .seen_page = 0,
                            .sighting = drawing.sightings.size() - 1,
                            .confidence = 0.8,
                            .reason = "only candidate"});
  }
  manual.pages = {drawing, list};
  return manual;
}

inline Book SampleBook() { return MakeBook(1, {SampleManual()}, {}, {}); }

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_TESTS_BINDER_SAMPLE_BOOK_H_
