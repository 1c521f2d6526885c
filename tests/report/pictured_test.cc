#include "benchleaf/report/pictured.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

RingedPlace Ringed(const std::string& text, const FractionBox& box) {
  RingedPlace ringed;
  ringed.box = box;
  ringed.sighting.emplace();
  ringed.sighting->text = text;
  ringed.sighting->box = box;
  return ringed;
}

TEST(PicturedText, NamesFilesAndPlace) {
  Pictured pictured;
  pictured.place.set = "Q 12";
  pictured.place.file = "m.pdf";
  pictured.place.page = 3;
  pictured.ringed = {Ringed("C112", {0.1, 0.1, 0.02, 0.02})};
  pictured.spot_file = "C112.png";
  pictured.page_file = "C112-page.png";
  EXPECT_EQ(PicturedText(pictured),
            "C112.png, C112-page.png: C112 in Q 12, m.pdf, page 3, upper left, 11 % across, 11 % down\n");
  pictured.turned = 90;
  EXPECT_EQ(PicturedText(pictured),
            "C112.png, C112-page.png: C112 in Q 12, m.pdf, page 3, upper left, 11 % across, 11 % down of the page as "
            "scanned; turned 90\u00B0 to stand upright\n");
}

TEST(PicturedText, OfAPageWithoutARingNamesOneFile) {
  Pictured pictured;
  pictured.place.file = "m\x1b.pdf";
  pictured.place.page = 3;
  pictured.page_file = "m-3.png";
  EXPECT_EQ(PicturedText(pictured), "m-3.png: m\uFFFD.pdf, page 3\n");
}

TEST(PicturedText, CountsTheTermsOfOnePicture) {
  Pictured pictured;
  pictured.place.file = "m.pdf";
  pictured.ringed = {Ringed("C1", {0.1, 0.1, 0.02, 0.02}), Ringed("R5", {0.2, 0.1, 0.02, 0.02}),
                     Ringed("C1", {0.5, 0.1, 0.02, 0.02})};
  pictured.spot_file = "a.png";
  EXPECT_EQ(PicturedText(pictured), "a.png: C1 (2 places), R5 in m.pdf, page 1\n");
}

TEST(PicturedJson, TellsPlacesOfOnePictureInAnArray) {
  Pictured pictured;
  pictured.ringed = {Ringed("C1", {0.1, 0.1, 0.02, 0.02})};
  EXPECT_EQ(PicturedJson(pictured).find("\"places\""), std::string::npos);
  EXPECT_NE(PicturedJson(pictured).find("\"text\":\"C1\""), std::string::npos);
  pictured.together = true;
  EXPECT_NE(PicturedJson(pictured).find("\"places\":[{"), std::string::npos);
}

TEST(SheetCaption, NamesSetPartAndPage) {
  SheetPlace place;
  place.place.set = "Q\x1b 12";
  place.place.page = 3;
  place.place.printed_number = "5-1";
  place.place.kind = PageKind::kSchematic;
  place.sighting.text = "6AU6";
  place.designator = "V3";
  const SheetCaption caption = CaptionOf(place);
  EXPECT_EQ(caption.set, "Q\uFFFD 12");
  EXPECT_EQ(caption.what, "V3  6AU6");
  EXPECT_EQ(caption.page, "p. 3 (printed 5-1), schematic");
  EXPECT_EQ(SheetTitle("6AU6", {place, place}), "6AU6: 2 places in 1 set");
}

}  // namespace
}  // namespace benchleaf
