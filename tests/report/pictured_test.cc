#include "benchleaf/report/pictured.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(PicturedText, NamesFilesAndPlace) {
  Pictured pictured;
  pictured.place.set = "Q 12";
  pictured.place.file = "m.pdf";
  pictured.place.page = 3;
  pictured.box = FractionBox{0.1, 0.1, 0.02, 0.02};
  pictured.sighting.emplace();
  pictured.sighting->text = "C112";
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

}  // namespace
}  // namespace benchleaf
