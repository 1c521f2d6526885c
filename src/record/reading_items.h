// A page's reading as an item of a larger record.

#ifndef BENCHLEAF_RECORD_READING_ITEMS_H_
#define BENCHLEAF_RECORD_READING_ITEMS_H_

#include "record/cbor_reader.h"

#include "benchleaf/reading/page_reading.h"

#include <nlohmann/json.hpp>

namespace benchleaf {

// [frame, measures, words].
nlohmann::json ReadingItem(const PageReading& reading);
PageReading ReadReading(CborReader& reader);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_READING_ITEMS_H_
