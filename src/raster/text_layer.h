// The words that a PDF page holds as text.

#ifndef BENCHLEAF_RASTER_TEXT_LAYER_H_
#define BENCHLEAF_RASTER_TEXT_LAYER_H_

#include "benchleaf/raster/page_source.h"

#include <vector>

namespace poppler {
class page;
}

namespace benchleaf {

// The words on the page as shown, which measures width x height points, in the renderer's order. Words without text
// and words wholly off the page are left out.
std::vector<LayerWord> TextLayer(const poppler::page& page, double width, double height);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_TEXT_LAYER_H_
