#include "benchleaf/report/parts.h"

#include <gmock/gmock.h>

#include <string>

namespace benchleaf {
namespace {

using testing::HasSubstr;

FoundEntry Part(const std::string& manual, const std::string& assembly, const std::string& designator) {
  FoundEntry found;
  found.place.set = "Q 12";
  found.place.manual = manual;
  found.place.file = manual + ".pdf";
  found.place.page = 9;
  found.entry.designator = designator;
  found.entry.assembly = assembly;
  found.entry.description = "RESISTOR";
  found.entry.confidence = 0.8;
  return found;
}

FoundEntry::Seen DrawnOn(const std::string& file, int page) {
  FoundEntry::Seen seen;
  seen.place.file = file;
  seen.place.page = page;
  seen.sighting.box = {0.9, 0.9, 0.01, 0.01};
  return seen;
}

TEST(PartsText, GivesALineForEachPlaceWhereThePartIsDrawn) {
  FoundEntry part = Part("m", "", "R1");
  part.seen = {DrawnOn("m.pdf", 3), DrawnOn("m.pdf", 4)};
  EXPECT_EQ(PartsText("Q 12", {part, Part("m", "", "R2")}, {}),
            "Q 12: 2 parts, 1 of them seen on a drawing\n"
            "part  description  list page   drawn on                 sure\n"
            "----  -----------  ----------  -----------------------  ----\n"
            "R1    RESISTOR     m.pdf p. 9  m.pdf p. 3, lower right  80 %\n"
            "                               m.pdf p. 4, lower right\n"
            "R2    RESISTOR     m.pdf p. 9  not seen                 80 %\n");
}

TEST(PartsText, KeepsTwoManualsApart) {
  const std::string text = PartsText("Q 12", {Part("early", "", "R1"), Part("late", "", "R1")}, {});
  EXPECT_THAT(text, HasSubstr("Q 12, early: 1 part, 0 of them seen on a drawing\n"));
  EXPECT_THAT(text, HasSubstr("\n\nQ 12, late: 1 part, 0 of them seen on a drawing\n"));
}

TEST(PartsText, PutsTheAssemblyBeforeADesignatorOnce) {
  const std::string text = PartsText("Q 12", {Part("m", "A4", "R1"), Part("m", "A4", "A4R2"), Part("m", "A4", "")}, {});
  EXPECT_THAT(text, HasSubstr("\nA4R1 "));
  EXPECT_THAT(text, HasSubstr("\nA4R2 "));
}

TEST(PartsText, NamesAPartByItsItemNumberWhereTheListHasNoDesignators) {
  FoundEntry part = Part("m", "", "");
  part.entry.item = "12";
  FoundEntry other = Part("m", "A4", "");
  other.entry.item = "3A";
  EXPECT_EQ(PartsText("Q 12", {part, other}, {}),
            "Q 12: 2 parts, 0 of them seen on a drawing\n"
            "part        description  list page   drawn on  sure\n"
            "----------  -----------  ----------  --------  ----\n"
            "item 12     RESISTOR     m.pdf p. 9  not seen  80 %\n"
            "A4 item 3A  RESISTOR     m.pdf p. 9  not seen  80 %\n");
}

TEST(PartsCsv, OfNothingIsTheHeaderAlone) {
  EXPECT_EQ(
      PartsCsv({}),
      "set,manual,designator,assembly,item,description,value,part_number,quantity,file,page,confidence,drawn_on\r\n");
}

TEST(PartsCsv, NamesEveryPlaceInOneField) {
  FoundEntry part = Part("m", "", "R1");
  part.seen = {DrawnOn("m.pdf", 3), DrawnOn("m.pdf", 4)};
  EXPECT_THAT(PartsCsv({part}),
              HasSubstr(",\"m.pdf p. 3, lower right, 91 % across, 91 % down; m.pdf p. 4, lower right, "
                        "91 % across, 91 % down\"\r\n"));
}

}  // namespace
}  // namespace benchleaf
