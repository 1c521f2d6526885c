#include "scan-maker/circuit.h"

#include "scan-maker/seeded_random.h"
#include "scan-maker/stage_recipes.h"

#include <algorithm>
#include <cstdio>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

struct ClassFacts {
  std::string letter;  // of the designator: IEEE 200-1975 and the older practice for fuses (F), lamps (I) and tubes (V)
  std::string name;    // as descriptions begin
  std::string heading;  // as lists head the class
  std::string code;     // in part numbers
};

const ClassFacts& FactsOf(PartClass part_class) {
  static const std::map<PartClass, ClassFacts> kFacts = {
      {PartClass::kCapacitor, {"C", "Capacitor", "CAPACITORS", "20"}},
      {PartClass::kElectrolytic, {"C", "Capacitor, electrolytic", "CAPACITORS", "24"}},
      {PartClass::kVariableCapacitor, {"C", "Capacitor, variable", "CAPACITORS", "22"}},
      {PartClass::kDiode, {"CR", "Diode", "DIODES", "48"}},
      {PartClass::kFuse, {"F", "Fuse", "FUSES", "51"}},
      {PartClass::kLamp, {"I", "Lamp", "LAMPS", "52"}},
      {PartClass::kConnector, {"J", "Connector", "CONNECTORS", "13"}},
      {PartClass::kCoil, {"L", "Coil", "COILS", "36"}},
      {PartClass::kSpeaker, {"LS", "Loudspeaker", "LOUDSPEAKERS", "55"}},
      {PartClass::kPlug, {"P", "Plug", "PLUGS", "14"}},
      {PartClass::kTransistor, {"Q", "Transistor", "TRANSISTORS", "49"}},
      {PartClass::kResistor, {"R", "Resistor", "RESISTORS", "61"}},
      {PartClass::kControl, {"R", "Control", "RESISTORS", "63"}},
      {PartClass::kSwitch, {"S", "Switch", "SWITCHES", "58"}},
      {PartClass::kTransformer, {"T", "Transformer", "TRANSFORMERS", "38"}},
      {PartClass::kTube, {"V", "Tube", "TUBES", "86"}},
  };
  return kFacts.at(part_class);
}

std::vector<std::string> Split(const std::string& text, char separator) {
  std::vector<std::string> pieces(1);
  for (const char c : text) {
    if (c == separator) {
      pieces.emplace_back();
    } else {
      pieces.back() += c;
    }
  }
  return pieces;
}

// What the list says of a part, from what the stage's recipe says of it.
std::string Describe(const Part& part) {
  std::string text = FactsOf(part.part_class).name;
  if (!part.value.empty()) {
    text += ", " + part.value;
  }
  if (!part.rating.empty()) {
    text += ", " + part.rating;
  }
  if (part.part_class == PartClass::kCapacitor) {
    text += part.value.find("MMF") != std::string::npos ? ", mica" : ", paper";
  }
  if (part.part_class == PartClass::kResistor) {
    text += ", 10%";
  }
  return text;
}

// "40-30 MFD" of "40 MFD" and "30 MFD".
std::string JoinedValues(const std::string& first, const std::string& second) {
  return first.substr(0, first.find(' ')) + "-" + second;
}

int NumberOf(const std::string& designator) {
  return std::stoi(designator.substr(designator.find_first_of("0123456789")));
}

// Hands out designators.
class Numbering {
  struct Sections {
    std::string designator;
    std::string taken;
  };

 public:
  std::string Next(PartClass part_class) {
    const std::string& letter = FactsOf(part_class).letter;
    return letter + std::to_string(++last_[letter]);
  }

  // The designator of a section: a letter that the last part of that family does not have yet is one more section of
  // it, else a new part begins.
  std::string Section(PartClass part_class, char section, const std::string& family) {
    Sections& open = open_[family];
    if (section == 'A' || open.designator.empty() || open.taken.find(section) != std::string::npos) {
      open = {Next(part_class), ""};
    }
    open.taken += section;
    return open.designator;
  }

