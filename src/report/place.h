// How answers name a page, a term's place on it and how sure they are: the same in every report.

#ifndef BENCHLEAF_SRC_REPORT_PLACE_H_
#define BENCHLEAF_SRC_REPORT_PLACE_H_

#include "benchleaf/record/json.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// "12", or "12 (printed 8-17)" when the page bears another number than its place in the file.
std::string PageWords(const PagePlace& place);

// "chassis.pdf p. 3 (printed 8-17)".
std::string ShortPlace(const PagePlace& place);

// "93 %".
std::string Sureness(double confidence);

// The sighting's text as it was read, when that differs from the canonical text; else empty.
std::string ReadAs(const Sighting& sighting);

// set, manual, file, page, printed_page, page_kind.
void SetPlace(Json& object, const PagePlace& place);

// kind, text, read, box, turn, where, confidence, assembly.
void SetSighting(Json& object, const Sighting& sighting);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_PLACE_H_
