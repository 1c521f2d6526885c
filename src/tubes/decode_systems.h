// One reader for each system of type numbers. Each gives nothing when the text has not the system's form.

#ifndef BENCHLEAF_SRC_TUBES_DECODE_SYSTEMS_H_
#define BENCHLEAF_SRC_TUBES_DECODE_SYSTEMS_H_

#include "benchleaf/tubes/decode.h"

#include <optional>
#include <string_view>
#include <vector>

namespace benchleaf::tubes {

// All of them take the type in capitals.
std::optional<DecodedType> DecodeReceiving(std::string_view type);
std::optional<DecodedType> DecodePowerClass(std::string_view type);
std::optional<DecodedType> DecodeCathodeRay(std::string_view type);
std::optional<DecodedType> DecodeEuropean(std::string_view type);
std::optional<DecodedType> DecodeEuropeanScreen(std::string_view type);
std::optional<DecodedType> DecodeEuropeanGas(std::string_view type);
std::optional<DecodedType> DecodeEuropeanTransmit(std::string_view type);
std::optional<DecodedType> DecodeBareNumber(std::string_view type);
std::optional<DecodedType> DecodeService(std::string_view type);

// What the letters behind a RETMA/EIA number say (GT, W, A), added part by part; false when one of them says nothing
// that the standard knows.
bool AddSuffix(std::string_view suffix, std::vector<TypePart>& parts);

}  // namespace benchleaf::tubes

#endif  // BENCHLEAF_SRC_TUBES_DECODE_SYSTEMS_H_
