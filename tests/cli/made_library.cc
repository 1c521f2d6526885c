#include "cli/made_library.h"

#include "extract/seen_sighting.h"
#include "places/places.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/raster/page_source.h"
#include "benchleaf/store/index_writer.h"

#include <unistd.h>

#include <sstream>
#include <utility>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

Word Printed(const std::string& text, const Box& box) {
  Word word;
  word.text = text;
  word.box = box;
  word.confidence = 0.9;
  return word;
}

PageRecord Page(const std::string& file, int page, PageKind kind) {
  PageRecord record;
  record.file = file;
  record.page = page;
  record.content_key = ContentKey(file, page, "made");
  record.facts.kind = kind;
  record.reading.frame = {.scan_width = 1700,
                          .scan_height = 2200,
                          .dpi = 200,
                          .orientation = 0,
                          .scale = 1,
                          .skew_degrees = 0,
                          .level_width = 1700,
                          .level_height = 2200};
  return record;
}

FileRecord File(const std::string& path, int pages) {
  FileRecord file;
  file.path = path;
  file.hash = std::string(64, 'a');
  file.page_count = pages;
  return file;
}

ManualRecord Receiver() {
  ManualRecord manual;
  manual.set = "QUILLHAVEN 12";
  manual.maker = "QUILLHAVEN";
  manual.model = "12";
  manual.manual = "chassis";
  manual.title = "Receiver, invented";
  manual.files = {File("quillhaven/chassis.png", 2), File("quillhaven/list.png", 1)};

  PageRecord drawing = Page("quillhaven/chassis.png", 1, PageKind::kSchematic);
  drawing.facts.printed_number = "8-17";
  drawing.sightings = {Seen(TermKind::kDesignator, "C112", {0.22, 0.13, 0.03, 0.01}),
                       Seen(TermKind::kDesignator, "V3", {0.50, 0.50, 0.03, 0.01}),
                       Seen(TermKind::kTube, "6CB6A", {0.50, 0.515, 0.04, 0.01})};
  drawing.reading.words = {Printed("C112", {374, 286, 51, 22}), Printed("OSCILLATOR", {400, 400, 200, 22})};

  PageRecord unread = Page("quillhaven/chassis.png", 2, PageKind::kOther);
  unread.failure = Error{ErrorCode::kTimeout, "the page took too long", "quillhaven/chassis.png", 2};
  unread.reading = {};

  PageRecord list = Page("quillhaven/list.png", 1, PageKind::kPartsList);
  Entry capacitor;
  capacitor.designator = "C112";
  capacitor.description = "CAPACITOR, PAPER, 400 V";
  capacitor.value = ".047MFD";
  capacitor.part_number = "=23-117";
  capacitor.quantity = "1";
  capacitor.box = {0.1, 0.2, 0.8, 0.01};
  capacitor.confidence = 0.8;
  Entry knob;
  knob.description = "KNOB";
  knob.part_number = "77-2";
  knob.box = {0.1, 0.3, 0.8, 0.01};
  knob.confidence = 0.7;
  list.entries = {capacitor, knob};
  list.sightings = {Seen(TermKind::kDesignator, "C112", {0.1, 0.2, 0.03, 0.01}, 0.8)};

  manual.pages = {drawing, unread, list};
  manual.links = {
      {.entry_page = 2, .entry = 0, .seen_page = 0, .sighting = 0, .confidence = 0.9, .reason = "only candidate"}};
  return manual;
}

ManualRecord Television() {
  ManualRecord manual;
  manual.set = "BRACKENFORD T7";
  manual.maker = "BRACKENFORD";
  manual.model = "T7";
  manual.manual = "t7";
  manual.files = {File("t7.png", 1)};
  PageRecord drawing = Page("t7.png", 1, PageKind::kSchematic);
  drawing.sightings = {Seen(TermKind::kTube, "6CB6", {0.3, 0.8, 0.04, 0.01}),
                       Seen(TermKind::kDesignator, "R7", {0.6, 0.8, 0.04, 0.01})};
  drawing.reading.words = {Printed("VERTICAL", {400, 400, 200, 22}), Printed("HOLD", {620, 400, 90, 22})};
  manual.pages = {drawing};
  return manual;
}

void WriteScan(const fs::path& path) {
  fs::create_directories(path.parent_path());
  ColorImage scan;
  scan.width = 850;
  scan.height = 1100;
  scan.pixels.assign(std::size_t{850} * 1100 * 3, 235);
  const auto written = WritePng(path, scan);
  ASSERT_TRUE(written) << written.error().ToString();
}

}  // namespace

RunResult RunProgram(const std::vector<std::string>& arguments, const fs::path& state_folder) {
  std::ostringstream out;
  std::ostringstream err;
  RunResult result;
  result.code = Run(arguments, {.out = out, .err = err, .state_folder = state_folder});
  result.out = out.str();
  result.err = err.str();
  return result;
}

void MadeLibrary::SetUp() {
  const auto* test = testing::UnitTest::GetInstance()->current_test_info();
  folder_ = fs::temp_directory_path() / ("benchleaf-cli-" + std::to_string(getpid()) + "-" + test->name());
  fs::remove_all(folder_);
  library_ = folder_ / "library";
  WriteScan(library_ / "quillhaven" / "chassis.png");
  WriteScan(library_ / "t7.png");

  auto rules = Rules::Load(SourceFolder() / "config");
  ASSERT_TRUE(rules) << rules.error().ToString();
  auto index = IndexWriter::Open(library_ / ".benchleaf", *rules);
  ASSERT_TRUE(index) << index.error().ToString();
  for (const ManualRecord& manual : {Receiver(), Television()}) {
    const auto stored = (*index)->ReplaceManual(manual);
    ASSERT_TRUE(stored) << stored.error().ToString();
  }
}

void MadeLibrary::Forget(const std::string& set, const std::string& manual) const {
  auto rules = Rules::Load(SourceFolder() / "config");
  ASSERT_TRUE(rules);
  auto index = IndexWriter::Open(library_ / ".benchleaf", *rules);
  ASSERT_TRUE(index);
  ASSERT_TRUE((*index)->RemoveManual(set, manual));
}

void MadeLibrary::TearDown() { fs::remove_all(folder_); }

RunResult MadeLibrary::Ask(std::vector<std::string> arguments) const {
  arguments.insert(arguments.end(), {"--library", library_.string()});
  return RunProgram(arguments, state_folder_);
}

}  // namespace benchleaf
