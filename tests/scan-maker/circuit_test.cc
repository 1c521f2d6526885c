#include "scan-maker/circuit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;

std::vector<std::string> Designators(const std::vector<Part>& parts, const std::string& letter) {
  std::vector<std::string> found;
  for (const Part& part : parts) {
    if (part.designator.starts_with(letter)) {
      found.push_back(part.designator);
    }
  }
  return found;
}

TEST(CircuitTest, NumbersPartsOfEachClassWithoutGaps) {
  PartNumbers numbers("@@-####", 1);
  const Circuit circuit =
      DesignCircuit("", "", {{StageKind::kRcTriode, {"6C4"}, ""}, {StageKind::kRcTriode, {"6C4"}, ""}}, numbers, 1);
  const std::vector<Part> parts = ListedParts(circuit);
  EXPECT_THAT(Designators(parts, "C"), ElementsAre("C1", "C2", "C3", "C4"));
  EXPECT_THAT(Designators(parts, "R"), ElementsAre("R1", "R2", "R3", "R4", "R5", "R6"));
  EXPECT_THAT(Designators(parts, "V"), ElementsAre("V1", "V2"));
}

TEST(CircuitTest, ListsTwinTubeOnceAndDrawsItsSections) {
  PartNumbers numbers("@@-####", 1);
  const Circuit circuit = DesignCircuit("", "",
                                        {{StageKind::kRcTriode, {"12AU7/ECC82/A"}, ""},
                                         {StageKind::kRcTriode, {"12AU7/ECC82/B"}, ""},
                                         {StageKind::kRcTriode, {"12AU7/ECC82/A"}, ""}},
                                        numbers, 1);
  EXPECT_EQ(DesignatorOf(circuit, 0, "tube"), "V1A");
  EXPECT_EQ(DesignatorOf(circuit, 1, "tube"), "V1B");
  EXPECT_EQ(DesignatorOf(circuit, 2, "tube"), "V2A");
  EXPECT_THAT(Designators(ListedParts(circuit), "V"), ElementsAre("V1", "V2"));
  EXPECT_THAT(ListedParts(circuit), Contains(Field(&Part::value, "12AU7/ECC82")));
}

TEST(CircuitTest, JoinsSectionsOfAFilterCapacitorInTheList) {
  PartNumbers numbers("@@-####", 1);
  const Circuit circuit = DesignCircuit("", "", {{StageKind::kHalfWaveSupply, {"35W4"}, ""}}, numbers, 1);
  EXPECT_THAT(ListedParts(circuit), Contains(Field(&Part::description, "Capacitor, electrolytic, 50-30 MFD, 150 V")));
}

TEST(CircuitTest, GivesOnePartNumberToLikePartsAndOthersToUnlikeOnes) {
  PartNumbers numbers("@@-####", 3);
  const std::string first = numbers.For(PartClass::kResistor, "Resistor, 47K");
  EXPECT_EQ(first, numbers.For(PartClass::kResistor, "Resistor, 47K"));
  std::set<std::string> given;
  for (int i = 0; i < 500; ++i) {
    given.insert(numbers.For(PartClass::kResistor, "Resistor, " + std::to_string(i)));
  }
  EXPECT_EQ(given.size(), 500U);
}

TEST(CircuitTest, RefusesPlanWithTooFewTubes) {
  PartNumbers numbers("@@-####", 1);
  EXPECT_THROW(DesignCircuit("", "", {{StageKind::kMultivibrator, {"12AT7/A"}, "GATE"}}, numbers, 1),
               std::invalid_argument);
}

TEST(CircuitTest, LeavesUnlistedPartsOutOfTheListAndPutsUndrawnOnesIn) {
  Circuit circuit = RandomCircuit(3, 5);
  circuit.unlisted.insert("R1");
  Part spare;
  spare.part_class = PartClass::kSwitch;
  spare.designator = "S9";
  circuit.undrawn.push_back(spare);
  const std::vector<Part> parts = ListedParts(circuit);
  EXPECT_THAT(Designators(parts, "R"), testing::Not(Contains("R1")));
  EXPECT_THAT(Designators(parts, "S"), Contains("S9"));
}

}  // namespace
}  // namespace benchleaf::scanmaker
