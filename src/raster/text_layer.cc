#include "raster/text_layer.h"

#include <poppler-page.h>

#include <algorithm>
#include <string>

namespace benchleaf {

std::vector<LayerWord> TextLayer(const poppler::page& page, double width, double height) {
  std::vector<LayerWord> words;
  for (const poppler::text_box& box : page.text_list()) {
    const poppler::byte_array bytes = box.text().to_utf8();
    LayerWord word;
    word.text.assign(bytes.begin(), bytes.end());
    word.turn = (box.rotation() % 4 + 4) % 4 * 90;  // the renderer counts quarter turns
    const poppler::rectf rect = box.bbox();
    const double left = std::clamp(rect.left() / width, 0.0, 1.0);
    const double top = std::clamp(rect.top() / height, 0.0, 1.0);
    word.box = {left, top, std::clamp(rect.right() / width, 0.0, 1.0) - left,
                std::clamp(rect.bottom() / height, 0.0, 1.0) - top};
    if (!word.text.empty() && word.box.width > 0 && word.box.height > 0) {
      words.push_back(std::move(word));
    }
  }
  return words;
}

}  // namespace benchleaf
