// A small invented manual with every field in use, for tests of whatever stores or writes manuals.

#ifndef BENCHLEAF_TESTS_RECORD_SAMPLE_MANUAL_H_
#define BENCHLEAF_TESTS_RECORD_SAMPLE_MANUAL_H_

#include "benchleaf/record/manual_record.h"

#include <string>
#include <utility>

namespace benchleaf {

inline Sighting MakeSighting(TermKind kind, std::string text, double confidence = 0.9, double x = 0.25) {
  Sighting sighting;
  sighting.kind = kind;
  sighting.read = text;
  sighting.text = std::move(text);
  sighting.box = {x, 0.5, 0.0125, 0.01};
  sighting.confidence = confidence;
  return sighting;
}

inline Word MakeWord(std::string text, int x = 100, int y = 100) {
  Word word;
  word.text = std::move(text);
  word.box = {x, y, 60, 20};
  word.confidence = 0.8;
  return word;
}

inline PageRecord MakePage(const std::string& file, int page, PageKind kind) {
  PageRecord record;
  record.file = file;
  record.page = page;
  record.content_key = ContentKey("hash of " + file, page, "reader 1");
  record.reading.frame.scan_width = 2000;
  record.reading.frame.scan_height = 1000;
  record.reading.frame.dpi = 200;
  record.reading.frame.level_width = 2000;
  record.reading.frame.level_height = 1000;
  record.facts.kind = kind;
  record.facts.kind_confidence = 0.75;
  return record;
}

// Three pages: a schematic, a parts list with an entry linked to it, and a page that failed.
inline ManualRecord MakeManual(const std::string& set = "MEADOWLARK 5R1", const std::string& manual = "service") {
  ManualRecord record;
  record.set = set;
  record.maker = "MEADOWLARK";
  record.model = "5R1";
  record.manual = manual;
  record.title = "Service manual";
  const std::string path = set + "/" + manual + ".pdf";
  record.files = {{path, std::string(64, 'a'), 123456, 1, 3, std::nullopt},
                  {set + "/broken.pdf", std::string(64, 'b'), 10, 2, 0,
                   Error{ErrorCode::kDamaged, "not a PDF", set + "/broken.pdf", 0}}};

  PageRecord schematic = MakePage(path, 1, PageKind::kSchematic);
  schematic.facts.printed_number = "8-17";
  schematic.facts.titles = {"SCHEMATIC DIAGRAM", "Fig. 3"};
  schematic.facts.model = "5R1";
  schematic.reading.frame.orientation = 90;
  schematic.reading.frame.skew_degrees = -0.37;
  schematic.reading.measures = {24.5, 900, 120, 0.41, 0.05, 0.001};
  schematic.reading.words = {MakeWord("C112"), MakeWord("6CB6A", 300)};
  schematic.reading.words[0].alternatives = {{"C1I2", 0.4}, {"CII2", 0.1}};
  schematic.reading.words[1].origin = WordOrigin::kLayer;
  schematic.reading.words[1].turn = 270;
  schematic.sightings = {MakeSighting(TermKind::kDesignator, "C112"), MakeSighting(TermKind::kTube, "6CB6A", 0.8, 0.4)};
  schematic.sightings[0].read = "C 1I2";
  schematic.sightings[0].turn = 90;
  schematic.sightings[0].assembly = "A4";

  PageRecord list = MakePage(path, 2, PageKind::kPartsList);
  list.plain_mode = true;
  list.entries = {
      {"C112", "A4", "CAP, FXD, .047 MFD 400V", "281-0047-00", "1", ".047MFD", {0.125, 0.25, 0.75, 0.02}, 0.95, ""},
      {"", "", "KNOB", "366-1", "2", "", {0.125, 0.5, 0.75, 0.02}, 0.5, "12A"}};

  PageRecord failed;
  failed.file = path;
  failed.page = 3;
  failed.content_key = ContentKey("hash of " + path, 3, "reader 1");
  failed.failure = Error{ErrorCode::kTimeout, "reading took more than 120 s", path, 3};

  record.pages = {schematic, list, failed};
  record.links = {{1, 0, 0, 0, 0.875, "same assembly"}};
  return record;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_RECORD_SAMPLE_MANUAL_H_
