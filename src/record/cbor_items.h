// What the writer and the reader of the stored forms agree on. Every record is an array of fixed length, not a map:
// field names would double the size of a page. A change of any form needs a new schema version (store/schema.h).

#ifndef BENCHLEAF_RECORD_CBOR_ITEMS_H_
#define BENCHLEAF_RECORD_CBOR_ITEMS_H_

namespace benchleaf::cbor {

// Major types and simple values of RFC 8949, sections 3.1 and 3.3.
inline constexpr unsigned kUnsigned = 0;
inline constexpr unsigned kNegative = 1;
inline constexpr unsigned kBytes = 2;
inline constexpr unsigned kText = 3;
inline constexpr unsigned kArray = 4;
inline constexpr unsigned kSimple = 7;
inline constexpr unsigned kFalse = 20;
inline constexpr unsigned kTrue = 21;
inline constexpr unsigned kNull = 22;
inline constexpr unsigned kSingle = 26;
inline constexpr unsigned kDouble = 27;

// Confidences are kept in ten-thousandths: as fine as the export shows them.
inline constexpr double kConfidenceUnits = 1e4;
// Boxes in millionths of the page: a thirtieth of a pixel on the largest page that is read.
inline constexpr double kFractionUnits = 1e6;

}  // namespace benchleaf::cbor

#endif  // BENCHLEAF_RECORD_CBOR_ITEMS_H_