 private:
  std::map<std::string, int> last_;
  std::map<std::string, Sections> open_;
};

Part MakePart(const RoleRecipe& recipe, const std::string& type, Numbering& numbering, SeededRandom& random) {
  Part part;
  part.part_class = recipe.part_class;
  part.section = recipe.section;
  std::string family = FactsOf(recipe.part_class).name;
  if (type.empty()) {
    const std::vector<std::string> choices = Split(recipe.choices, '|');
    const auto choice = static_cast<std::size_t>(random.Whole(0, static_cast<int>(choices.size()) - 1));
    const std::vector<std::string> halves = Split(choices[choice], ';');
    part.value = halves.at(0);
    part.rating = halves.at(1);
  } else {
    const bool section = type.size() > 2 && type[type.size() - 2] == '/';
    part.section = section ? type.back() : char{0};
    part.value = section ? type.substr(0, type.size() - 2) : type;
    family = part.value;
  }
  part.designator =
      part.section == 0 ? numbering.Next(part.part_class) : numbering.Section(part.part_class, part.section, family);
  return part;
}

bool IsTyped(PartClass part_class) {
  return part_class == PartClass::kTube || part_class == PartClass::kDiode || part_class == PartClass::kTransistor;
}

}  // namespace

std::string DesignatorOf(const Circuit& circuit, std::size_t stage, const std::string& role) {
  return circuit.stages.at(stage).At(role).drawn_designator();
}

const Part& Stage::At(const std::string& role) const {
  for (const auto& [name, part] : parts) {
    if (name == role) {
      return part;
    }
  }
  throw std::out_of_range("no part of that role in the stage: " + role);
}

std::string PartNumbers::For(PartClass part_class, const std::string& description) {
  std::string& number = known_[description];
  for (std::uint64_t attempt = 0; number.empty(); ++attempt) {
    SeededRandom random(SeedOf(seed_ + attempt, description));
    std::string made;
    std::size_t code_digit = 0;
    for (const char c : pattern_) {
      if (c == '@') {
        made += FactsOf(part_class).code[code_digit++ % 2];
      } else if (c == '#') {
        made += static_cast<char>('0' + random.Whole(0, 9));
      } else {
        made += c;
      }
    }
    if (given_.insert(made).second) {
      number = made;
    }
  }
  return number;
}

Circuit DesignCircuit(const std::string& title, const std::string& assembly, const std::vector<StagePlan>& plan,
                      PartNumbers& numbers, std::uint64_t seed) {
  Circuit circuit;
  circuit.title = title;
  circuit.assembly = assembly;
  SeededRandom random(seed);
  Numbering numbering;
  for (const StagePlan& wanted : plan) {
    Stage stage;
    stage.kind = wanted.kind;
    stage.function = wanted.function;
    std::size_t types_used = 0;
    for (const RoleRecipe& recipe : RecipeFor(wanted.kind)) {
      std::string type;
      if (IsTyped(recipe.part_class)) {
        if (types_used == wanted.types.size()) {
          throw std::invalid_argument("too few tube types for the stage " + wanted.function);
        }
        type = wanted.types[types_used++];
      }
      Part part = MakePart(recipe, type, numbering, random);
      if (part.part_class == PartClass::kTube && part.section == 0) {
        part.rating = wanted.function;
      }
      part.description = Describe(part);
      part.part_number = numbers.For(part.part_class, part.description);
      stage.parts.emplace_back(recipe.role, part);
    }
    circuit.stages.push_back(stage);
  }
  return circuit;
}

