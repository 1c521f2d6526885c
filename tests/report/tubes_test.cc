#include "benchleaf/report/tubes.h"

#include "extract/seen_sighting.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(TubesText, CountsSetsPlacesAndForms) {
  TubePlace a;
  a.found.place.set = "QUILLHAVEN 12";
  a.found.place.file = "a.pdf";
  a.found.sighting = Seen(TermKind::kTube, "6CB6A", {0.5, 0.5, 0.1, 0.02});
  a.found.match = Match::kForm;
  a.designator = "V3";
  TubePlace b = a;
  b.found.place.set = "BRACKENFORD T7";
  b.found.sighting.text = "6CB6";
  b.designator = "";
  EXPECT_EQ(TubesText("6CB6", {b, a, a}, {}),
            "6CB6: 2 sets, 3 places\n"
            "set             type   tube  file   page  kind   where on the page               reads  sure  match\n"
            "--------------  -----  ----  -----  ----  -----  ------------------------------  -----  ----  -----\n"
            "BRACKENFORD T7  6CB6         a.pdf  1     other  centre, 55 % across, 51 % down  6CB6A  90 %  form\n"
            "QUILLHAVEN 12   6CB6A  V3    a.pdf  1     other  centre, 55 % across, 51 % down         90 %  form\n"
            "QUILLHAVEN 12   6CB6A  V3    a.pdf  1     other  centre, 55 % across, 51 % down         90 %  form\n"
            "read as: 6CB6 (1 place), 6CB6A (2 places)\n");
}

}  // namespace
}  // namespace benchleaf
