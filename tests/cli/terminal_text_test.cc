// Names and words of strangers, as files, titles and readings bring them, on a terminal.

#include "cli/made_library.h"
#include "places/places.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/raster/page_source.h"
#include "benchleaf/store/index_writer.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

// Clears the screen, sets a title, moves the cursor: ECMA-48, and the bytes 80 to 9F that stand for ESC and a letter.
const std::string kHostile =
    "R1\x1b[2J\x1b]0;owned\x07\r\b\xC2\x9b"
    "31m";

class TerminalText : public MadeLibrary {
 protected:
  void SetUp() override {
    MadeLibrary::SetUp();
    setenv("NO_COLOR", "1", 1);
    setenv("TERM", "xterm", 1);
    auto rules = Rules::Load(SourceFolder() / "config");
    ASSERT_TRUE(rules);
    auto index = IndexWriter::Open(library_ / ".benchleaf", *rules);
    ASSERT_TRUE(index);
    ManualRecord manual;
    manual.set = manual.maker = manual.model = manual.manual = manual.title = "SET " + kHostile;
    const std::string file = "scan \x1b[31m.png";
    fs::copy_file(library_ / "t7.png", library_ / file);
    manual.files = {{file, std::string(64, 'c'), 1, 1, 2, std::nullopt},
                    {"gone" + kHostile, "", 1, 1, 0, Error{ErrorCode::kDamaged, kHostile, kHostile, 0}}};
    PageRecord page;
    page.file = file;
    page.content_key = ContentKey(file, 1, "made");
    page.facts.kind = PageKind::kPartsList;
    page.facts.titles = {kHostile};
    page.facts.printed_number = kHostile;
    page.reading.frame.scan_width = page.reading.frame.level_width = 850;
    page.reading.frame.scan_height = page.reading.frame.level_height = 1100;
    Word word;
    word.text = "WORD" + kHostile;
    word.box = {100, 100, 200, 20};
    word.confidence = 0.9;
    page.reading.words = {word};
    for (const TermKind kind : {TermKind::kDesignator, TermKind::kTube, TermKind::kValue}) {
      Sighting sighting;
      sighting.kind = kind;
      sighting.text = kind == TermKind::kTube ? "6CB6" : "R1";
      sighting.read = kHostile;
      sighting.box = {0.1, 0.1, 0.1, 0.02};
      sighting.confidence = 0.9;
      page.sightings.push_back(sighting);
    }
    Entry entry;
    entry.designator = "C1";
    entry.description = "CAPACITOR, PAPER 400V " + kHostile;
    entry.part_number = entry.quantity = entry.value = kHostile;
    entry.box = {0.1, 0.2, 0.8, 0.02};
    entry.confidence = 0.9;
    page.entries = {entry};
    PageRecord unread = page;
    unread.page = 2;
    unread.content_key = ContentKey(file, 2, "made");
    unread.failure = Error{ErrorCode::kCrashed, kHostile, file, 2};
    unread.reading = {};
    unread.sightings.clear();
    unread.entries.clear();
    manual.pages = {page, unread};
    const auto stored = (*index)->ReplaceManual(manual);
    ASSERT_TRUE(stored) << stored.error().ToString();
  }
};

TEST_F(TerminalText, OfStrangersIsNeverObeyed) {
  std::ofstream(folder_ / "tubes.csv") << "type,count,place\n6CB6,1," << kHostile << "\n" << kHostile << ",1,x\n";
  const std::string tubes = (folder_ / "tubes.csv").string();
  const std::string out = (folder_ / "out").string();
  const std::vector<std::vector<std::string>> commands = {
      {"find", "R1"},
      {"find", "WORD"},
      {"find", kHostile},
      {"parts", "SET"},
      {"parts", kHostile + "nobody"},
      {"tube", "6CB6"},
      {"tube", kHostile},
      {"lineup", "SET"},
      {"lineup", "SET", "BRACKENFORD"},
      {"gaps", "SET"},
      {"stock", tubes},
      {"stock", tubes, "--in", "SET"},
      {"replace", "SET"},
      {"sets"},
      {"sets", "SET"},
      {"picture", "R1", "--in", "SET", "-v", "-o", out + ".png"},
      {"picture", "R1", "--in", "SET", "--sheet", "-o", out + "-sheet.png"},
      {"binder", out, "--in", "SET", "-v"},
      {"searchable", "SET", "-v", "-o", out + ".pdf"},
      {"files", library_.string()},
      {"export"},
  };
  for (const std::vector<std::string>& command : commands) {
    const bool has_csv = command.front() == "parts" || command.front() == "lineup" || command.front() == "gaps" ||
                         command.front() == "stock" || command.front() == "replace";
    for (const std::string more : {"", "--json", "--csv"}) {
      if (more == "--json" && command.front() == "export") continue;
      if (more == "--csv" && !has_csv) continue;
      std::vector<std::string> arguments = command;
      if (command.front() != "files") arguments.insert(arguments.end(), {"--library", library_.string()});
      if (!more.empty()) arguments.push_back(more);
      if (command.front() == "picture" || command.front() == "searchable") arguments.emplace_back("--force");
      std::ostringstream told;
      std::ostringstream talk;
      benchleaf::Run(arguments,
                     {.out = told, .err = talk, .out_is_terminal = true, .err_is_terminal = false, .out_columns = 70});
      for (const std::string& text : {told.str(), talk.str()}) {
        EXPECT_EQ(text.find_first_of("\x1b\x07\r\b\x7f"), std::string::npos) << command.front() << ": " << text;
        EXPECT_EQ(text.find("\xC2\x9b"), std::string::npos) << command.front() << ": " << text;
      }
      EXPECT_NE(told.str() + talk.str(), "") << command.front();
    }
  }
}

}  // namespace
}  // namespace benchleaf
