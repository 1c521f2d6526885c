#include "bench/made_manuals.h"

#include "outside/outside_pages.h"
#include "scan-maker/callouts.h"
#include "scan-maker/circuit.h"
#include "scan-maker/locator_page.h"
#include "scan-maker/parts_list_page.h"
#include "scan-maker/schematic_page.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace benchleaf::bench {
namespace {

using scanmaker::Circuit;
using scanmaker::Grouping;
using scanmaker::Lettering;
using scanmaker::ListForm;
using scanmaker::ListLayout;
using scanmaker::ListSection;
using scanmaker::MadePage;
using scanmaker::PageFurniture;
using scanmaker::Part;
using scanmaker::PartClass;
using scanmaker::PartNumbers;

template <class T>
std::vector<T> OfHalf(ManualHalf half, const std::vector<T>& development, const std::vector<T>& held_out,
                      const std::vector<T>& practice) {
  return half == ManualHalf::kDevelopment ? development : half == ManualHalf::kHeldOut ? held_out : practice;
}

struct Invented {
  std::uint64_t seed;
  int stages;
  Lettering drawing;
  Lettering list;
  ListLayout layout;
};

std::vector<Invented> InventedOf(ManualHalf half) {
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
  return OfHalf(half, kDevelopment, kHeldOut, {});
}

// The parts of a set without assemblies.
std::vector<ListSection> OneSection(std::vector<Part> parts) { return {{"", "", std::move(parts)}}; }

void AddList(std::vector<MadePage>& pages, const std::vector<ListSection>& sections, const ListLayout& layout,
             Lettering lettering) {
  PageFurniture furniture;
  furniture.head = "SERVICE DATA";
  furniture.number = 7;
  furniture.text = scanmaker::UsualTextStyle(lettering);
  for (MadePage& page : scanmaker::MakePartsListPages(sections, layout, furniture)) {
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
  AddList(manual.pages, OneSection(parts), one.layout, one.list);
  return manual;
}

struct Assembled {
  Invented set;  // its stages are those of each assembly
  int assemblies;
  bool titled = true;  // the drawings' titles name their assemblies
};

// Eight manuals each in the layouts of the held-out ones: of three, one whose list is badly read is a third.
std::vector<Assembled> PracticeAssembled() {
  std::vector<Assembled> manuals;
  for (std::uint64_t seed = 821; seed < 829; ++seed) {
    manuals.push_back({{seed, 5, Lettering::kHand, Lettering::kBook, {ListForm::kLeaders, 1, Grouping::kNone}}, 2});
    manuals.push_back(
        {{seed + 20, 4, Lettering::kSimplex, Lettering::kTypewriter, {.form = ListForm::kRuled, .units = true}}, 3});
    manuals.push_back(
        {{seed + 40, 6, Lettering::kSimplex, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kDashes}},
         2,
         false});
  }
  return manuals;
}

std::vector<Assembled> AssembledOf(ManualHalf half) {
  static const std::vector<Assembled> kDevelopment = {
      {{421, 5, Lettering::kSimplex, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kDashes}}, 2},
      {{422,
        4,
        Lettering::kDrafting,
        Lettering::kTypewriter,
        {.form = ListForm::kColumns, .abreast = 2, .units = true}},
       3},
      {{423, 6, Lettering::kHand, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kNone}}, 2, false},
  };
  static const std::vector<Assembled> kHeldOut = {
      {{471, 5, Lettering::kHand, Lettering::kBook, {ListForm::kLeaders, 1, Grouping::kNone}}, 2},
      {{472, 4, Lettering::kDuplex, Lettering::kTypewriter, {.form = ListForm::kRuled, .units = true}}, 3},
      {{473, 6, Lettering::kSimplex, Lettering::kTypewriter, {ListForm::kColumns, 1, Grouping::kDashes}}, 2, false},
  };
  return OfHalf(half, kDevelopment, kHeldOut, PracticeAssembled());
}

MadeManual Make(const Assembled& one) {
  static const std::vector<std::string> kTitles = {"VERTICAL AMPLIFIER", "SWEEP GENERATOR", "POWER SUPPLY"};
  MadeManual manual{"assembled " + std::to_string(one.set.seed), one.set.seed, {}};
  std::vector<ListSection> sections;
  for (int i = 0; i < one.assemblies; ++i) {
    const std::uint64_t seed = one.set.seed * 8 + static_cast<std::uint64_t>(i);
    const std::string number = std::to_string(i + 1);
    const std::string& title = kTitles[static_cast<std::size_t>(i)];
    const Circuit circuit = scanmaker::RandomCircuit(one.set.stages, seed);
    ListSection section{(one.set.layout.units ? "UNIT " : "A") + number, title, scanmaker::ListedParts(circuit)};
    const std::string named = one.set.layout.units ? "UNIT " + number : "ASSEMBLY A" + number;
    manual.pages.push_back(
        scanmaker::MakeSchematicPage(circuit,
                                     {11, 8.5, "SCHEMATIC DIAGRAM, " + (one.titled ? named + " " : "") + title,
                                      scanmaker::kSampleMark, "5-" + number},
                                     scanmaker::UsualDrawingStyle(one.set.drawing, seed), seed)
            .page);
    manual.assemblies.push_back(section.assembly);
    sections.push_back(std::move(section));
  }
  AddList(manual.pages, sections, one.set.layout, one.set.list);
  return manual;
}

