#include "bench/made_manuals.h"

#include "outside/outside_pages.h"
#include "scan-maker/circuit.h"
#include "scan-maker/locator_page.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/schematic_page.h"

#include <algorithm>
#include <set>
#include <utility>

namespace benchleaf::bench {
namespace {

using scanmaker::Circuit;
using scanmaker::Grouping;
using scanmaker::Lettering;
using scanmaker::ListForm;
using scanmaker::ListLayout;
using scanmaker::MadePage;
using scanmaker::PageFurniture;
using scanmaker::Part;
using scanmaker::PartClass;
using scanmaker::PartNumbers;

struct Invented {
  std::uint64_t seed;
  int stages;
  Lettering drawing;
  Lettering list;
  ListLayout layout;
};

const std::vector<Invented>& InventedOf(ManualHalf half) {
  static const std::vector<Invented> kDevelopment = {
      {401, 12, Lettering::kSimplex, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kNone}},
      {402, 16, Lettering::kHand, Lettering::kBook, {ListForm::kLeaders, 1, Grouping::kDashes}},
      {403, 14, Lettering::kDrafting, Lettering::kTypewriter, {ListForm::kRuled, 1, Grouping::kThrough, true}},
      {404, 12, Lettering::kDuplex, Lettering::kTypewriter, {ListForm::kColumns, 2, Grouping::kDashes}},
  };
  static const std::vector<Invented> kHeldOut = {
      {451, 14, Lettering::kHand, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kDashes}},
      {452, 12, Lettering::kDuplex, Lettering::kBook, {ListForm::kRuled, 1, Grouping::kNone}},
      {453, 16, Lettering::kSimplex, Lettering::kTypewriter, {ListForm::kLeaders, 1, Grouping::kNone}},
      {454, 12, Lettering::kDrafting, Lettering::kTypewriter, {ListForm::kDesignatorLast, 1, Grouping::kThrough}},
  };
  return half == ManualHalf::kDevelopment ? kDevelopment : kHeldOut;
}

void AddList(std::vector<MadePage>& pages, const std::vector<Part>& parts, const ListLayout& layout,
             Lettering lettering) {
  PageFurniture furniture;
  furniture.head = "SERVICE DATA";
  furniture.number = 7;
  furniture.text = scanmaker::UsualTextStyle(lettering);
  for (MadePage& page : scanmaker::MakePartsListPages({{"", "", parts}}, layout, furniture)) {
    pages.push_back(std::move(page));
  }
}

MadeManual Make(const Invented& one) {
  const Circuit circuit = scanmaker::RandomCircuit(one.stages, one.seed);
  const std::vector<Part> parts = scanmaker::ListedParts(circuit);
  MadeManual manual{"invented " + std::to_string(one.seed), one.seed, {}};
  manual.pages.push_back(scanmaker::MakeSchematicPage(circuit,
                                                      {17, 11, "SCHEMATIC DIAGRAM", scanmaker::kSampleMark, "5"},
                                                      scanmaker::UsualDrawingStyle(one.drawing, one.seed), one.seed)
                             .page);
  PageFurniture furniture;
  furniture.number = 6;
  furniture.text = scanmaker::UsualTextStyle(one.drawing);
  manual.pages.push_back(scanmaker::MakeLocatorPage("PARTS LOCATION", parts, furniture, one.seed));
  AddList(manual.pages, parts, one.layout, one.list);
  return manual;
}

// The letters of IEEE 315-1975 clause 22.4 for the classes that the lists of the scan maker know; other parts are
// listed without a class heading of their own.
PartClass ClassOf(const std::string& letters) {
  static const std::vector<std::pair<std::string, PartClass>> kClasses = {
      {"C", PartClass::kCapacitor},   {"R", PartClass::kResistor}, {"Q", PartClass::kTransistor},
      {"D", PartClass::kDiode},       {"CR", PartClass::kDiode},   {"L", PartClass::kCoil},
      {"F", PartClass::kFuse},        {"S", PartClass::kSwitch},   {"SW", PartClass::kSwitch},
      {"T", PartClass::kTransformer}, {"RV", PartClass::kControl}, {"P", PartClass::kPlug},
  };
  const auto found =
      std::find_if(kClasses.begin(), kClasses.end(), [&](const auto& one) { return one.first == letters; });
  return found == kClasses.end() ? PartClass::kConnector : found->second;
}

// U3A is a section of U3, and listed as that.
std::string ListedAs(const std::string& drawn) {
  const std::size_t last_figure = drawn.find_last_of("0123456789");
  return drawn.substr(0, last_figure + 1);
}

std::vector<Part> PartsOf(const MadePage& drawing, std::uint64_t seed) {
  PartNumbers numbers("@@-####-#", seed);
  std::set<std::pair<std::pair<std::string, int>, std::string>> listed;
  for (const scanmaker::MadeTerm& term : drawing.terms) {
    if (term.kind == "designator") {
      const std::string name = ListedAs(term.text);
      const std::size_t figures = name.find_first_of("0123456789");
      listed.insert({{name.substr(0, figures), std::stoi(name.substr(figures))}, name});
    }
  }
  std::vector<Part> parts;
  for (const auto& [key, name] : listed) {
    Part part;
    part.part_class = ClassOf(key.first);
    part.designator = name;
    part.description = "As drawn";
    part.part_number = numbers.For(part.part_class, name);
    parts.push_back(std::move(part));
  }
  return parts;
}

}  // namespace

std::vector<MadeManual> InventedManuals(ManualHalf half) {
  std::vector<MadeManual> manuals;
  for (const Invented& one : InventedOf(half)) {
    manuals.push_back(Make(one));
  }
  return manuals;
}

std::vector<MadeManual> OutsideManuals(ManualHalf half) {
  const outside::Half wanted = half == ManualHalf::kDevelopment ? outside::Half::kDevelopment : outside::Half::kHeldOut;
  std::vector<MadeManual> manuals;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (sheet.half != wanted) {
      continue;
    }
    MadeManual manual{sheet.sheet, sheet.seed, {outside::Draw(sheet)}};
    AddList(manual.pages, PartsOf(manual.pages.front(), sheet.seed), {ListForm::kColumns, 2, Grouping::kNone},
            Lettering::kTypewriter);
    manuals.push_back(std::move(manual));
  }
  return manuals;
}

}  // namespace benchleaf::bench
