// Values to JSON and back: the pipe to the workers, the documents of the index, and export use the same forms.

#ifndef BENCHLEAF_RECORD_CODEC_H_
#define BENCHLEAF_RECORD_CODEC_H_

#include "benchleaf/core/result.h"
#include "benchleaf/reading/page_reading.h"
#include "benchleaf/record/manual_record.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf {

// Compact binary forms (CBOR, RFC 8949). Decoding checks every field; bytes that do not fit give kDamaged and never
// crash, whatever they are. Text that is not UTF-8 is mended with U+FFFD when encoding.
std::string EncodeReading(const PageReading& reading);
Result<PageReading> DecodeReading(std::string_view bytes);

// Without the pages' readings when `with_readings` is false.
enum class WithReadings { kNo, kYes };
std::string EncodePage(const PageRecord& page, WithReadings with_readings);
Result<PageRecord> DecodePage(std::string_view bytes);

// The manual with its files, without pages and links.
std::string EncodeManualHead(const ManualRecord& manual);
Result<ManualRecord> DecodeManualHead(std::string_view bytes);

// The export's lines of one manual, each ending in a newline: pages, sightings, entries, links, in the order of the
// pages and of the vectors. Fields are documented in the README. Numbers: boxes and confidences rounded to 4 decimals.
std::string ExportLines(const ManualRecord& manual);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_CODEC_H_
