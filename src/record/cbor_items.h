// The scalars that the stored forms are made of. Every record is an array of fixed length, not a map: field names would
// double the size of a page. A change of any form needs a new schema version (store/schema.h).

#ifndef BENCHLEAF_RECORD_CBOR_ITEMS_H_
#define BENCHLEAF_RECORD_CBOR_ITEMS_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/result.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace benchleaf {

// A text string, mended where it is not UTF-8.
nlohmann::json TextItem(const std::string& text);

// A name that must come back as it was, such as a path: a text string, or a byte string when it is not UTF-8.
nlohmann::json NameItem(const std::string& name);

// A number that is no fraction; 0 when it is not finite.
nlohmann::json RealItem(double value);

// A confidence, cut to 0..1, in ten-thousandths: as fine as the export shows it.
nlohmann::json ConfidenceItem(double confidence);

// [x, y, width, height], cut to 0..1, in millionths: a thirtieth of a pixel on the largest page that is read.
nlohmann::json FractionBoxItem(const FractionBox& box);

// null, or [code, message, source, page].
nlohmann::json FailureItem(const std::optional<Error>& failure);

// The bytes of one item.
std::string CborBytes(const nlohmann::json& item);

inline constexpr double kConfidenceUnits = 1e4;
inline constexpr double kFractionUnits = 1e6;

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_CBOR_ITEMS_H_
