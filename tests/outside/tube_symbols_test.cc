// Tube types that others have drawn: KiCad's library of valves (Debian's kicad-symbols) and the tubes of lepton-eda.

#include "outside/s_expression.h"
#include "places/places.h"

#include "benchleaf/tubes/decode.h"
#include "benchleaf/tubes/tube_table.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace benchleaf::outside {
namespace {

const TubeTable& Tubes() {
  static const auto table = TubeTable::Load({SourceFolder() / "config" / "tubes.tsv"});
  return table.value();
}

struct DrawnTube {
  std::string type;
  std::string description;  // "double triode"
  std::string footprint;    // "Valve:Valve_Noval_P"
};

std::string Property(const Node& symbol, const std::string& name) {
  for (const Node* property : symbol.All("property")) {
    if (property->Text(1) == name) return property->Text(2);
  }
  return "";
}

std::vector<DrawnTube> KicadValves() {
  std::ifstream in("/usr/share/kicad/symbols/Valve.kicad_sym");
  std::ostringstream text;
  text << in.rdbuf();
  const Node library = ParseSExpression(text.str());
  std::vector<DrawnTube> tubes;
  for (const Node* symbol : library.All("symbol")) {
    tubes.push_back({symbol->Text(1), Property(*symbol, "ki_description"), Property(*symbol, "Footprint")});
  }
  return tubes;
}

// Names of the library that are no type numbers.
const std::map<std::string, const char*> kNoNumbers = {
    {"STABI", "any regulator tube"},
    {"CK6418", "a maker's letters before 6418"},
    {"CK548DX", "a maker's own number of the 6418"},
    {"NOS-6418", "new old stock: a seller's words before 6418"},
};

TEST(KicadValves, AreDecoded) {
  std::vector<DrawnTube> tubes = KicadValves();
  ASSERT_GE(tubes.size(), 24U) << "install kicad-symbols";
  for (const DrawnTube& tube : tubes) {
    if (kNoNumbers.count(tube.type) != 0) continue;
    const DecodedType decoded = DecodeTubeType(tube.type);
    EXPECT_TRUE(decoded.complete) << tube.type;
    EXPECT_NE(Tubes().Find(decoded.type), nullptr) << tube.type;
  }
}

TEST(KicadValves, AreOfTheKindThatNumberAndTableSay) {
  for (const DrawnTube& tube : KicadValves()) {
    const TubeEntry* entry = Tubes().Find(DecodeTubeType(tube.type).type);
    if (entry == nullptr || kNoNumbers.count(tube.type) != 0) continue;
    const DecodedType decoded = DecodeTubeType(tube.type);
    std::string meanings;
    for (const TypePart& part : decoded.parts) meanings += part.meaning + " ";
    for (const char* kind : {"diode", "triode", "pentode", "heptode", "indicator"}) {
      if (tube.description.find(kind) == std::string::npos) continue;
      EXPECT_NE(entry->tube_class.find(kind), std::string::npos)
          << tube.type << " is a " << tube.description << ", the table says " << entry->tube_class;
      if (decoded.system == TypeSystem::kEuropean) {
        EXPECT_NE(meanings.find(kind), std::string::npos) << tube.type << " is a " << tube.description;
      }
    }
  }
}

TEST(KicadValves, HaveTheBaseThatNumberAndTableSay) {
  const std::map<std::string, std::string> bases = {
      {"Valve_Noval", "noval"}, {"Valve_Octal", "octal"}, {"Valve_Mini_P", "7-pin miniature"}};
  for (const DrawnTube& tube : KicadValves()) {
    const DecodedType decoded = DecodeTubeType(tube.type);
    const TubeEntry* entry = Tubes().Find(decoded.type);
    for (const auto& [footprint, base] : bases) {
      if (tube.footprint.find(footprint) == std::string::npos || tube.footprint.find("Pentode") != std::string::npos ||
          entry == nullptr) {
        continue;
      }
      EXPECT_EQ(entry->base, base) << tube.type;
      EXPECT_TRUE(decoded.base.empty() || decoded.base == base) << tube.type << ": " << decoded.base;
    }
  }
}

// 12SA7-1.sym and others: the radio of five tubes on one 150 mA string across the line.
TEST(LeptonTubes, AreDecodedAndMakeALineString) {
  double volts = 0;
  int tubes = 0;
  for (const auto& file : std::filesystem::directory_iterator("/usr/share/lepton-eda/sym/tube")) {
    const std::string name = file.path().filename().string();
    const DecodedType decoded = DecodeTubeType(name.substr(0, name.find("-1.sym")));
    EXPECT_TRUE(decoded.complete) << name;
    const TubeEntry* entry = Tubes().Find(decoded.type);
    ASSERT_NE(entry, nullptr) << name;
    EXPECT_EQ(entry->heater.at(0).amps, 0.15) << name;
    volts += entry->heater.at(0).volts.value_or(0);
    ++tubes;
  }
  EXPECT_EQ(tubes, 5) << "install lepton-eda";
  EXPECT_NEAR(volts, 120, 5) << "three of 12.6 V, 35 V and 50 V, made for a line of 110 to 125 V";
}

}  // namespace
}  // namespace benchleaf::outside
