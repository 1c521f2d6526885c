// What a scan's hidden text layer is worth, and what is taken from it. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_LAYER_WORDS_H_
#define BENCHLEAF_SRC_READING_LAYER_WORDS_H_

#include "benchleaf/raster/page_source.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// The share of surely read words that the layer has alike in the same place: 0 to 1. 0 when fewer than ten words can
// be compared, for then nothing proves the layer.
double LayerAgreement(const std::vector<LayerWord>& layer, const PageReading& reading);

// Adds the layer's words to the reading where it proves good: where a word was read badly (the layer's text takes its
// place, the text as read becomes an alternative) and where none was read. A layer that disagrees with what is seen is
// left out whole.
void AddLayerWords(const std::vector<LayerWord>& layer, PageReading& reading);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_LAYER_WORDS_H_
