#include "benchleaf/binder/page_picture.h"

#include <gtest/gtest.h>

namespace benchleaf::binder {
namespace {

PageFrame Scan(int width, int height, double dpi, double scale) {
  PageFrame frame;
  frame.scan_width = width;
  frame.scan_height = height;
  frame.dpi = dpi;
  frame.scale = scale;
  return frame;
}

TEST(LegibleSide, KeepsWhatAPersonReads) {
  struct Case {
    const char* why;
    PageFrame frame;
    int side;
  };
  for (const Case& c : {
           // Lettering of 2 mm has 12 px at 150 px an inch.
           Case{"300 dpi, lettering of 48 px", Scan(2550, 3300, 300, 0.5), 1650},
           Case{"300 dpi, lettering of 20 px", Scan(2550, 3300, 300, 1.2), 2310},
           Case{"100 dpi is never enlarged", Scan(850, 1100, 100, 3), 1100},
           Case{"no resolution stated, lettering of 24 px", Scan(2000, 1000, 0, 1), 1167},
           Case{"a fold-out of four sheets", Scan(20000, 9000, 300, 1.5), 7000},
           Case{"not read", PageFrame{}, 2400},
       }) {
    EXPECT_EQ(LegibleSide(c.frame), c.side) << c.why;
  }
}

TEST(PicturePage, TurnsAndMakesAPageSmaller) {
  ColorImage scan;
  scan.width = 400;
  scan.height = 200;
  scan.pixels.assign(std::size_t{400} * 200 * 3, 230);
  const auto files = PicturePage(scan, 90, 200);
  ASSERT_TRUE(files) << files.error().ToString();
  EXPECT_EQ(files->size.width, 100);
  EXPECT_EQ(files->size.height, 200);
  EXPECT_EQ(files->page.substr(0, 2), "\xFF\xD8") << "JPEG's start of image (ITU-T T.81, B.1.1.3)";
  EXPECT_FALSE(PicturePage(ColorImage{}, 0, 200));
}

}  // namespace
}  // namespace benchleaf::binder
