#include "benchleaf/linking/designator_beside.h"

#include "extract/seen_sighting.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

// A page of 1000 x 1000 px, lettering 20 px high.
PageFrame Frame() {
  PageFrame frame;
  frame.scan_width = 1000;
  frame.scan_height = 1000;
  return frame;
}

TEST(TubeDesignators, TakesTheNearestTube) {
  const Sighting tube = Seen(TermKind::kTube, "6CB6", {0.50, 0.50, 0.08, 0.02});
  const auto at = [](const std::string& text, double x, double y) {
    return Seen(TermKind::kDesignator, text, {x, y, 0.04, 0.02});
  };
  struct Case {
    const char* why;
    std::vector<Sighting> others;
    std::string designator;
  };
  const std::vector<Case> cases = {
      {"above it", {at("V3", 0.51, 0.47)}, "V3"},
      {"the nearer of two", {at("V3", 0.51, 0.40), at("V4", 0.51, 0.53)}, "V4"},
      {"with its assembly", {at("A4V3", 0.51, 0.47)}, "A4V3"},
      {"one section of a double tube", {at("V3A", 0.51, 0.47)}, "V3A"},
      {"a capacitor is none, however near (IEEE 315: C)", {at("C3", 0.51, 0.48)}, ""},
      {"a variable resistor is none (IEEE 315: R)", {at("VR3", 0.51, 0.48)}, ""},
      {"too far to belong to it", {at("V3", 0.51, 0.10)}, ""},
      {"alone", {}, ""},
  };
  for (const Case& c : cases) {
    EXPECT_EQ(TubeDesignators({}, c.others, Frame()).Beside(tube), c.designator) << c.why;
  }
}

TEST(TubeDesignators, InAPartsListTakesTheRowsDesignator) {
  const Sighting tube = Seen(TermKind::kTube, "6CB6", {0.50, 0.50, 0.08, 0.02});
  const std::vector<Sighting> sightings = {Seen(TermKind::kDesignator, "V9", {0.50, 0.52, 0.04, 0.02})};
  Entry entry;
  entry.designator = "V3";
  entry.assembly = "A4";
  entry.box = {0.1, 0.495, 0.8, 0.03};
  const std::vector<Entry> entries = {entry};
  EXPECT_EQ(TubeDesignators(entries, sightings, Frame()).Beside(tube), "A4V3");
}

TEST(TubeDesignators, OfAPageWithoutMeasuresIsEmpty) {
  const std::vector<Sighting> sightings = {Seen(TermKind::kDesignator, "V3", {0.5, 0.5, 0.04, 0.02})};
  const Sighting tube = Seen(TermKind::kTube, "6CB6", {0.5, 0.5, 0.08, 0.02});
  EXPECT_EQ(TubeDesignators({}, sightings, {}).Beside(tube), "");
}

}  // namespace
}  // namespace benchleaf
