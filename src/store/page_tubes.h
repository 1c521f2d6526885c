// The tubes that a page names, as `tube` tells of them: kept beside the page's document, so that none is opened and
// unpacked for that question.

#ifndef BENCHLEAF_STORE_PAGE_TUBES_H_
#define BENCHLEAF_STORE_PAGE_TUBES_H_

#include "store/stored.h"

#include "benchleaf/core/geometry.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::store {

// Views into the value.
struct PageTube {
  StoredSighting sighting;      // of kind kTube
  std::string_view designator;  // that it belongs to; empty when none stands beside it
};

struct PageTubes {
  PagePlace place;
  std::vector<PageTube> tubes;  // in the order of the page's sightings
};

// The value of a page from its document's data, not from its record: what is told with it and without is the same to
// the last digit. Throws Xapian::DatabaseCorruptError.
std::string EncodePageTubes(std::string_view page_data, const PageFrame& frame);

// `value` must outlive what is returned. Throws Xapian::DatabaseCorruptError.
PageTubes ParsePageTubes(std::string_view value);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_PAGE_TUBES_H_
