#include "scan-maker/cover_page.h"
#include "scan-maker/locator_page.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/sample_manual.h"
#include "scan-maker/schematic_page.h"
#include "scan-maker/text_page.h"
#include "scan-maker/tube_layout_page.h"

namespace benchleaf::scanmaker {
namespace {

using Kind = TextBlock::Kind;

std::vector<StagePlan> Plan() {
  return {
      {StageKind::kCascode, {"6BQ7A/A", "6BQ7A/B"}, "R.F. AMPLIFIER"},
      {StageKind::kRcPentode, {"6U8A/A"}, "MIXER"},
      {StageKind::kRcTriode, {"6U8A/B"}, "OSCILLATOR"},
      {StageKind::kIfAmplifier, {"6CB6A"}, "1ST PIX I.F."},
      {StageKind::kIfAmplifier, {"6CB6"}, "2ND PIX I.F."},
      {StageKind::kIfAmplifier, {"6CB6A"}, "3RD PIX I.F."},
      {StageKind::kTwinDiode, {"6AL5"}, "PIX DETECTOR"},
      {StageKind::kRcPentode, {"6CB6"}, "VIDEO AMPLIFIER"},
      {StageKind::kPictureTube, {"21ZP4"}, "PICTURE TUBE"},
      {StageKind::kRcPentode, {"6AU6"}, "SOUND I.F."},
      {StageKind::kTwinDiode, {"6AL5"}, "RATIO DETECTOR"},
      {StageKind::kRcTriode, {"12AU7/ECC82/A"}, "1ST AUDIO"},
      {StageKind::kPowerOutput, {"6AQ5"}, "AUDIO OUTPUT"},
      {StageKind::kRcTriode, {"12AU7/ECC82/B"}, "SYNC SEPARATOR"},
      {StageKind::kMultivibrator, {"6SN7GTB/A", "6SN7GTB/B"}, "VERTICAL OSCILLATOR"},
      {StageKind::kTwinDiode, {"6AL5"}, "PHASE DETECTOR"},
      {StageKind::kMultivibrator, {"6SN7GTB/A", "6SN7GTB/B"}, "HORIZONTAL OSCILLATOR"},
      {StageKind::kHorizontalOutput, {"6BQ6GTB", "6AX4GT", "1B3GT"}, "HORIZONTAL OUTPUT"},
      {StageKind::kFullWaveSupply, {"5U4GB"}, "RECTIFIER"},
      {StageKind::kHeaterString, {}, ""},
  };
}

// Manuals err, and a restorer wants to be told: one part is listed and drawn nowhere, one is drawn and not listed, one
// has another value on the drawing than in the list.
void Misprint(Circuit& circuit, PartNumbers& numbers) {
  Part interlock;
  interlock.part_class = PartClass::kSwitch;
  interlock.designator = "S2";
  interlock.rating = "interlock, on back cover";
  interlock.description = "Switch, interlock, on back cover";
  interlock.part_number = numbers.For(interlock.part_class, interlock.description);
  circuit.undrawn.push_back(interlock);
  circuit.unlisted.insert(circuit.stages.at(13).At("leak").designator);
  for (auto& [role, part] : circuit.stages.at(7).parts) {
    if (role == "plate") {
      part.drawn_value = part.value == "3.9K" ? "3.3K" : "3.9K";
    }
  }
}

std::vector<std::string> Notes() {
  return {
      "NOTES",
      "1.  RESISTORS ARE 1/2 WATT AND CAPACITORS 500 VOLTS UNLESS MARKED.",
      "2.  MMF IS MICROMICROFARAD, MFD IS MICROFARAD, K IS 1,000 OHMS.",
      "3.  VOLTAGES ARE TO CHASSIS, LINE AT 117 VOLTS, NO SIGNAL.",
      "4.  ARROWS AT CONTROLS SHOW CLOCKWISE ROTATION.",
      "5.  LETTERS AT THE ENDS OF WIRES TELL WHERE THEY GO ON.",
  };
}

std::vector<TextBlock> Contents(std::size_t list_pages) {
  const std::string last = std::to_string(7 + list_pages);
  return {
      {Kind::kTitle, "TABLE OF CONTENTS", {}, {}},
      {Kind::kLeaders,
       "",
       {{"Specifications", "2"},
        {"Sweep and trap alignment", "3"},
        {"Tube location", "4"},
        {"Parts location, bottom of chassis", "5"},
        {"Parts list", "6"},
        {"Schematic diagram, fold-out", last}},
       {}},
      {Kind::kTitle, "SPECIFICATIONS", {}, {}},
      {Kind::kLeaders,
       "",
       {{"Picture tube", "21ZP4, rectangular"},
        {"Channels", "2 through 13"},
        {"Picture carrier I.F.", "45.75 MC"},
        {"Sound carrier I.F.", "41.25 MC"},
        {"Antenna input", "300 ohms, balanced"},
        {"Power", "117 volts, 60 cycles, 185 watts"},
        {"High voltage at picture tube", "16,500 volts"}},
       {}},
      {Kind::kHeading, "WARNING", {}, {}},
      {Kind::kParagraph,
       "High voltages are found in this chassis. Do not work on it with the power on unless you know the precautions "
       "that "
       "television service asks for. The picture tube is under vacuum: wear goggles when you handle it.",
       {},
       {}},
      {Kind::kParagraph,
       "Chassis TV-217 is used in table and console models of the season. Where their wiring differs the schematic "
       "says so "
       "in a note. Replace tubes only with types of the same number.",
       {},
       {}},
  };
}

std::vector<TextBlock> Alignment(const Circuit& circuit) {
  auto name = [&](std::size_t stage, const std::string& role) { return DesignatorOf(circuit, stage, role); };
  return {
      {Kind::kTitle, "VIDEO I.F. ALIGNMENT", {}, {}},
      {Kind::kParagraph,
       "Connect a bias supply of minus 3 volts to the A.G.C. line. Connect the oscilloscope through 10K to the load "
       "of " +
           name(6, "tube") + ". Keep the sweep output low enough that the curve does not flatten.",
       {},
       {}},
      {Kind::kTable,
       "",
       {{"Step", "Generator to", "Frequency", "Adjust", "Result"},
        {"1", "Grid of " + name(5, "tube"), "44.0 MC", name(5, "if") + " top slug", "Maximum"},
        {"2", "Grid of " + name(4, "tube"), "45.5 MC", name(4, "if") + " top slug", "Maximum"},
        {"3", "Grid of " + name(3, "tube"), "42.5 MC", name(3, "if") + " bottom slug", "Maximum"},
        {"4", "Mixer grid, " + name(1, "tube"), "41.25 MC", "Sound trap", "Minimum"},
        {"5", "Mixer grid, " + name(1, "tube"), "Sweep 40 to 48 MC", "Retouch steps 1 to 3", "Curve of Fig. 2"}},
       {0.08, 0.27, 0.21, 0.24, 0.20}},
      {Kind::kHeading, "HORIZONTAL OSCILLATOR", {}, {}},
      {Kind::kParagraph,
       "Short the grid of " + name(16, "right") + " to the chassis. Turn " + name(16, "hold") +
           " until the picture stands for a moment, then remove the short. If the oscillator does not fall in, check " +
           name(16, "cross") + " and " + name(16, "leak") + ".",
       {},
       {}},
      {Kind::kHeading, "DRIVE AND HIGH VOLTAGE", {}, {}},
      {Kind::kParagraph,
       "A dark raster points to " + name(17, "output") + " or " + name(17, "damper") + ". If the screen resistor " +
           name(17, "screen") + " is discolored replace it together with " + name(17, "screen cap") +
           " before a new tube is put in.",
       {},
       {}},
  };
}

}  // namespace

std::vector<SampleFile> OsterwickFiles() {
  PartNumbers numbers("@@A####", 217);
  Circuit circuit = DesignCircuit("", "", Plan(), numbers, 217);
  Misprint(circuit, numbers);
  TermBook book;
  AddTerms(circuit, book);
  const std::vector<Part> parts = ListedParts(circuit);

  PageFurniture printed;
  printed.head = "OSTERWICK TELEVISION  -  CHASSIS TV-217";
  printed.text = UsualTextStyle(Lettering::kBook);
  printed.text.cap_height_px = 27;
  PageFurniture drawn = printed;
  drawn.text = UsualTextStyle(Lettering::kDrafting);

  ListLayout layout{ListForm::kRuled, 2, Grouping::kThrough, false, true, 1};
  printed.number = 6;
  std::vector<MadePage> lists = MakePartsListPages({{"", "", parts}}, layout, printed);

  SampleFile file{"Osterwick TV-217/TV-217 service manual.pdf", SampleFormat::kPdf, {}};
  auto add = [&](MadePage page, Grade grade = Grade::kMedium) { file.pages.push_back({std::move(page), grade}); };
  add(MakeCoverPage({"OSTERWICK", "CHASSIS TV-217", "SERVICE MANUAL", "", "TELEVISION RECEIVERS", Cabinet::kTelevision},
                    drawn));
  printed.number = 2;
  add(MakeTextPage("contents", Contents(lists.size() - 1), printed, book));
  printed.number = 3;
  // A bad copy of a page, as many files have one.
  add(MakeTextPage("alignment", Alignment(circuit), printed, book), Grade::kSevere);
  drawn.number = 4;
  add(MakeTubeLayoutPage("TUBE LOCATION, CHASSIS TV-217", parts, drawn, 217));
  drawn.number = 5;
  add(MakeLocatorPage("PARTS LOCATION, BOTTOM OF CHASSIS", parts, drawn, 217));
  const std::size_t fold_out = 6 + lists.size();
  for (MadePage& list : lists) {
    add(std::move(list));
  }
  add(MakeSchematicPage(circuit,
                        {24, 15, "SCHEMATIC DIAGRAM, CHASSIS TV-217", kSampleMark, std::to_string(fold_out), Notes()},
                        UsualDrawingStyle(Lettering::kDuplex, 217), 217)
          .page);
  return {file};
}

}  // namespace benchleaf::scanmaker
