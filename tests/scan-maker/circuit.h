// The content of a set: stages of the tube era with their parts, of which drawings and parts lists are made, so that
// the two agree.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_CIRCUIT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_CIRCUIT_H_

#include "scan-maker/sheet.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::scanmaker {

// In the order in which lists print them.
enum class PartClass {
  kCapacitor,
  kElectrolytic,
  kVariableCapacitor,
  kDiode,
  kFuse,
  kLamp,
  kConnector,
  kCoil,
  kSpeaker,
  kPlug,
  kTransistor,
  kResistor,
  kControl,
  kSwitch,
  kTransformer,
  kTube,
};

struct Part {
  PartClass part_class = PartClass::kResistor;
  std::string designator;   // "C12"
  char section = 0;         // 'A', 'B', ... when this is one section of the part: drawn as C12A
  std::string value;        // "470K", ".05 MFD"; of a tube or semiconductor its type; empty when it has none
  std::string rating;       // "1/2 W", "600 V", "volume"; empty when it has none
  std::string description;  // as the list prints it
  std::string part_number;
  std::string drawn_value;  // what the drawing has in place of `value`, where they disagree; else empty

  std::string drawn_designator() const { return section == 0 ? designator : designator + section; }
};

enum class StageKind {
  kAntenna,
  kConverter,
  kIfAmplifier,
  kRcPentode,
  kRcTriode,
  kDetectorTriode,
  kTwinDiode,
  kPowerOutput,
  kHalfWaveSupply,
  kFullWaveSupply,
  kHeaterString,
  kCascode,
  kMultivibrator,
  kHorizontalOutput,
  kPictureTube,
  kRegulator,
  kDiodeProbe,
  kTransistor,
  kCathodeFollower,
};

// What is wanted: the kind, and the types of its tubes or semiconductors in the order of the stage's recipe. A type
// with "/A" asks for the first section of a new twin tube, "/B" for the second section of the last one of that type.
struct StagePlan {
  StageKind kind = StageKind::kRcTriode;
  std::vector<std::string> types;
  std::string function;  // "1ST I.F."; lettered beside the stage
};

struct Stage {
  StageKind kind = StageKind::kRcTriode;
  std::string function;
  std::vector<std::pair<std::string, Part>> parts;  // by what they do in the stage

  // REQUIRES: the stage's recipe has that role; throws std::out_of_range otherwise.
  const Part& At(const std::string& role) const;
};

struct Circuit {
  std::string title;     // "SCHEMATIC DIAGRAM, MODEL 512"
  std::string assembly;  // "A4", empty when the set has no assemblies
  std::vector<Stage> stages;
  std::vector<Part> undrawn;       // listed, but on no drawing
  std::set<std::string> unlisted;  // designators that are drawn, but in no list
};

// Gives part numbers of one maker: the same description gets the same number, another one another.
class PartNumbers {
 public:
  // In `pattern` '@@' stands for the code of the part's class and '#' for a digit: "@@-####-#".
  PartNumbers(std::string pattern, std::uint64_t seed) : pattern_(std::move(pattern)), seed_(seed) {}

  std::string For(PartClass part_class, const std::string& description);

 private:
  std::string pattern_;
  std::uint64_t seed_;
  std::map<std::string, std::string> known_;
  std::set<std::string> given_;
};

// Numbers the parts from 1 in each class, in the order of the stages. The same seed gives the same circuit.
// Throws std::invalid_argument for a plan whose types do not fit its kind.
Circuit DesignCircuit(const std::string& title, const std::string& assembly, const std::vector<StagePlan>& plan,
                      PartNumbers& numbers, std::uint64_t seed);

// A circuit of that many stages, drawn from the kinds and common tube types, for tests that want fresh pages.
Circuit RandomCircuit(int stages, std::uint64_t seed);

// The parts as they are listed: sections joined, by class and number.
std::vector<Part> ListedParts(const Circuit& circuit);

// The designator of a part, as drawn, by its stage and what it does there.
std::string DesignatorOf(const Circuit& circuit, std::size_t stage, const std::string& role);

// Adds the circuit's designators and types to the book.
void AddTerms(const Circuit& circuit, TermBook& book);

// "CAPACITORS", as lists head the class.
std::string ClassHeading(PartClass part_class);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_CIRCUIT_H_
