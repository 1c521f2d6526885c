// What a type number says by the rules of those who gave it out, whether the type is known or not.

#ifndef BENCHLEAF_TUBES_DECODE_H_
#define BENCHLEAF_TUBES_DECODE_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// Who gave the number out, and so how it is read.
enum class TypeSystem {
  kReceiving,         // RETMA/EIA: heater volts, letters, elements: 6CB6A
  kCathodeRay,        // JEDEC/EIA: screen inches, letters, P, phosphor: 10BP4
  kPowerClass,        // RETMA four-part: heater power, kind, number from 21: 2D21
  kIndustrial,        // RETMA/EIA four figures: 5751
  kBareNumber,        // before 1933, and makers' numbers: 80, 807
  kEuropean,          // European, later Pro Electron: ECC83, E88CC
  kEuropeanScreen,    // Pro Electron and earlier European cathode-ray: A59-11W, AW53-80
  kEuropeanGas,       // European regulator and reference tubes: 85A2
  kEuropeanTransmit,  // European transmitting: QQE03/12
  kService,           // VT, CV, VR, M
  kUnknown,           // none of these
};

// In words: "RETMA/EIA receiving tubes".
std::string_view Name(TypeSystem system);
// The rule that the system is read by, and where we have it from.
std::string_view SourceOf(TypeSystem system);

// A piece of the number and what it stands for.
struct TypePart {
  std::string text;     // "6"
  std::string meaning;  // "heater of about 6 V, nearly always 6.3 V"

  friend bool operator==(const TypePart&, const TypePart&) = default;
};

struct VoltRange {
  double low = 0;
  double high = 0;
};

struct DecodedType {
  std::string type;  // in capitals, without the marks in front: 6AU6WA for JAN-6AU6WA, 0A2 for OA2
  TypeSystem system = TypeSystem::kUnknown;
  std::vector<TypePart> parts;            // in the order of the number; empty for kUnknown
  bool complete = false;                  // every character is explained or known to say nothing
  std::optional<VoltRange> heater_volts;  // where the number speaks of them; 0 to 0 for a cold cathode
  std::optional<double> heater_amps;      // of tubes for series strings of that current
  std::string base;                       // one of TubeBases() where the number tells it for sure
};

// Reads one name of a tube (of "12AX7A/ECC83" the first only), in capitals or not, with or without JAN in front. What
// the number does not say is left out: nothing is looked up in tables of types.
DecodedType DecodeTubeType(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_TUBES_DECODE_H_
