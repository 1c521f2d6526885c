#include "scan-maker/list_parts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace benchleaf::scanmaker {
namespace {

using ::testing::ElementsAre;
using ::testing::MatchesRegex;

Part Made(PartClass part_class, const std::string& designator, const std::string& value) {
  Part part;
  part.part_class = part_class;
  part.designator = designator;
  part.value = value;
  part.description = designator + ", " + value;
  part.part_number = "24-1000-" + designator;
  return part;
}

std::vector<Part> Parts() {
  return {Made(PartClass::kElectrolytic, "C5", "40-30 MFD"), Made(PartClass::kResistor, "R1", "47K"),
          Made(PartClass::kTube, "V1", "6AU6")};
}

std::vector<std::string> Designators(const ListLayout& layout) {
  std::vector<std::string> designators;
  for (const Part& part : PartsAsListed(Parts(), layout)) {
    designators.push_back(part.designator);
  }
  return designators;
}

TEST(ListPartsTest, AddsWhatTheLayoutHas) {
  EXPECT_THAT(Designators({}), ElementsAre("C5", "R1", "V1"));
  EXPECT_THAT(Designators({.lettered_sections = true}), ElementsAre("C5A", "C5B", "R1", "V1"));
  EXPECT_THAT(Designators({.sockets = true}), ElementsAre("C5", "R1", "V1", "XV1"));
  EXPECT_THAT(Designators({.unused = true}), ElementsAre("C5", "C6", "R1", "R2", "V1"));
}

TEST(ListPartsTest, GivesEachSectionItsOwnValue) {
  const std::vector<Part> parts = PartsAsListed(Parts(), {.lettered_sections = true});
  EXPECT_EQ(parts[0].value, "40 MFD");
  EXPECT_EQ(parts[1].value, "30 MFD");
  EXPECT_EQ(parts[1].part_number, parts[0].part_number) << "one can";
}

TEST(ListPartsTest, GivesNumbersTheFormOfTheLayout) {
  EXPECT_THAT(PartsAsListed(Parts(), {.numbers = NumberForm::kSpaced})[1].part_number,
              MatchesRegex("48[0-9][0-9] [0-9]+ 2[0-9]+"));
  EXPECT_THAT(PartsAsListed(Parts(), {.numbers = NumberForm::kLikeDesignators})[1].part_number,
              MatchesRegex("R[0-9][0-9]-[0-9]+"));
}

TEST(ListPartsTest, LeavesSomeMakersOut) {
  std::set<bool> made;
  for (int i = 0; i < 40; ++i) {
    const Part part = Made(PartClass::kResistor, "R" + std::to_string(i + 1), "47K");
    made.insert(MakersNumber(part, 0).empty());
    EXPECT_EQ(MakersNumber(part, 1), MakersNumber(part, 1));
  }
  EXPECT_THAT(made, ElementsAre(false, true));
}

}  // namespace
}  // namespace benchleaf::scanmaker
