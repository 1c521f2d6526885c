#include "scan-maker/stage_recipes.h"

#include <map>

namespace benchleaf::scanmaker {
namespace {

constexpr PartClass kR = PartClass::kResistor;
constexpr PartClass kC = PartClass::kCapacitor;
constexpr PartClass kCan = PartClass::kElectrolytic;
constexpr PartClass kVar = PartClass::kVariableCapacitor;
constexpr PartClass kL = PartClass::kCoil;
constexpr PartClass kT = PartClass::kTransformer;
constexpr PartClass kV = PartClass::kTube;
constexpr PartClass kPot = PartClass::kControl;

// Values are those that circuits of the time use in such places: common practice, no source.
std::map<StageKind, std::vector<RoleRecipe>> AllRecipes() {
  const std::string grid_leak = "470K;1/2 W|1 MEG;1/2 W|2.2 MEG;1/2 W|680K;1/2 W";
  const std::string coupling = ".01 MFD;400 V|.05 MFD;600 V|.022 MFD;400 V|.005 MFD;600 V|.1 MFD;400 V";
  const std::string cathode = "68 OHM;1/2 W|100 OHM;1/2 W|180 OHM;1/2 W|1500 OHM;1/2 W|2.2K;1/2 W";
  const std::string bypass = ".05 MFD;200 V|.1 MFD;200 V|.01 MFD;400 V|5000 MMF;500 V";
  const std::string screen = "22K;1/2 W|33K;1 W|47K;1/2 W|100K;1/2 W|6.8K;1 W";
  const std::string plate = "47K;1/2 W|100K;1/2 W|220K;1/2 W|270K;1/2 W|33K;1 W|4.7K;2 W";
  const std::string small = "47 MMF;500 V|100 MMF;500 V|220 MMF;500 V|250 MMF;500 V|10 MMF;500 V|1000 MMF;500 V";

  std::map<StageKind, std::vector<RoleRecipe>> recipes;
  recipes[StageKind::kAntenna] = {
      {"loop", kL, ";loop antenna|;antenna, ferrite rod"},
      {"tune", kVar, "365 MMF;tuning|420 MMF;tuning", 'A'},
      {"trim", kVar, "3-30 MMF;trimmer"},
      {"couple", kC, small},
      {"leak", kR, grid_leak},
  };
  recipes[StageKind::kConverter] = {
      {"tube", kV, ""},
      {"osc", kL, ";oscillator"},
      {"tune", kVar, "120 MMF;tuning", 'B'},
      {"grid cap", kC, "47 MMF;500 V|56 MMF;500 V"},
      {"grid leak", kR, "22K;1/2 W|33K;1/2 W"},
      {"if", kT, ";1st I.F., 455 KC"},
      {"screen", kR, screen},
      {"screen cap", kC, bypass},
  };
  recipes[StageKind::kIfAmplifier] = {
      {"tube", kV, ""},
      {"cathode", kR, cathode},
      {"cathode cap", kC, bypass},
      {"screen", kR, screen},
      {"screen cap", kC, bypass},
      {"if", kT, ";I.F., output|;I.F., interstage"},
      {"feed", kR, "1K;1/2 W|2.2K;1/2 W|1000 OHM;1 W"},
      {"feed cap", kC, bypass},
  };
  recipes[StageKind::kRcPentode] = {
      {"in", kC, coupling},        {"tube", kV, ""},       {"leak", kR, grid_leak},    {"cathode", kR, cathode},
      {"cathode cap", kC, bypass}, {"screen", kR, screen}, {"screen cap", kC, bypass}, {"plate", kR, plate},
  };
  recipes[StageKind::kRcTriode] = {
      {"in", kC, coupling},        {"tube", kV, ""},     {"leak", kR, grid_leak}, {"cathode", kR, cathode},
      {"cathode cap", kC, bypass}, {"plate", kR, plate},
  };
  recipes[StageKind::kDetectorTriode] = {
      {"rf cap", kC, small},
      {"volume", kPot, "500K;volume|1 MEG;volume"},
      {"in", kC, ".005 MFD;600 V|.01 MFD;400 V"},
      {"tube", kV, ""},
      {"leak", kR, "10 MEG;1/2 W|6.8 MEG;1/2 W"},
      {"plate", kR, "220K;1/2 W|270K;1/2 W"},
      {"plate cap", kC, small},
      {"load", kR, "47K;1/2 W"},
  };
  recipes[StageKind::kTwinDiode] = {
      {"in", kC, small}, {"tube", kV, ""}, {"top", kR, grid_leak}, {"bottom", kR, grid_leak}, {"out", kC, coupling},
  };
  recipes[StageKind::kPowerOutput] = {
      {"in", kC, coupling},
      {"tube", kV, ""},
      {"leak", kR, grid_leak},
      {"cathode", kR, "150 OHM;1 W|270 OHM;1 W|330 OHM;2 W"},
      {"cathode cap", kCan, "20 MFD;25 V|25 MFD;25 V"},
      {"output", kT, ";audio output"},
      {"tone cap", kC, ".01 MFD;600 V|.005 MFD;600 V"},
      {"speaker", PartClass::kSpeaker, ";4 inch, 3.2 ohm|;6 inch, 3.2 ohm"},
  };
  recipes[StageKind::kHalfWaveSupply] = {
      {"plug", PartClass::kPlug, ";line cord and plug"},
      {"switch", PartClass::kSwitch, ";on-off, on volume control"},
      {"line cap", kC, ".05 MFD;400 V"},
      {"tube", kV, ""},
      {"surge", kR, "33 OHM;1 W|22 OHM;1 W"},
      {"filter", kR, "1200 OHM;1 W|1000 OHM;2 W"},
      {"first", kCan, "50 MFD;150 V", 'A'},
      {"second", kCan, "30 MFD;150 V", 'B'},
      {"lamp", PartClass::kLamp, ";pilot, No. 47"},
  };
  recipes[StageKind::kFullWaveSupply] = {
      {"plug", PartClass::kPlug, ";line cord and plug"},
      {"switch", PartClass::kSwitch, ";power, S.P.S.T."},
      {"fuse", PartClass::kFuse, "3 A;250 V|2 A;250 V"},
      {"power", kT, ";power, 117 V 60 cycle"},
      {"tube", kV, ""},
      {"choke", kL, ";filter choke"},
      {"first", kCan, "80 MFD;450 V|40 MFD;450 V", 'A'},
      {"second", kCan, "40 MFD;450 V|20 MFD;450 V", 'B'},
      {"bleeder", kR, "15K;10 W|22K;5 W"},
  };
  recipes[StageKind::kHeaterString] = {{"first choke", kL, ";heater R.F. choke"},
                                       {"first cap", kC, "1000 MMF;500 V"},
                                       {"second cap", kC, "1000 MMF;500 V"}};
  recipes[StageKind::kCascode] = {
      {"input", kL, ";R.F. input, all channels"},
      {"in cap", kC, small},
      {"lower", kV, ""},
      {"upper", kV, ""},
      {"leak", kR, grid_leak},
      {"divider", kR, grid_leak},
      {"divider cap", kC, "1000 MMF;500 V|680 MMF;500 V"},
      {"neutral", kVar, ".5-3 MMF;neutralizing"},
      {"plate coil", kL, ";R.F. plate, all channels"},
  };
  recipes[StageKind::kMultivibrator] = {
      {"in", kC, coupling},       {"left", kV, ""},
      {"right", kV, ""},          {"left plate", kR, plate},
      {"right plate", kR, plate}, {"cross", kC, coupling},
      {"leak", kR, grid_leak},    {"hold", kPot, "50K;hold|1 MEG;hold|100K;frequency"},
      {"cathode", kR, cathode},
  };
  recipes[StageKind::kHorizontalOutput] = {
      {"in", kC, coupling},
      {"output", kV, ""},
      {"damper", kV, ""},
      {"rectifier", kV, ""},
      {"leak", kR, grid_leak},
      {"cathode", kR, "100 OHM;2 W"},
      {"screen", kR, "10K;4 W|8.2K;4 W"},
      {"screen cap", kC, ".1 MFD;400 V"},
      {"flyback", kT, ";horizontal output"},
      {"boost", kC, ".1 MFD;600 V|.047 MFD;600 V"},
      {"drop", kR, "3.3 OHM;1/2 W"},
      {"high volt", kC, "500 MMF;20 KV"},
  };
  recipes[StageKind::kPictureTube] = {
      {"couple", kC, ".1 MFD;400 V"},
      {"tube", kV, ""},
      {"cathode", kR, "100K;1/2 W|150K;1/2 W"},
      {"bright", kPot, "100K;brightness|50K;intensity"},
      {"limit", kR, grid_leak},
      {"anode", kR, "1 MEG;1 W"},
  };
  recipes[StageKind::kRegulator] = {
      {"series", kR, "2.5K;10 W|3.3K;5 W"}, {"tube", kV, ""}, {"bypass", kC, ".1 MFD;400 V"}};
  recipes[StageKind::kDiodeProbe] = {{"jack", PartClass::kConnector, ";input, coaxial"},
                                     {"in", kC, coupling},
                                     {"diode", PartClass::kDiode, ""},
                                     {"load", kR, grid_leak},
                                     {"out", kC, small}};
  recipes[StageKind::kTransistor] = {{"in", kC, coupling},
                                     {"transistor", PartClass::kTransistor, ""},
                                     {"upper", kR, "47K;1/4 W|68K;1/4 W"},
                                     {"lower", kR, "10K;1/4 W|15K;1/4 W"},
                                     {"collector", kR, "4.7K;1/4 W|2.2K;1/2 W"},
                                     {"emitter", kR, "1K;1/4 W|470 OHM;1/4 W"},
                                     {"emitter cap", kCan, "10 MFD;25 V"}};
  recipes[StageKind::kCathodeFollower] = {{"in", kC, coupling},
                                          {"tube", kV, ""},
                                          {"leak", kR, grid_leak},
                                          {"stopper", kR, "47 OHM;1/2 W|100 OHM;1/2 W"},
                                          {"cathode", kR, "15K;2 W|10K;2 W|22K;1 W"},
                                          {"out", kC, coupling}};
  return recipes;
}

}  // namespace

const std::vector<RoleRecipe>& RecipeFor(StageKind kind) {
  static const std::map<StageKind, std::vector<RoleRecipe>> kRecipes = AllRecipes();
  return kRecipes.at(kind);
}

}  // namespace benchleaf::scanmaker
