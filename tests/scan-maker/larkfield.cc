#include "scan-maker/cover_page.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/sample_manual.h"
#include "scan-maker/schematic_page.h"
#include "scan-maker/text_page.h"
#include "scan-maker/tube_layout_page.h"

namespace benchleaf::scanmaker {
namespace {

using Kind = TextBlock::Kind;

std::vector<TextBlock> Specifications() {
  return {
      {Kind::kTitle, "SPECIFICATIONS", {}, {}},
      {Kind::kLeaders,
       "",
       {{"Power supply", "117 volts, 60 cycles, 42 watts"},
        {"Tuning range", "535 to 1620 KC"},
        {"Intermediate frequency", "455 KC"},
        {"Power output, undistorted", "2.5 watts"},
        {"Loudspeaker", "4 inch, 3.2 ohms"},
        {"Sensitivity for 50 milliwatts", "40 microvolts"}},
       {}},
      {Kind::kHeading, "TUBE COMPLEMENT", {}, {}},
      {Kind::kTable,
       "",
       {{"Symbol", "Type", "Function"},
        {"V1", "6BE6", "Converter"},
        {"V2", "6BA6", "I.F. amplifier"},
        {"V3", "6AT6", "Detector, A.V.C. and first audio"},
        {"V4", "6AQ5", "Audio output"},
        {"V5", "5Y3GT", "Rectifier"}},
       {0.18, 0.22, 0.60}},
      {Kind::kHeading, "GENERAL", {}, {}},
      {Kind::kParagraph,
       "The Model 512 is a five tube superheterodyne receiver for the standard broadcast band. It works from a power "
       "line of 105 to 125 volts only. Do not connect it to direct current.",
       {},
       {}},
      {Kind::kParagraph,
       "Before the chassis is taken from the cabinet, pull off the two knobs and remove the four screws at the bottom. "
       "The loop stays in the cabinet; unsolder its two leads.",
       {},
       {}},
      {Kind::kParagraph,
       "The filter capacitors hold a charge after the set has been turned off. Discharge them before you touch the "
       "wiring.",
       {},
       {}},
  };
}

std::vector<TextBlock> Alignment(const Circuit& circuit) {
  const std::string mixer = DesignatorOf(circuit, 1, "tube");
  const std::string first_if = DesignatorOf(circuit, 1, "if");
  const std::string second_if = DesignatorOf(circuit, 2, "if");
  const std::string trimmer = DesignatorOf(circuit, 0, "trim");
  const std::string oscillator = DesignatorOf(circuit, 1, "osc");
  return {
      {Kind::kTitle, "ALIGNMENT PROCEDURE", {}, {}},
      {Kind::kParagraph,
       "Let the receiver and the signal generator warm up for fifteen minutes. Connect an output meter across the "
       "voice "
       "coil, turn the volume control to maximum, and keep the generator output as low as a reading of the meter "
       "allows.",
       {},
       {}},
      {Kind::kTable,
       "",
       {{"Step", "Generator to", "Generator at", "Dial at", "Adjust", "For"},
        {"1", "Grid of " + mixer + " through .1 MFD", "455 KC", "High end, no signal", second_if + ", top and bottom",
         "Maximum"},
        {"2", "Same as step 1", "455 KC", "Same", first_if + ", top and bottom", "Maximum"},
        {"3", "Loop of wire near the set", "1620 KC", "1620 KC", "Trimmer on gang", "Maximum"},
        {"4", "Same as step 3", "1400 KC", "1400 KC", trimmer, "Maximum"},
        {"5", "Same as step 3", "600 KC", "600 KC", oscillator + ", rock the dial", "Maximum"},
        {"6", "Repeat steps 3 to 5 until no gain is had", "", "", "", ""}},
       {0.08, 0.26, 0.14, 0.18, 0.20, 0.14}},
      {Kind::kHeading, "VOLTAGE MEASUREMENTS", {}, {}},
      {Kind::kParagraph,
       "Voltages are from the chassis, with a vacuum tube voltmeter, line at 117 volts and no signal. Readings may "
       "differ "
       "by twenty per cent.",
       {},
       {}},
      {Kind::kTable,
       "",
       {{"Tube", "Plate", "Screen", "Cathode"},
        {"V1 6BE6", "235", "95", "0"},
        {"V2 6BA6", "230", "95", "1.1"},
        {"V3 6AT6", "88", "-", "0"},
        {"V4 6AQ5", "242", "235", "12.4"},
        {"V5 5Y3GT", "280 A-C", "-", "290"}},
       {0.34, 0.22, 0.22, 0.22}},
  };
}

}  // namespace

std::vector<SampleFile> LarkfieldFiles() {
  PartNumbers numbers("@@-####-#", 512);
  const Circuit circuit = DesignCircuit("", "",
                                        {{StageKind::kAntenna, {}, ""},
                                         {StageKind::kConverter, {"6BE6"}, "CONVERTER"},
                                         {StageKind::kIfAmplifier, {"6BA6"}, "I.F. AMPLIFIER"},
                                         {StageKind::kDetectorTriode, {"6AT6"}, "DET. - 1ST AUDIO"},
                                         {StageKind::kPowerOutput, {"6AQ5"}, "AUDIO OUTPUT"},
                                         {StageKind::kFullWaveSupply, {"5Y3GT"}, "RECTIFIER"},
                                         {StageKind::kHeaterString, {}, ""}},
                                        numbers, 512);
  TermBook book;
  AddTerms(circuit, book);
  const std::vector<Part> parts = ListedParts(circuit);

  PageFurniture furniture;
  furniture.head = "LARKFIELD RADIO  -  MODEL 512";
  furniture.text = UsualTextStyle(Lettering::kTypewriter);
  PageFurniture drawn = furniture;
  drawn.text = UsualTextStyle(Lettering::kSimplex);

  std::vector<MadePage> pages;
  pages.push_back(MakeCoverPage(
      {"LARKFIELD", "MODEL 512", "SERVICE MANUAL", "", "FIVE TUBE TABLE RECEIVER", Cabinet::kTableRadio}, drawn));
  furniture.number = 2;
  pages.push_back(MakeTextPage("specifications", Specifications(), furniture, book));
  furniture.number = 3;
  pages.push_back(MakeTextPage("alignment", Alignment(circuit), furniture, book));
  drawn.number = 4;
  pages.push_back(MakeTubeLayoutPage("TUBE LOCATION, TOP OF CHASSIS", parts, drawn, 512));
  pages.push_back(MakeSchematicPage(circuit, {14, 8.5, "SCHEMATIC DIAGRAM, MODEL 512", kSampleMark, "5"},
                                    UsualDrawingStyle(Lettering::kSimplex, 512), 512)
                      .page);
  furniture.number = 6;
  for (MadePage& page : MakePartsListPages({{"", "", parts}}, {ListForm::kLeaders}, furniture)) {
    pages.push_back(std::move(page));
  }

  std::vector<SampleFile> files;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const bool cover = i == 0;
    std::string path = "Larkfield 512/page-0";
    path.append(std::to_string(i + 1)).append(cover ? ".png" : ".jpg");
    SamplePage page{std::move(pages[i])};
    page.one_bit = cover;
    files.push_back({path, cover ? SampleFormat::kPng : SampleFormat::kJpeg, {std::move(page)}});
  }
  return files;
}

}  // namespace benchleaf::scanmaker