enum class Callouts { kPlain, kRings, kLeaders };

struct Itemized {
  Invented set;
  Callouts callouts;
};

std::vector<Itemized> ItemizedOf(ManualHalf half) {
  static const std::vector<Itemized> kDevelopment = {
      {{431, 5, Lettering::kSimplex, Lettering::kTypewriter, {.form = ListForm::kItems, .quantity = true}},
       Callouts::kPlain},
      {{432, 7, Lettering::kHand, Lettering::kBook, {.form = ListForm::kItems}}, Callouts::kRings},
      {{433, 6, Lettering::kDrafting, Lettering::kTypewriter, {.form = ListForm::kItems, .boxed = true}},
       Callouts::kLeaders},
      {{434, 8, Lettering::kDuplex, Lettering::kTypewriter, {.form = ListForm::kItems, .abreast = 2}},
       Callouts::kRings},
  };
  static const std::vector<Itemized> kHeldOut = {
      {{481, 6, Lettering::kDrafting, Lettering::kTypewriter, {.form = ListForm::kItems}}, Callouts::kPlain},
      {{482, 7, Lettering::kDuplex, Lettering::kBook, {.form = ListForm::kItems, .boxed = true}}, Callouts::kRings},
      {{483, 5, Lettering::kHand, Lettering::kTypewriter, {.form = ListForm::kItems, .abreast = 2}},
       Callouts::kLeaders},
      {{484, 8, Lettering::kSimplex, Lettering::kTypewriter, {.form = ListForm::kItems, .quantity = true}},
       Callouts::kRings},
  };
  return OfHalf(half, kDevelopment, kHeldOut, {});
}

MadeManual Make(const Itemized& one) {
  MadeManual manual{"items " + std::to_string(one.set.seed), one.set.seed, {}};
  std::vector<MadePage> list;
  AddList(list, OneSection(scanmaker::ListedParts(scanmaker::RandomCircuit(one.set.stages, one.set.seed))),
          one.set.layout, one.set.list);
  int items = 0;
  for (const MadePage& page : list) {
    items += static_cast<int>(page.entries.size());
  }
  PageFurniture furniture;
  furniture.number = 6;
  furniture.text = scanmaker::UsualTextStyle(one.set.drawing);
  MadePage locator = scanmaker::MakeItemLocatorPage("PARTS LOCATION", items, furniture, one.set.seed);
  manual.pages.push_back(one.callouts == Callouts::kPlain   ? std::move(locator)
                         : one.callouts == Callouts::kRings ? scanmaker::WithRings(locator, one.set.seed)
                                                            : scanmaker::WithLeaders(locator, one.set.seed));
  std::move(list.begin(), list.end(), std::back_inserter(manual.pages));
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
    part.description = "Component";
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

std::vector<MadeManual> AssembledManuals(ManualHalf half) {
  std::vector<MadeManual> manuals;
  for (const Assembled& one : AssembledOf(half)) {
    manuals.push_back(Make(one));
  }
  return manuals;
}

std::vector<MadeManual> ItemManuals(ManualHalf half) {
  std::vector<MadeManual> manuals;
  for (const Itemized& one : ItemizedOf(half)) {
    manuals.push_back(Make(one));
  }
  return manuals;
}

std::vector<MadeManual> OutsideManuals(ManualHalf half) {
  const outside::Half wanted = half == ManualHalf::kDevelopment ? outside::Half::kDevelopment
                               : half == ManualHalf::kHeldOut   ? outside::Half::kHeldOut
                                                                : outside::Half::kPractice;
  std::vector<MadeManual> manuals;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (sheet.half != wanted) {
      continue;
    }
    MadeManual manual{sheet.sheet, sheet.seed, {outside::Draw(sheet)}};
    // Without headings of classes: half of the classes are none of the scan maker's.
    AddList(manual.pages, OneSection(PartsOf(manual.pages.front(), sheet.seed)),
            {.form = ListForm::kColumns, .abreast = 2, .class_headings = false}, Lettering::kTypewriter);
    manuals.push_back(std::move(manual));
  }
  return manuals;
}

}  // namespace benchleaf::bench
