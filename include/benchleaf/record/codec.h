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
// crash, whatever they are. Text that is not UTF-8 is mended with U+FFFD when encoding; names (of sets, manuals, files)
// come back byte for byte. Boxes on the scan are kept to a millionth of the page, confidences to a ten-thousandth;
// both are cut to 0..1, and a measure that is not finite is kept as 0.
std::string EncodeReading(const PageReading& reading);
Result<PageReading> DecodeReading(std::string_view bytes);
// The frame alone of an encoded reading; what stands behind it is neither decoded nor checked.
Result<PageFrame> DecodeReadingFrame(std::string_view bytes);

// What of a page is written; the rest is empty when it is decoded. `kRecord` is without sightings and reading.
enum class PageParts { kRecord, kWithoutReading, kAll };
std::string EncodePage(const PageRecord& page, PageParts parts);
Result<PageRecord> DecodePage(std::string_view bytes);
// What stands in front of the sightings: what the page is, not what is on it. The rest is neither decoded nor checked.
Result<PageRecord> DecodePageHead(std::string_view bytes);

// One sighting alone, so that an answer need not decode all others of its page.
std::string EncodeSighting(const Sighting& sighting);
Result<Sighting> DecodeSighting(std::string_view bytes);

// The manual with its files, without pages and links.
std::string EncodeManualHead(const ManualRecord& manual);
Result<ManualRecord> DecodeManualHead(std::string_view bytes);

std::string EncodeLinks(const std::vector<Link>& links);
Result<std::vector<Link>> DecodeLinks(std::string_view bytes);

// The export's lines of one manual, each ending in a newline: pages, sightings, entries, links, in the order of the
// pages and of the vectors. Fields are documented in the README. Numbers: boxes and confidences rounded to 4 decimals.
// REQUIRES: LinksFit(manual).
std::string ExportLines(const ManualRecord& manual);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_CODEC_H_
