#include "extract/part_agreement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

using ::testing::ElementsAre;

// A row as a list has it: class letters (empty: the row names none), description, number as read.
struct Listed {
  std::string letters;
  std::string description;
  std::string number;
};

std::vector<RowFields> Agreed(const std::vector<Listed>& listed) {
  std::vector<ListRow> rows;
  std::vector<RowFields> fields;
  for (const Listed& one : listed) {
    ListRow row;
    if (!one.letters.empty()) {
      row.designators.push_back({"", one.letters, std::to_string(rows.size() + 1), "", 1, false});
    }
    rows.push_back(row);
    RowFields field;
    field.description = one.description;
    field.part_number = one.number;
    field.part_confidence = 0.8;
    fields.push_back(field);
  }
  AgreeOnParts(rows, fields);
  return fields;
}

std::vector<std::string> Numbers(const std::vector<Listed>& listed) {
  std::vector<std::string> numbers;
  for (const RowFields& field : Agreed(listed)) numbers.push_back(field.part_number);
  return numbers;
}

constexpr const char* kMica = "Mica, 220 MMF 500 V";

TEST(AgreeOnParts, GivesRowsOfOneDescriptionOneNumber) {
  EXPECT_THAT(
      Numbers(
          {{"C", kMica, "614-8"}, {"C", kMica, "614-8"}, {"C", kMica, "624-8"}, {"C", "MICA 220 MMF, 500V", "6l4-8"}}),
      ElementsAre("614-8", "614-8", "624-8", "6l4-8"))
      << "neither 1 and 2 nor a letter for a figure: only what blurred print makes alike";
  const std::vector<RowFields> agreed = Agreed({{"C", kMica, "514-8"}, {"C", kMica, "514-8"}, {"C", kMica, "614-3"}});
  EXPECT_EQ(agreed[2].part_number, "514-8");
  EXPECT_LT(agreed[2].part_confidence, 0.8) << "told by others, not read";
  EXPECT_EQ(agreed[0].part_confidence, 0.8);
}

TEST(AgreeOnParts, LeavesWhatMayBeAnotherPart) {
  EXPECT_THAT(Numbers({{"C", kMica, "514-8"}, {"C", kMica, "614-8"}}), ElementsAre("514-8", "614-8"))
      << "one against one";
  EXPECT_THAT(Numbers({{"C", kMica, "514-8"}, {"C", kMica, "514-8"}, {"R", kMica, "614-8"}}),
              ElementsAre("514-8", "514-8", "614-8"))
      << "another class";
  EXPECT_THAT(Numbers({{"C", "Mica", "514-8"}, {"C", "Mica", "514-8"}, {"C", "Mica", "614-8"}}),
              ElementsAre("514-8", "514-8", "614-8"))
      << "a description of one word tells no part";
  EXPECT_THAT(Numbers({{"C", kMica, "514-8"}, {"C", kMica, "514-8"}, {"C", kMica, "689-6"}}),
              ElementsAre("514-8", "514-8", "689-6"))
      << "three figures differ";
  EXPECT_THAT(Numbers({{"C", kMica, "514-8"}, {"C", kMica, "514-8"}, {"C", kMica, "514-88"}}),
              ElementsAre("514-8", "514-8", "514-88"));
  EXPECT_THAT(Numbers({{"C", kMica, "514-8"}, {"C", kMica, "514-8"}, {"C", kMica, ""}}),
              ElementsAre("514-8", "514-8", ""))
      << "none was read";
  EXPECT_THAT(Numbers({{"", kMica, "514-8"}, {"", kMica, "514-8"}, {"", kMica, "614-8"}}),
              ElementsAre("514-8", "514-8", "614-8"))
      << "rows that name no part";
}

TEST(AgreeOnParts, GivesAClassTheGroupOfFiguresThatNearlyAllHave) {
  std::vector<Listed> rows;
  for (const char* number : {"50-1", "50-2", "50-4", "50-5", "50-7", "50-9", "50-11", "50-12"}) {
    rows.push_back({"R", "Carbon", number});
  }
  rows.push_back({"R", "Carbon", "60-13"});
  rows.push_back({"R", "Carbon", "71-14"});
  rows.push_back({"C", "Paper", "60-13"});
  const std::vector<std::string> numbers = Numbers(rows);
  EXPECT_EQ(numbers[8], "50-13");
  EXPECT_EQ(numbers[9], "71-14") << "not alike";
  EXPECT_EQ(numbers[10], "60-13") << "another class";
}

TEST(AgreeOnParts, NeedsEightNumbersOfAClassForItsGroup) {
  EXPECT_THAT(Numbers({{"R", "Carbon", "50-1"}, {"R", "Carbon", "50-2"}, {"R", "Carbon", "60-3"}}),
              ElementsAre("50-1", "50-2", "60-3"));
  std::vector<Listed> bare(8, {"R", "Carbon", "50-1"});
  bare.push_back({"R", "Carbon", "60"});
  EXPECT_EQ(Numbers(bare).back(), "60") << "figures alone have no group in front";
}

}  // namespace
}  // namespace benchleaf::extract
