// A page's picture with spots over it, as SVG: it scales, prints and links without a script.

#ifndef BENCHLEAF_SRC_BINDER_PAGE_DRAWING_H_
#define BENCHLEAF_SRC_BINDER_PAGE_DRAWING_H_

#include "binder/markup.h"

#include "benchleaf/binder/book.h"
#include "benchleaf/binder/page_picture.h"

#include <string>
#include <vector>

namespace benchleaf::binder {

struct LinkedSpot {
  const Spot* spot = nullptr;
  std::string to;     // address
  std::string words;  // what a pointer that rests on it is told
};

// The whole page. A spot is ringed when the document's address names it.
Markup WholePage(const BookPage& page, const PagePicture& picture, const std::vector<LinkedSpot>& spots);

// The surroundings of one spot, ringed; `name` says what is shown.
Markup RingedCrop(const BookPage& page, const PagePicture& picture, const Spot& spot, const std::string& name);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_PAGE_DRAWING_H_
