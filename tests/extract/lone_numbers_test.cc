#include "extract/lone_numbers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf::extract {
namespace {

std::set<std::string> LoneAmong(const std::vector<std::string>& designators) {
  std::vector<Sighting> sightings;
  for (const std::string& designator : designators) {
    sightings.push_back({TermKind::kDesignator, designator, designator, {}, 0, 0.9, ""});
  }
  const PageReading reading;
  const std::vector<Entry> entries;
  return LoneNumbers({{LexiconPart::kDrawing, &reading, &sightings, &entries}});
}

TEST(LoneNumbers, AreThoseFarBeyondAllOthersOfTheirClass) {
  const std::vector<std::string> run = {"R101", "R102", "R103", "R104", "R110", "R120", "R150", "R186"};
  auto with = [&](std::vector<std::string> more) {
    more.insert(more.begin(), run.begin(), run.end());
    return LoneAmong(more);
  };
  EXPECT_THAT(with({}), testing::IsEmpty());
  EXPECT_THAT(with({"R9186"}), testing::ElementsAre("R9186"));
  EXPECT_THAT(with({"R201"}), testing::IsEmpty()) << "the next unit begins";
  EXPECT_THAT(with({"R901", "R902"}), testing::IsEmpty()) << "two bear each other out";
  EXPECT_THAT(with({"C9186"}), testing::IsEmpty()) << "a class with few numbers tells nothing";
  EXPECT_THAT(with({"A4R9186"}), testing::ElementsAre("A4R9186")) << "with its assembly";
}

}  // namespace
}  // namespace benchleaf::extract
