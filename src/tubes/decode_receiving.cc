#include "tubes/decode_systems.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/tube_form.h"

#include <array>
#include <string>
#include <utility>

namespace benchleaf::tubes {
namespace {

// What a figure nearly always stands for; handbook practice, from memory.
std::string UsualVolts(int figure) {
  switch (figure) {
    case 1:
      return ": 1.25 V, 1.4 V or a 2 V cell";
    case 2:
      return ", mostly 2.5 V, in series strings 2.1 to 2.4 V";
    case 5:
      return ": 5 V in rectifiers, 4.7 or 5.6 V in series strings";
    case 6:
      return ", nearly always 6.3 V";
    case 12:
      return ", nearly always 12.6 V";
    default:
      return "";
  }
}

// RETMA standard ET-109-A, from memory: volts in whole figures, tenths dropped; types for series strings since 1954 are
// rounded to the nearest volt instead (17AX4 has 16.8 V). 1 stands for anything up to 2.1 V.
VoltRange Volts(int figure) {
  if (figure == 1) return {0.1, 2.1};
  return {figure - 0.5, figure + 0.9};
}

// The lock-in types of 1939 were called by a nominal 7 and 14 V of a car's battery being charged; their heaters are
// made for 6.3 and 12.6 V. Their names have one letter but for a few (7AF7), and so have later types of other bases
// (7DJ8).
void AddNumber(const NumberFirst& parts, DecodedType& decoded) {
  const std::string number(parts.number);
  const int figure = std::stoi(number);
  if (figure == 0) {
    decoded.heater_volts = VoltRange{};
    decoded.parts.push_back({number, "cold cathode: no heater"});
    return;
  }
  VoltRange volts = Volts(figure);
  if (figure == 7 || figure == 14) {
    const double lock_in = figure == 7 ? 6.3 : 12.6;
    const std::string usual = figure == 7 ? "6.3 V" : "12.6 V";
    if (parts.letters.size() == 1) {
      decoded.heater_volts = VoltRange{lock_in, static_cast<double>(figure)};
      decoded.base = "loktal";
      decoded.parts.push_back({number, "lock-in base; heater called " + number + " V, made for " + usual});
      return;
    }
    volts.low = lock_in;
    decoded.parts.push_back({number, "heater of about " + number + " V, or of " + usual + " with a lock-in base"});
  } else {
    decoded.parts.push_back({number, "heater of about " + number + " V" + UsualVolts(figure)});
  }
  decoded.heater_volts = volts;
}

void AddLetters(const NumberFirst& parts, DecodedType& decoded) {
  const std::string letters(parts.letters);
  if (letters.size() == 2 && letters[0] == 'S') {
    decoded.parts.push_back({letters, "order of registration; S in front mostly says: no top cap"});
  } else if (letters.size() == 2 && letters[0] == 'L' && (parts.number == "1" || parts.number == "3")) {
    decoded.base = "loktal";
    decoded.parts.push_back({letters, "order of registration; L in front of a battery type says: lock-in base"});
  } else {
    decoded.parts.push_back({letters, "order of registration, says nothing of the tube"});
  }
}

// P and T told the pentode from the tetrode of one number, in battery types of 1934 only (1A4P, 1D5GP).
std::string_view WithoutPentodeMark(const NumberFirst& parts) {
  std::string_view suffix = parts.suffix;
  if (parts.number == "1" && !suffix.empty() && (suffix.back() == 'P' || suffix == "T")) suffix.remove_suffix(1);
  return suffix;
}

// Power of the heater, W (RETMA four-part designation, from memory).
constexpr std::array<std::pair<char, const char*>, 9> kPowerClasses = {{
    {'1', "no heater"},
    {'2', "heater of up to 10 W"},
    {'3', "heater of 10 to 20 W"},
    {'4', "heater of 20 to 50 W"},
    {'5', "heater of 50 to 100 W"},
    {'6', "heater of 100 to 200 W"},
    {'7', "heater of 200 to 500 W"},
    {'8', "heater of 500 W to 1 kW"},
    {'9', "heater of more than 1 kW"},
}};

constexpr std::array<std::pair<char, const char*>, 8> kKinds = {{
    {'B', "diode, rectifier or spark gap"},
    {'C', "triode or thyratron with one grid, or two of them"},
    {'D', "tetrode"},
    {'E', "pentode or beam power tube"},
    {'J', "magnetron"},
    {'K', "klystron"},
    {'N', "crystal rectifier"},
    {'P', "phototube, or camera tube"},
}};

}  // namespace

bool AddSuffix(std::string_view suffix, std::vector<TypePart>& parts) {
  struct Meaning {
    std::string_view text;
    const char* meaning;
  };
  // Longer ones first.
  constexpr std::array<Meaning, 6> kMeanings = {{
      {"GT/G", "glass in a small straight bulb with an octal base; serves for the G form too"},
      {"GT", "glass in a small straight bulb with an octal base"},
      {"G", "glass in a large bulb with an octal base"},
      {"W", "made to military specifications: rugged"},
      {"X", "base of low loss"},
      {"Y", "base of low loss"},
  }};
  while (!suffix.empty()) {
    bool found = false;
    for (const Meaning& one : kMeanings) {
      if (suffix.substr(0, one.text.size()) == one.text) {
        parts.push_back({std::string(one.text), one.meaning});
        suffix.remove_prefix(one.text.size());
        found = true;
        break;
      }
    }
    if (found) continue;
    const std::string letter(suffix.substr(0, 1));
    if (letter < "A" || letter > "F") {
      parts.push_back({std::string(suffix), "the standard does not say"});
      return false;
    }
    parts.push_back(
        {letter, "revision " + letter + ": serves in place of the forms before it; not always the reverse"});
    suffix.remove_prefix(1);
  }
  return true;
}

std::optional<DecodedType> DecodeReceiving(std::string_view type) {
  auto parts = SplitNumberFirst(type);
  if (!parts) return std::nullopt;
  const std::string_view suffix = parts->suffix;
  parts->suffix = WithoutPentodeMark(*parts);
  if (!HasReceivingForm(*parts)) return std::nullopt;
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kReceiving;
  AddNumber(*parts, decoded);
  AddLetters(*parts, decoded);
  decoded.parts.push_back({std::string(parts->elements),
                           std::string(parts->elements) + " elements with a connection, the heater counted as one"});
  decoded.complete = AddSuffix(parts->suffix, decoded.parts);
  if (parts->suffix.size() < suffix.size()) {
    const bool pentode = suffix.back() == 'P';
    decoded.parts.push_back({std::string(1, suffix.back()), pentode ? "the pentode of this number" : "the tetrode"});
  }
  if (suffix.substr(0, 1) == "G" || suffix.substr(0, 2) == "WG") decoded.base = "octal";
  return decoded;
}

std::optional<DecodedType> DecodePowerClass(std::string_view type) {
  const auto parts = SplitNumberFirst(type);
  if (!parts || parts->number.size() != 1 || parts->letters.size() != 1 || parts->elements.size() != 2 ||
      parts->elements < "21") {
    return std::nullopt;
  }
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kPowerClass;
  decoded.complete = true;
  const auto add = [&decoded](const auto& table, std::string_view text) {
    for (const auto& [letter, meaning] : table) {
      if (text[0] == letter) {
        decoded.parts.push_back({std::string(text), meaning});
        return;
      }
    }
    decoded.complete = false;
    decoded.parts.push_back({std::string(text), "not known to us"});
  };
  add(kPowerClasses, parts->number);
  add(kKinds, parts->letters);
  if (parts->number == "1") decoded.heater_volts = VoltRange{};
  decoded.parts.push_back({std::string(parts->elements), "order of registration, from 21 up"});
  decoded.complete = AddSuffix(parts->suffix, decoded.parts) && decoded.complete;
  return decoded;
}

}  // namespace benchleaf::tubes
