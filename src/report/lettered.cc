#include "report/lettered.h"

#include "report/color_image.h"

namespace benchleaf {

void DrawLettering(ColorImage& image, const GreyImage& label, int x, int y, const Rgb& color) {
  const Box there = Intersection({x, y, label.width, label.height}, {0, 0, image.width, image.height});
  for (int row = there.y; row < there.bottom(); ++row) {
    for (int column = there.x; column < there.right(); ++column) {
      Blend(Pixel(image, column, row), color, 1 - label.row(row - y)[column - x] / 255.0);
    }
  }
}

void FillBox(ColorImage& image, const Box& box, const Rgb& color, double cover) {
  const Box there = Intersection(box, {0, 0, image.width, image.height});
  for (int y = there.y; y < there.bottom(); ++y) {
    for (int x = there.x; x < there.right(); ++x) Blend(Pixel(image, x, y), color, cover);
  }
}

}  // namespace benchleaf
