#include "benchleaf/lineup/sockets.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

SeenTube Seen(const std::string& type, const std::string& designator, int page, double confidence = 0.9,
              PageKind kind = PageKind::kSchematic, const std::string& read = "", const std::string& manual = "m") {
  SeenTube seen;
  seen.place = {"QUILLHAVEN 12", manual, manual + ".pdf", page, kind, ""};
  seen.sighting.kind = TermKind::kTube;
  seen.sighting.text = type;
  seen.sighting.read = read.empty() ? type : read;
  seen.sighting.confidence = confidence;
  seen.designator = designator;
  return seen;
}

// "V1 6AU6 (2), - 12AX7 (1)": designator, type and number of places of each socket; what is unplaced behind "|".
std::string Text(const SetTubes& tubes) {
  std::string text;
  for (const TubeSocket& socket : tubes.sockets) {
    text += (text.empty() ? "" : ", ") + (socket.designator.empty() ? "-" : socket.designator) + " " + socket.type +
            " (" + std::to_string(socket.seen.size()) + ")";
    for (const SeenTube& other : socket.otherwise) text += " or " + other.sighting.text;
  }
  for (const SeenTube& seen : tubes.unplaced) text += " | " + seen.sighting.text;
  return text;
}

TEST(SocketsOf, MakesOneSocketADesignator) {
  const PageKind list = PageKind::kPartsList;
  const PageKind text = PageKind::kText;
  const struct {
    const char* why;
    std::vector<SeenTube> seen;
    const char* sockets;
  } kCases[] = {
      {"drawn and listed is one tube", {Seen("6AU6", "V1", 3), Seen("6AU6", "V1", 7, 0.8, list)}, "V1 6AU6 (2)"},
      {"in the order a person counts", {Seen("6AU6", "V10", 3), Seen("6AL5", "V2", 3)}, "V2 6AL5 (1), V10 6AU6 (1)"},
      {"sections share a tube", {Seen("12AX7", "V5A", 3), Seen("12AX7", "V5B", 3)}, "V5 12AX7 (2)"},
      {"forms of a type agree against another type",
       {Seen("6AU6", "V1", 3, 0.6), Seen("6AU6A", "V1", 7, 0.7, list), Seen("6AV6", "V1", 4, 0.8)},
       "V1 6AU6A (2) or 6AV6"},
      {"a drawing leaves out the assembly",
       {Seen("6AU6", "A4V1", 7, 0.9, list), Seen("6AU6", "V1", 3)},
       "A4V1 6AU6 (2)"},
      {"two assemblies' tubes are two",
       {Seen("6AU6", "A4V1", 7), Seen("6AU6", "A5V1", 7)},
       "A4V1 6AU6 (1), A5V1 6AU6 (1)"},
      {"two manuals that agree tell of one tube",
       {Seen("6AU6", "V1", 3), Seen("6AU6A", "V1", 3, 0.8, list, "", "n")},
       "V1 6AU6 (2)"},
      {"two manuals that differ tell of two",
       {Seen("6AU6", "V1", 3), Seen("5U4GB", "V1", 3, 0.8, list, "", "n")},
       "V1 5U4GB (1), V1 6AU6 (1)"},
      {"without designators the page with the most counts",
       {Seen("6AU6", "", 3), Seen("6AU6", "", 3), Seen("6AU6", "", 7, 0.9, list)},
       "- 6AU6 (1), - 6AU6 (1)"},
      {"two halves are one tube",
       {Seen("12AX7", "", 3, 0.9, PageKind::kSchematic, "1/2 12AX7"),
        Seen("12AX7", "", 3, 0.9, PageKind::kSchematic, "1/2-12AX7")},
       "- 12AX7 (2)"},
      {"running text makes no socket", {Seen("5U4GB", "", 9, 0.9, text)}, " | 5U4GB"},
      {"running text adds nothing to a socket", {Seen("6AU6", "V1", 3), Seen("6AU6", "", 9, 0.9, text)}, "V1 6AU6 (1)"},
      {"a drawing that shows one more may show a further tube",
       {Seen("6AU6", "V1", 3), Seen("6AU6", "", 3)},
       "V1 6AU6 (1) | 6AU6"},
      {"a drawing without designators shows the known ones",
       {Seen("6AU6", "V1", 3), Seen("6AU6", "", 4)},
       "V1 6AU6 (1)"},
      {"nothing", {}, ""},
  };
  for (const auto& c : kCases) EXPECT_EQ(Text(SocketsOf(c.seen)), c.sockets) << c.why;
}

TEST(TubesSeen, TakeADesignatorOfATubeOnly) {
  const auto entry = [](const std::string& designator, double y) {
    Entry row;
    row.designator = designator;
    row.box = {0.1, y, 0.8, 0.02};
    return row;
  };
  const auto tube = [](double y) {
    Sighting sighting;
    sighting.kind = TermKind::kTube;
    sighting.text = "6AU6";
    sighting.box = {0.5, y, 0.05, 0.01};
    return sighting;
  };
  ManualRecord manual;
  manual.set = "QUILLHAVEN 12";
  manual.manual = "m";
  PageRecord& page = manual.pages.emplace_back();
  page.file = "m.pdf";
  page.page = 4;
  page.facts.kind = PageKind::kPartsList;
  page.facts.printed_number = "8-4";
  page.entries = {entry("V1", 0.10), entry("XV2", 0.20), entry("T1", 0.30)};
  page.sightings = {tube(0.101), tube(0.201), tube(0.301), tube(0.801)};
  const std::vector<SeenTube> seen = TubesSeen(manual);
  ASSERT_EQ(seen.size(), 3U) << "a transformer's row that names a tube is no tube";
  EXPECT_EQ(seen[0].designator, "V1");
  EXPECT_EQ(seen[1].designator, "V2") << "the socket XV2 holds V2 (ASME Y14.44)";
  EXPECT_EQ(seen[2].designator, "");
  EXPECT_EQ(seen[0].place.page, 4);
  EXPECT_EQ(seen[0].place.printed_number, "8-4");
}

TEST(ShareAForm, KnowsOneTubeByItsForms) {
  EXPECT_TRUE(ShareAForm("6CB6", "6CB6A"));
  EXPECT_TRUE(ShareAForm("12AX7/ECC83", "ECC83"));
  EXPECT_FALSE(ShareAForm("6CB6", "6AU6"));
  EXPECT_FALSE(ShareAForm("12AX7", "ECC83")) << "that they are one tube is no matter of form";
}

}  // namespace
}  // namespace benchleaf
