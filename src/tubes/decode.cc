#include "benchleaf/tubes/decode.h"

#include "tubes/decode_systems.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace benchleaf {
namespace {

// In capitals, without spaces; OA2 is printed as often as 0A2.
std::string Plain(std::string_view text) {
  std::string plain;
  for (const char c : text) {
    if (c != ' ') plain += ToUpper(c);
  }
  std::string type(WithoutServiceMark(plain));
  if (type.size() > 2 && type[0] == 'O' && IsUpper(type[1]) && IsDigit(type[2])) type[0] = '0';
  return type;
}

std::string WithoutDashes(std::string type) {
  type.erase(std::remove(type.begin(), type.end(), '-'), type.end());
  return type;
}

}  // namespace

std::string_view Name(TypeSystem system) {
  switch (system) {
    case TypeSystem::kReceiving:
      return "RETMA/EIA receiving tubes";
    case TypeSystem::kCathodeRay:
      return "JEDEC/EIA cathode-ray tubes";
    case TypeSystem::kPowerClass:
      return "RETMA tubes for transmitting and industry";
    case TypeSystem::kIndustrial:
      return "RETMA/EIA industrial numbers";
    case TypeSystem::kBareNumber:
      return "bare numbers";
    case TypeSystem::kEuropean:
      return "European receiving tubes";
    case TypeSystem::kEuropeanScreen:
      return "European cathode-ray tubes";
    case TypeSystem::kEuropeanGas:
      return "European regulator tubes";
    case TypeSystem::kEuropeanTransmit:
      return "European transmitting tubes";
    case TypeSystem::kService:
      return "service numbers";
    case TypeSystem::kUnknown:
      break;
  }
  return "unknown";
}

std::string_view SourceOf(TypeSystem system) {
  switch (system) {
    case TypeSystem::kReceiving:
      return "RETMA standard ET-109-A, from memory";
    case TypeSystem::kCathodeRay:
      return "JEDEC publication 16, from memory";
    case TypeSystem::kPowerClass:
      return "RETMA four-part designation, from memory";
    case TypeSystem::kIndustrial:
      return "RETMA/EIA registration, from memory";
    case TypeSystem::kEuropean:
    case TypeSystem::kEuropeanScreen:
    case TypeSystem::kEuropeanGas:
    case TypeSystem::kEuropeanTransmit:
      return "European and Pro Electron designation, from memory";
    case TypeSystem::kBareNumber:
    case TypeSystem::kService:
    case TypeSystem::kUnknown:
      break;
  }
  return "common practice, no source";
}

DecodedType DecodeTubeType(std::string_view text) {
  const std::vector<std::string> names = TubeNames(Plain(text));
  DecodedType decoded;
  if (names.empty()) return decoded;
  decoded.type = names.front();
  // These two are told by a stroke or dash inside.
  for (const auto read : {tubes::DecodeEuropeanTransmit, tubes::DecodeEuropeanScreen}) {
    if (auto found = read(decoded.type)) return *found;
  }
  decoded.type = WithoutDashes(decoded.type);
  // A form that two systems share goes to the one that stands first.
  for (const auto read :
       {tubes::DecodeCathodeRay, tubes::DecodeEuropeanGas, tubes::DecodeReceiving, tubes::DecodePowerClass,
        tubes::DecodeBareNumber, tubes::DecodeService, tubes::DecodeEuropean}) {
    if (auto found = read(decoded.type)) return *found;
  }
  return decoded;
}

}  // namespace benchleaf
