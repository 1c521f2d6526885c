#include "tubes/decode_systems.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <string>

namespace benchleaf::tubes {
namespace {

struct HeaterLetter {
  char letter;
  const char* meaning;
  VoltRange volts;  // 0 where the letter speaks of current
  double amps;      // 0 where the letter speaks of volts
};

// European designation of 1934, later Pro Electron; from memory. Some types of letter E or P with a heater of
// 6.3 V and 0.3 A serve in both kinds of set.
constexpr std::array<HeaterLetter, 15> kHeaters = {{
    {'A', "heater of 4 V", {3.8, 4.2}, 0},
    {'B', "heater of 180 mA for series strings", {}, 0.18},
    {'C', "heater of 200 mA for series strings", {}, 0.2},
    {'D', "filament of up to 1.5 V, for a battery", {0.5, 2.9}, 0},
    {'E', "heater of 6.3 V", {6.3, 6.3}, 0},
    {'F', "heater of 12.6 V", {12.6, 13}, 0},
    {'G', "heater of 5 V (rectifiers), or of another voltage", {}, 0},
    {'H', "heater of 150 mA for series strings", {}, 0.15},
    {'K', "filament of 2 V, for a lead cell", {1.9, 2.1}, 0},
    {'L', "heater of 450 mA for series strings", {}, 0.45},
    {'P', "heater of 300 mA for series strings", {}, 0.3},
    {'U', "heater of 100 mA for series strings", {}, 0.1},
    {'V', "heater of 50 mA for series strings", {}, 0.05},
    {'X', "heater of 600 mA for series strings", {}, 0.6},
    {'Y', "heater of 450 mA for series strings", {}, 0.45},
}};

struct SystemLetter {
  char letter;
  const char* meaning;
};

constexpr std::array<SystemLetter, 15> kSystems = {{
    {'A', "single diode"},
    {'B', "dual diode"},
    {'C', "triode"},
    {'D', "power triode"},
    {'E', "tetrode"},
    {'F', "pentode"},
    {'H', "hexode or heptode"},
    {'K', "octode or heptode"},
    {'L', "power pentode or tetrode"},
    {'M', "tuning indicator"},
    {'N', "thyratron"},
    {'P', "secondary-emission tube"},
    {'Q', "enneode"},
    {'Y', "half-wave rectifier or damper"},
    {'Z', "full-wave rectifier"},
}};

// The base by the figures: one figure, side contacts; else the first of two, of a three-figure number below 200 (and of
// any special-quality number below 300) the second.
std::string BaseOf(std::string_view number, bool special_quality) {
  if (number.size() == 1) return "side-contact";
  if (number.size() == 3 && number[0] == '2' && !special_quality) return "decal";
  const bool second = number.size() == 3 && (number[0] == '1' || number[0] == '2');
  if (number.size() > 3) return "";
  switch (second ? number[1] : number[0]) {
    case '1':
      return "8-pin steel";
    case '3':
      return "octal";
    case '4':
      return number.size() == 2 ? "rimlock" : "";
    case '5':
      return number.size() == 3 && !second ? "magnoval" : "";
    case '8':
      return "noval";
    case '9':
      return "7-pin miniature";
    default:
      return "";  // 20 to 29 and 70 to 79 were given to lock-in and to other bases, 50 to 69 to special ones
  }
}

void AddHeater(const HeaterLetter& heater, DecodedType& decoded) {
  decoded.parts.push_back({std::string(1, heater.letter), heater.meaning});
  if (heater.volts.high > 0) decoded.heater_volts = heater.volts;
  if (heater.amps > 0) decoded.heater_amps = heater.amps;
}

bool AddSystems(std::string_view systems, DecodedType& decoded) {
  for (const char letter : systems) {
    const auto* found = std::find_if(kSystems.begin(), kSystems.end(),
                                     [letter](const SystemLetter& one) { return one.letter == letter; });
    if (found == kSystems.end()) return false;
    decoded.parts.push_back({std::string(1, letter), found->meaning});
  }
  return true;
}

void AddNumber(std::string_view number, bool special_quality, DecodedType& decoded) {
  decoded.base = BaseOf(number, special_quality);
  decoded.parts.push_back({std::string(number), decoded.base.empty()
                                                    ? "order of registration; the base is not sure by the figures"
                                                    : "base: " + decoded.base + "; order of registration"});
}

std::string KiloVolts(std::string_view figures) {
  return std::string(figures.substr(0, figures.size() - 1)) + "." + std::string(figures.substr(figures.size() - 1));
}

}  // namespace

// ECC83, EL3N, UABC80; special quality moves the figures forward: E88CC.
std::optional<DecodedType> DecodeEuropean(std::string_view type) {
  const std::size_t capitals = CapitalsInFront(type);
  const auto* heater = std::find_if(kHeaters.begin(), kHeaters.end(),
                                    [&](const HeaterLetter& one) { return !type.empty() && one.letter == type[0]; });
  if (capitals < 1 || capitals > 4 || heater == kHeaters.end()) return std::nullopt;
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kEuropean;
  decoded.complete = true;
  AddHeater(*heater, decoded);
  const std::string_view number = type.substr(capitals, FiguresInFront(type.substr(capitals)));
  const std::string_view behind = type.substr(capitals + number.size());
  if (number.empty() || number.size() > 4) return std::nullopt;
  if (capitals == 1) {
    if (number.size() < 2 || behind.empty() || behind.size() > 3) return std::nullopt;
    AddNumber(number, true, decoded);
    if (!AddSystems(behind, decoded)) return std::nullopt;
    decoded.parts.push_back({"", "figures before the letters: special quality, for long life or close limits"});
    return decoded;
  }
  if (!AddSystems(type.substr(1, capitals - 1), decoded) || behind.size() > 1 ||
      (!behind.empty() && !IsUpper(behind[0]))) {
    return std::nullopt;
  }
  AddNumber(number, false, decoded);
  if (!behind.empty()) decoded.parts.push_back({std::string(behind), "a later form of the same tube"});
  return decoded;
}

// 85A2, 150B2: the voltage held, the current, a number. The receiving form of RETMA/EIA begins with a heater voltage:
// none between 75 and 150 V was given out but 117.
std::optional<DecodedType> DecodeEuropeanGas(std::string_view type) {
  const auto parts = SplitNumberFirst(type);
  if (!parts || parts->letters.size() != 1 || parts->elements.size() != 1 || !parts->suffix.empty() ||
      parts->elements[0] > '4' || parts->letters[0] > 'E') {
    return std::nullopt;
  }
  const std::string number(parts->number);
  if (number.size() > 3 || std::stoi(number) < 75 || number == "117") return std::nullopt;
  constexpr std::array<const char*, 5> kCurrents = {"up to 10 mA", "up to 22 mA", "up to 40 mA", "up to 100 mA",
                                                    "up to 200 mA"};
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kEuropeanGas;
  decoded.complete = true;
  decoded.heater_volts = VoltRange{};
  decoded.parts.push_back({number, "holds about " + number + " V; no heater"});
  decoded.parts.push_back(
      {std::string(parts->letters), kCurrents.at(static_cast<std::size_t>(parts->letters[0] - 'A'))});
  decoded.parts.push_back({std::string(parts->elements), "order of registration"});
  return decoded;
}

// QQE03/12, QQV03-10, QV06-20.
std::optional<DecodedType> DecodeEuropeanTransmit(std::string_view type) {
  const std::size_t letters = CapitalsInFront(type);
  const std::string_view kind = type.substr(0, letters);
  constexpr std::array<std::string_view, 4> kKinds = {"QE", "QV", "QQE", "QQV"};
  if (std::find(kKinds.begin(), kKinds.end(), kind) == kKinds.end()) return std::nullopt;
  const std::size_t figures = FiguresInFront(type.substr(letters));
  const std::size_t stroke = letters + figures;
  if (figures != 2 || stroke >= type.size() || (type[stroke] != '/' && type[stroke] != '-')) return std::nullopt;
  const std::string_view rest = type.substr(stroke + 1);
  const std::string power(rest.substr(0, FiguresInFront(rest)));
  const std::string_view behind = rest.substr(power.size());
  if (power.empty() || behind.size() > 1) return std::nullopt;
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kEuropeanTransmit;
  decoded.complete = true;
  decoded.parts.push_back({std::string(kind.substr(0, letters - 1)), letters == 3 ? "dual tetrode" : "tetrode"});
  decoded.parts.push_back({std::string(kind.substr(letters - 1)), "indirectly heated cathode"});
  decoded.parts.push_back(
      {std::string(type.substr(letters, figures)), "about " + KiloVolts(type.substr(letters, figures)) + " kV"});
  decoded.parts.push_back({power, "about " + power + " W"});
  if (!behind.empty()) decoded.parts.push_back({std::string(behind), "a later form of the same tube"});
  return decoded;
}

}  // namespace benchleaf::tubes
