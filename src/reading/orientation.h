// Which way up a page lies. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_ORIENTATION_H_
#define BENCHLEAF_SRC_READING_ORIENTATION_H_

#include "reading/recognizer.h"

#include "benchleaf/clean/clean_page.h"

namespace benchleaf {

// The turn (0, 90, 180 or 270 degrees clockwise) that makes the page upright, by reading a sample of its strings both
// ways. 0 when nothing tells, for most pages lie as they should.
int FindOrientation(const CleanPage& page, Recognizer& recognizer);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_ORIENTATION_H_
