// A page's reading as an item of a larger record.

#ifndef BENCHLEAF_RECORD_READING_ITEMS_H_
#define BENCHLEAF_RECORD_READING_ITEMS_H_

#include "record/cbor_reader.h"
#include "record/cbor_writer.h"

#include "benchleaf/reading/page_reading.h"

namespace benchleaf {

// [frame, measures, words].
void WriteReading(const PageReading& reading, CborWriter& writer);
PageReading ReadReading(CborReader& reader);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_READING_ITEMS_H_
