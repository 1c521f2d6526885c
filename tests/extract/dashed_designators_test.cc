#include "extract/dashed_designators.h"

#include "extract/page_text.h"

#include "benchleaf/extract/extract.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::vector<std::string> DesignatorsOn(const std::vector<std::string>& lines) {
  std::vector<std::string> designators;
  for (const Sighting& sighting : ExtractSightings(PageOf(lines, WordOrigin::kString), ShippedRules())) {
    if (sighting.kind == TermKind::kDesignator) designators.push_back(sighting.text);
  }
  return designators;
}

TEST(WithoutDesignatorDashes, LeavesOtherDashes) {
  struct Case {
    const char* text;
    const char* without;
    const char* why;
  };
  for (const Case& one :
       {Case{"R-12", "R12", "a resistor"}, Case{"R-1,R-2", "R1,R2", "two"},
        Case{"C-4/C-5A", "C4/C5A", "a section, too"}, Case{"R1-8", "R1-8", "a range"},
        Case{"C1-C5", "C1-C5", "a range"}, Case{"R-1-R-8", "R1-R8", "a range of dashed ones"},
        Case{"V1-6AU6", "V1-6AU6", "a tube behind its designator"}, Case{"QQ-12", "QQ-12", "no class"},
        Case{"R-", "R-", "no number"}, Case{"B-", "B-", "a voltage"}, Case{"", "", "nothing"}}) {
    EXPECT_EQ(WithoutDesignatorDashes(one.text, ShippedRules().tables()), one.without) << one.why;
  }
}

TEST(DashedDesignators, AreThoseOfAPageThatPrintsThemSo) {
  EXPECT_THAT(DesignatorsOn({"R-1    C-3    R-2", "V-1    6K7    L-2"}), ElementsAre("R1", "C3", "R2", "V1", "L2"));
  EXPECT_THAT(DesignatorsOn({"R-112    R-113    R-115", "R-186    R-185"}),
              ElementsAre("R112", "R113", "R115", "R186", "R185"))
      << "the numbers of one unit";
  EXPECT_THAT(DesignatorsOn({"R-1    C-3    R-2", "V-1    C.2    L-2"}),
              ElementsAre("R1", "C3", "R2", "V1", "C2", "L2"))
      << "a dash read as a dot";
}

TEST(DashedDesignators, AreNotMakersNumbers) {
  EXPECT_THAT(DesignatorsOn({"R-112    C-373    R-582    T-981    L-755"}), IsEmpty()) << "scattered";
  EXPECT_THAT(DesignatorsOn({"R1    R2    C3    C4    R-1    R-2    C-3"}), ElementsAre("R1", "R2", "C3", "C4"))
      << "the page prints designators without";
  EXPECT_THAT(DesignatorsOn({"R-1    R-2    C-3"}), IsEmpty()) << "too few to tell";
}

TEST(DashedDesignators, NameTheRowsOfAList) {
  const PageReading list = PageOf({
      "R-1     Resistor 470K 1/2 W      B-841",
      "R-2     Resistor 1 MEG 1/2 W     B-124",
      "R-3     Resistor 10K 1 W         B-84127",
      "C-1,2   Capacitor .05 MFD 400 V  B-77021",
      "V-1     Tube 6K7                 B-90044",
  });
  ListState state;
  std::vector<std::string> rows;
  for (const Entry& entry : ExtractEntries(list, ShippedRules(), state)) {
    rows.push_back(entry.designator + " " + entry.part_number);
  }
  EXPECT_THAT(rows, ElementsAre("R1 B-841", "R2 B-124", "R3 B-84127", "C1 B-77021", "C2 B-77021", "V1 B-90044"));
}

}  // namespace
}  // namespace benchleaf::extract