Circuit RandomCircuit(int stages, std::uint64_t seed) {
  static const std::vector<StagePlan> kChoices = {
      {StageKind::kConverter, {"6BE6"}, "CONVERTER"},
      {StageKind::kIfAmplifier, {"6BA6"}, "I.F. AMPLIFIER"},
      {StageKind::kIfAmplifier, {"6CB6"}, "PIX I.F."},
      {StageKind::kRcPentode, {"6AU6"}, "AMPLIFIER"},
      {StageKind::kRcTriode, {"6C4"}, "BUFFER"},
      {StageKind::kRcTriode, {"12AU7/A"}, "AMPLIFIER"},
      {StageKind::kDetectorTriode, {"6AV6"}, "DETECTOR"},
      {StageKind::kTwinDiode, {"6AL5"}, "DISCRIMINATOR"},
      {StageKind::kPowerOutput, {"6AQ5"}, "OUTPUT"},
      {StageKind::kMultivibrator, {"12AT7/A", "12AT7/B"}, "MULTIVIBRATOR"},
      {StageKind::kCathodeFollower, {"12BH7/A"}, "FOLLOWER"},
      {StageKind::kRegulator, {"0A2"}, "REGULATOR"},
      {StageKind::kDiodeProbe, {"1N34A"}, "DETECTOR"},
      {StageKind::kTransistor, {"2N2222"}, "DRIVER"},
      {StageKind::kFullWaveSupply, {"5U4GB"}, "RECTIFIER"},
      {StageKind::kHalfWaveSupply, {"35W4"}, "RECTIFIER"},
      {StageKind::kCascode, {"6BQ7A/A", "6BQ7A/B"}, "R.F. AMPLIFIER"},
      {StageKind::kHorizontalOutput, {"6BQ6GTB", "6AX4GT", "1B3GT"}, "HORIZONTAL OUTPUT"},
  };
  SeededRandom random(seed);
  std::vector<StagePlan> plan;
  for (int i = 0; i < stages; ++i) {
    plan.push_back(kChoices[static_cast<std::size_t>(random.Whole(0, static_cast<int>(kChoices.size()) - 1))]);
  }
  static const std::vector<std::string> kPatterns = {"@@-####-#", "@@#-####-0#", "@@A####", "@@####-##"};
  PartNumbers numbers(kPatterns[static_cast<std::size_t>(random.Whole(0, 3))], seed);
  return DesignCircuit("SCHEMATIC DIAGRAM", "", plan, numbers, seed);
}

std::vector<Part> ListedParts(const Circuit& circuit) {
  std::vector<Part> listed;
  std::map<std::string, std::size_t> place;
  auto add = [&](const Part& part) {
    if (circuit.unlisted.count(part.designator) != 0) {
      return;
    }
    const auto [known, fresh] = place.emplace(part.designator, listed.size());
    if (fresh) {
      listed.push_back(part);
      listed.back().section = 0;
    } else if (part.part_class != PartClass::kTube) {
      // The sections of one capacitor; those of a twin tube share its type.
      Part& whole = listed[known->second];
      whole.value = JoinedValues(whole.value, part.value);
      whole.description = Describe(whole);
    }
  };
  for (const Stage& stage : circuit.stages) {
    for (const auto& [role, part] : stage.parts) {
      add(part);
    }
  }
  std::for_each(circuit.undrawn.begin(), circuit.undrawn.end(), add);
  std::stable_sort(listed.begin(), listed.end(), [](const Part& a, const Part& b) {
    const std::string& a_heading = FactsOf(a.part_class).heading;
    const std::string& b_heading = FactsOf(b.part_class).heading;
    if (a_heading != b_heading) {
      return a.part_class < b.part_class;
    }
    return NumberOf(a.designator) < NumberOf(b.designator);
  });
  return listed;
}

void AddTerms(const Circuit& circuit, TermBook& book) {
  auto add = [&](const Part& part) {
    book.designators.insert(part.designator);
    book.designators.insert(part.drawn_designator());
    if (part.part_class == PartClass::kTube) {
      book.tubes.insert(Canonical(part.value));
    } else if (IsTyped(part.part_class)) {
      book.semiconductors.insert(Canonical(part.value));
    }
  };
  for (const Stage& stage : circuit.stages) {
    for (const auto& [role, part] : stage.parts) {
      add(part);
    }
  }
  std::for_each(circuit.undrawn.begin(), circuit.undrawn.end(), add);
}

std::string ClassHeading(PartClass part_class) { return FactsOf(part_class).heading; }

}  // namespace benchleaf::scanmaker
