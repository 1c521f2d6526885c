#include "scan-maker/parts_list_page.h"
#include "scan-maker/sample_manual.h"
#include "scan-maker/schematic_page.h"
#include "scan-maker/text_page.h"

namespace benchleaf::scanmaker {
namespace {

using Kind = TextBlock::Kind;

std::vector<TextBlock> Notes(const Circuit& circuit) {
  auto name = [&](std::size_t stage, const std::string& role) { return DesignatorOf(circuit, stage, role); };
  return {
      {Kind::kTitle, "DUNMARROW A-6 AMPLIFIER", {}, {}},
      {Kind::kTitle, "SERVICE NOTES", {}, {}},
      {Kind::kHeading, "SPECIFICATIONS", {}, {}},
      {Kind::kLeaders,
       "",
       {{"Power output", "4 watts"},
        {"Input for full output", "5 millivolts"},
        {"Output impedance", "3.2 ohms"},
        {"Power", "117 volts, 60 cycles, 48 watts"}},
       {}},
      {Kind::kHeading, "CIRCUIT", {}, {}},
      {Kind::kParagraph,
       "The microphone stage " + name(0, "tube") +
           " is a 6AU6, resistance coupled to both halves of a 12AX7. The output "
           "tube " +
           name(3, "tube") + " is a 6AQ5. A 5Y3GT supplies the plates through the choke " + name(4, "choke") + ".",
       {},
       {}},
      {Kind::kHeading, "HUM", {}, {}},
      {Kind::kParagraph,
       "If hum is heard with the gain turned down, replace " + name(4, "first") +
           " first. Hum that goes with the gain "
           "comes from " +
           name(0, "tube") + " or from an open " + name(0, "screen cap") + ".",
       {},
       {}},
      {Kind::kHeading, "DISTORTION", {}, {}},
      {Kind::kParagraph,
       "Measure across " + name(3, "cathode") + ". More than 15 volts there means that " + name(3, "in") +
           " leaks. Always replace both.",
       {},
       {}},
  };
}

}  // namespace

std::vector<SampleFile> DunmarrowFiles() {
  PartNumbers numbers("@@-###-@@##", 6);
  const Circuit circuit = DesignCircuit("", "",
                                        {{StageKind::kRcPentode, {"6AU6"}, "MICROPHONE"},
                                         {StageKind::kRcTriode, {"12AX7/A"}, "MIXER"},
                                         {StageKind::kRcTriode, {"12AX7/B"}, "DRIVER"},
                                         {StageKind::kPowerOutput, {"6AQ5"}, "OUTPUT"},
                                         {StageKind::kFullWaveSupply, {"5Y3GT"}, "RECTIFIER"}},
                                        numbers, 6);
  TermBook book;
  AddTerms(circuit, book);
  PageFurniture furniture;
  furniture.head = "DUNMARROW SOUND  -  AMPLIFIER A-6";
  furniture.text = UsualTextStyle(Lettering::kBook);

  SampleFile file{"scan0047.pdf", SampleFormat::kPdfWithLayer, {}};
  file.pages.push_back({MakeTextPage("text", Notes(circuit), furniture, book)});
  file.pages.push_back({MakeSchematicPage(circuit, {11, 8.5, "AMPLIFIER A-6, CIRCUIT", kSampleMark, "2"},
                                          UsualDrawingStyle(Lettering::kDrafting, 6), 6)
                            .page});
  furniture.number = 3;
  const ListLayout layout{ListForm::kDesignatorLast, 1, Grouping::kDashes, true, false, 1};
  for (MadePage& list : MakePartsListPages({{"", "", ListedParts(circuit)}}, layout, furniture)) {
    file.pages.push_back({std::move(list)});
  }
  return {file};
}

}  // namespace benchleaf::scanmaker
