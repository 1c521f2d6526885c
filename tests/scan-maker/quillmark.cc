#include "scan-maker/cover_page.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/sample_manual.h"
#include "scan-maker/schematic_page.h"
#include "scan-maker/text_page.h"
#include "scan-maker/tube_layout_page.h"

#include <iterator>

namespace benchleaf::scanmaker {
namespace {

using Kind = TextBlock::Kind;

struct Assembly {
  std::string name;
  std::string title;
  std::vector<StagePlan> plan;
};

std::vector<Assembly> Assemblies() {
  return {
      {"A1",
       "VERTICAL AMPLIFIER",
       {{StageKind::kCathodeFollower, {"12AT7/A"}, "INPUT FOLLOWER"},
        {StageKind::kRcPentode, {"6CB6"}, "FIRST AMPLIFIER"},
        {StageKind::kRcPentode, {"6AU6"}, "SECOND AMPLIFIER"},
        {StageKind::kCathodeFollower, {"12AT7/B"}, "DRIVER"}}},
      {"A2",
       "SWEEP GENERATOR",
       {{StageKind::kDiodeProbe, {"1N34A"}, "EXTERNAL TRIGGER"},
        {StageKind::kTransistor, {"2N2222"}, "TRIGGER AMPLIFIER"},
        {StageKind::kMultivibrator, {"12AT7/A", "12AT7/B"}, "SWEEP GATE"},
        {StageKind::kRcPentode, {"6AU6"}, "INTEGRATOR"},
        {StageKind::kCathodeFollower, {"12AU7/A"}, "SWEEP OUTPUT"}}},
      {"A3",
       "HORIZONTAL AMPLIFIER",
       {{StageKind::kRcTriode, {"12AU7/A"}, "PREAMPLIFIER"},
        {StageKind::kRcPentode, {"6AU6"}, "DEFLECTION AMPLIFIER"},
        {StageKind::kCathodeFollower, {"12AU7/B"}, "DRIVER"}}},
      {"A4",
       "POWER SUPPLY AND CATHODE RAY TUBE",
       {{StageKind::kPictureTube, {"5UP1"}, "CATHODE RAY TUBE"},
        {StageKind::kRegulator, {"0A2"}, "REGULATOR"},
        {StageKind::kFullWaveSupply, {"5U4GB"}, "RECTIFIER"}}},
  };
}

std::vector<TextBlock> Description() {
  return {
      {Kind::kTitle, "SECTION 1  DESCRIPTION", {}, {}},
      {Kind::kHeading, "1-1  PURPOSE", {}, {}},
      {Kind::kParagraph,
       "The Model 84 is a general purpose oscilloscope with a five inch cathode ray tube. It shows signals from direct "
       "current to 5 megacycles and is built of four assemblies, each of which has symbols of its own: R1 of one "
       "assembly is not R1 of another.",
       {},
       {}},
      {Kind::kHeading, "1-2  SPECIFICATIONS", {}, {}},
      {Kind::kLeaders,
       "",
       {{"Vertical band width", "5 MC, 3 DB down"},
        {"Vertical sensitivity", "20 millivolts per division"},
        {"Sweep times", ".5 microsecond to 1 second per division"},
        {"Input impedance", "1 megohm and 40 micromicrofarads"},
        {"Power", "105 to 125 volts, 60 cycles, 140 watts"},
        {"Weight", "38 pounds"}},
       {}},
      {Kind::kHeading, "1-3  TUBES", {}, {}},
      {Kind::kParagraph,
       "Assembly A1 has one 12AT7, one 6CB6 and one 6AU6. Assembly A2 has a 12AT7, a 6AU6 and a 12AU7, a 2N2222 "
       "and a "
       "1N34A. Assembly A3 has a 12AU7 and a 6AU6. Assembly A4 holds the 5UP1, a 0A2 and the 5U4GB rectifier.",
       {},
       {}},
      {Kind::kHeading, "1-4  VOLUMES", {}, {}},
      {Kind::kParagraph,
       "This volume has the description, the tube location and the parts list. Volume 2 has the calibration and the "
       "schematic diagrams.",
       {},
       {}},
  };
}

std::vector<TextBlock> Calibration(const std::vector<Circuit>& circuits) {
  auto name = [&](std::size_t assembly, std::size_t stage, const std::string& role) {
    return circuits.at(assembly).assembly + DesignatorOf(circuits.at(assembly), stage, role);
  };
  return {
      {Kind::kTitle, "SECTION 4  CALIBRATION", {}, {}},
      {Kind::kParagraph,
       "Remove the cabinet and allow half an hour for warming up. Symbols carry the number of their assembly in front.",
       {},
       {}},
      {Kind::kTable,
       "",
       {{"Step", "Connect", "Adjust", "Until"},
        {"1", "Voltmeter to the plate of " + name(3, 1, "tube"), "Check only", "150 volts, within 3"},
        {"2", "Voltmeter across " + name(3, 2, "first"), "Check only", "410 to 440 volts"},
        {"3", "Square wave of 1 KC to the input", name(3, 0, "bright"), "Trace is just bright"},
        {"4", "Time marks of 1 millisecond", name(1, 2, "hold"), "One mark a division"},
        {"5", "Sine wave of 50 KC to J1", "Check " + name(1, 1, "transistor"), "Sweep starts at each cycle"}},
       {0.08, 0.40, 0.26, 0.26}},
      {Kind::kHeading, "4-2  FINDING FAULTS", {}, {}},
      {Kind::kParagraph,
       "No sweep: replace " + name(1, 2, "left") + ", then check " + name(1, 2, "cross") + " and " +
           name(1, 2, "leak") + ". A sweep that is short to the right: " + name(2, 1, "tube") +
           " is weak. A trace that drifts up and down: " + name(0, 1, "tube") + " is gassy, or " + name(0, 1, "in") +
           " leaks.",
       {},
       {}},
  };
}

PageFurniture Furniture(Lettering lettering, const std::string& prefix, int number) {
  PageFurniture furniture;
  furniture.head = "QUILLMARK INSTRUMENTS  -  MODEL 84 OSCILLOSCOPE";
  furniture.prefix = prefix;
  furniture.number = number;
  furniture.text = UsualTextStyle(lettering);
  return furniture;
}

SamplePage Copied(MadePage page) { return {std::move(page), Grade::kMedium, 0, true}; }

}  // namespace

std::vector<SampleFile> QuillmarkFiles() {
  PartNumbers numbers("@@#-####-0#", 84);
  std::vector<Circuit> circuits;
  std::vector<ListSection> sections;
  std::vector<Part> prefixed;
  TermBook book;
  for (const Assembly& assembly : Assemblies()) {
    circuits.push_back(DesignCircuit(assembly.title, assembly.name, assembly.plan, numbers, 84 + circuits.size()));
    const std::vector<Part> parts = ListedParts(circuits.back());
    sections.push_back({assembly.name, assembly.title, parts});
    AddTerms(circuits.back(), book);
    for (Part part : parts) {
      part.designator.insert(0, assembly.name);
      book.designators.insert(part.designator);
      prefixed.push_back(part);
    }
  }

  const Cover cover{"QUILLMARK", "MODEL 84", "INSTRUCTION MANUAL", "VOLUME 1", "OSCILLOSCOPE", Cabinet::kOscilloscope};
  SampleFile first{"Quillmark 84/Quillmark 84 vol 1.tif", SampleFormat::kTiff, {}};
  first.pages.push_back(Copied(MakeCoverPage(cover, Furniture(Lettering::kDuplex, "", 1))));
  first.pages.push_back(
      Copied(MakeTextPage("specifications", Description(), Furniture(Lettering::kTypewriter, "1-", 1), book)));
  first.pages.push_back(Copied(
      MakeTubeLayoutPage("TUBE LOCATION, ALL ASSEMBLIES", prefixed, Furniture(Lettering::kDuplex, "2-", 1), 84)));
  const ListLayout layout{ListForm::kColumns, 1, Grouping::kDashes, true, true, 0.72};
  std::vector<MadePage> lists = MakePartsListPages(sections, layout, Furniture(Lettering::kTypewriter, "3-", 1));
  for (std::size_t i = 0; i < lists.size(); ++i) {
    // The second one lay sideways on the scanner.
    const int laid = i == 1 ? 270 : 0;
    first.pages.push_back(Copied(std::move(lists[i])));
    first.pages.back().laid = laid;
  }

  SampleFile second{"Quillmark 84/Quillmark 84 vol 2.pdf", SampleFormat::kPdf, {}};
  Cover second_cover = cover;
  second_cover.volume = "VOLUME 2";
  second.pages.push_back({MakeCoverPage(second_cover, Furniture(Lettering::kDuplex, "", 1)), Grade::kMedium});
  second.pages.push_back(
      {MakeTextPage("alignment", Calibration(circuits), Furniture(Lettering::kTypewriter, "4-", 1), book),
       Grade::kMedium});
  for (std::size_t i = 0; i < circuits.size(); ++i) {
    const std::string number = "5-" + std::to_string(i + 1);
    const std::string title =
        "FIG. " + number + "  SCHEMATIC DIAGRAM, ASSEMBLY " + circuits[i].assembly + " " + circuits[i].title;
    second.pages.push_back({MakeSchematicPage(circuits[i], {11, 8.5, title, kSampleMark, number},
                                              UsualDrawingStyle(Lettering::kHand, 84 + i), 84 + i)
                                .page,
                            Grade::kMedium});
  }
  return {first, second};
}

}  // namespace benchleaf::scanmaker
