#include "report/mark_label.h"

#include "report/lettered.h"

#include "benchleaf/labels/label.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>

namespace benchleaf {
namespace {

constexpr double kPlateCover = 0.88;  // what lies under the plate is still seen to go on there

bool IsClear(const Box& plate, const ColorImage& image, const std::vector<Box>& taken) {
  if (Intersection(plate, {0, 0, image.width, image.height}) != plate) return false;
  return std::none_of(taken.begin(), taken.end(), [&](const Box& box) { return !Intersection(plate, box).empty(); });
}

Box Placed(const ColorImage& image, const Box& ring, int width, int height, const std::vector<Box>& taken) {
  const int gap = height / 6;
  const std::array<Box, 6> places = {{
      {ring.x, ring.y - gap - height, width, height},
      {ring.x, ring.bottom() + gap, width, height},
      {ring.right() + gap, static_cast<int>(ring.center_y()) - height / 2, width, height},
      {ring.x - gap - width, static_cast<int>(ring.center_y()) - height / 2, width, height},
      {ring.right() - width, ring.y - gap - height, width, height},
      {ring.right() - width, ring.bottom() + gap, width, height},
  }};
  const auto* clear =
      std::find_if(places.begin(), places.end(), [&](const Box& p) { return IsClear(p, image, taken); });
  Box plate = clear != places.end() ? *clear : places.front();
  plate.x = std::clamp(plate.x, 0, std::max(0, image.width - width));
  plate.y = std::clamp(plate.y, 0, std::max(0, image.height - height));
  return plate;
}

}  // namespace

Box DrawMarkLabel(ColorImage& image, const Box& ring, const std::string& text, const std::vector<Box>& taken) {
  // A capital is then about a hundredth of the picture: as legible as a callout on a page of that size.
  const int line = std::clamp(std::max(image.width, image.height) / 55, 14, 48);
  const int margin = line / 5;
  const GreyImage label =
      Label(CleanText(text), {.height_px = line, .max_width_px = image.width / 2, .weight = LabelWeight::kBold});
  const Box plate = Placed(image, ring, label.width + 2 * margin, label.height, taken);
  FillBox(image, plate, {255, 255, 255}, kPlateCover);
  FillBox(image, {plate.x, plate.bottom() - std::max(2, line / 12), plate.width, std::max(2, line / 12)}, kRingColor);
  DrawLettering(image, label, plate.x + margin, plate.y, {0x5A, 0x08, 0x40});
  return plate;
}

}  // namespace benchleaf
