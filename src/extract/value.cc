#include "extract/value.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace benchleaf::extract {
namespace {

struct Unit {
  std::string_view text;
  Quantity quantity;
  double factor;
};

// Longest first where one begins like another. Common practice of 1930 to 1985 in capitals, no source; prefixes of
// IEC 60027.
constexpr std::array<Unit, 63> kUnits = {{
    {"MEGOHMS", Quantity::kResistance, 1e6},
    {"MEGOHM", Quantity::kResistance, 1e6},
    {"MEGS", Quantity::kResistance, 1e6},
    {"MEG", Quantity::kResistance, 1e6},
    {"KILOHMS", Quantity::kResistance, 1e3},
    {"KILOHM", Quantity::kResistance, 1e3},
    {"KOHMS", Quantity::kResistance, 1e3},
    {"KOHM", Quantity::kResistance, 1e3},
    {"MOHM", Quantity::kResistance, 1e6},
    {"OHMS", Quantity::kResistance, 1},
    {"OHM", Quantity::kResistance, 1},
    {"K", Quantity::kResistance, 1e3},
    {"M", Quantity::kResistance, 1e6},
    {"R", Quantity::kResistance, 1},
    {"MMFD", Quantity::kCapacitance, 1e-12},
    {"MMF", Quantity::kCapacitance, 1e-12},
    {"UUFD", Quantity::kCapacitance, 1e-12},
    {"UUF", Quantity::kCapacitance, 1e-12},
    {"PFD", Quantity::kCapacitance, 1e-12},
    {"PF", Quantity::kCapacitance, 1e-12},
    {"P", Quantity::kCapacitance, 1e-12},
    {"NF", Quantity::kCapacitance, 1e-9},
    {"N", Quantity::kCapacitance, 1e-9},
    {"MFD", Quantity::kCapacitance, 1e-6},
    {"MF", Quantity::kCapacitance, 1e-6},
    {"UFD", Quantity::kCapacitance, 1e-6},
    {"UF", Quantity::kCapacitance, 1e-6},
    {"U", Quantity::kCapacitance, 1e-6},
    {"F", Quantity::kCapacitance, 1e-6},  // the micro sign was lost: no set of these years holds a farad
    {"MHY", Quantity::kInductance, 1e-3},
    {"MH", Quantity::kInductance, 1e-3},
    {"UHY", Quantity::kInductance, 1e-6},
    {"UH", Quantity::kInductance, 1e-6},
    {"HENRYS", Quantity::kInductance, 1},
    {"HENRIES", Quantity::kInductance, 1},
    {"HENRY", Quantity::kInductance, 1},
    {"HY", Quantity::kInductance, 1},
    {"H", Quantity::kInductance, 1},
    {"KVDC", Quantity::kVoltage, 1e3},
    {"KV", Quantity::kVoltage, 1e3},
    {"WVDC", Quantity::kVoltage, 1},
    {"VDCW", Quantity::kVoltage, 1},
    {"VDC", Quantity::kVoltage, 1},
    {"VAC", Quantity::kVoltage, 1},
    {"WV", Quantity::kVoltage, 1},
    {"VOLTS", Quantity::kVoltage, 1},
    {"VOLT", Quantity::kVoltage, 1},
    {"MV", Quantity::kVoltage, 1e-3},
    {"V", Quantity::kVoltage, 1},
    {"AMPS", Quantity::kCurrent, 1},
    {"AMP", Quantity::kCurrent, 1},
    {"MA", Quantity::kCurrent, 1e-3},
    {"UA", Quantity::kCurrent, 1e-6},
    {"A", Quantity::kCurrent, 1},
    {"WATTS", Quantity::kPower, 1},
    {"WATT", Quantity::kPower, 1},
    {"W", Quantity::kPower, 1},
    {"KHZ", Quantity::kFrequency, 1e3},
    {"KC", Quantity::kFrequency, 1e3},
    {"MHZ", Quantity::kFrequency, 1e6},
    {"MC", Quantity::kFrequency, 1e6},
    {"HZ", Quantity::kFrequency, 1},
    {"CPS", Quantity::kFrequency, 1},
}};

const Unit* UnitNamed(std::string_view text) {
  const auto* found = std::find_if(kUnits.begin(), kUnits.end(), [&](const Unit& unit) { return unit.text == text; });
  return found == kUnits.end() ? nullptr : found;
}

// A number at the front: figures with one dot, thousands by commas, or a fraction.
struct Number {
  std::size_t length = 0;  // of the text it takes up; 0 when there is none
  double size = 0;
};

double Decimal(const std::string& digits) {
  double size = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), size);
  return size;
}

Number NumberAtFront(std::string_view text) {
  constexpr std::size_t kMostFigures = 9;
  std::string digits;
  bool dot = false;
  std::size_t figures = 0;
  std::size_t at = 0;
  for (; at < text.size(); ++at) {
    const char c = text[at];
    const bool figure_next = at + 1 < text.size() && IsDigit(text[at + 1]);
    if (IsDigit(c)) {
      digits += c;
      ++figures;
    } else if (c == '.' && !dot && figure_next) {
      digits += figures == 0 ? "0." : ".";
      dot = true;
    } else if (c == ',' && !dot && figures > 0 && figures <= 3 && at + 3 < text.size() && IsDigit(text[at + 1]) &&
               IsDigit(text[at + 2]) && IsDigit(text[at + 3]) && (at + 4 == text.size() || !IsDigit(text[at + 4]))) {
      continue;  // 10,000
    } else {
      break;
    }
  }
  if (figures == 0 || figures > kMostFigures) {
    return {};
  }
  if (!dot && figures > 1 && digits.front() == '0') {
    digits.insert(0, "0.");  // no number begins with a nought: its dot was lost
  }
  if (at + 1 < text.size() && text[at] == '/' && !dot && figures <= 2 && IsDigit(text[at + 1])) {
    std::size_t end = at + 1;
    std::string below;
    while (end < text.size() && IsDigit(text[end]) && below.size() < 3) {
      below += text[end++];
    }
    const double divisor = Decimal(below);
    if (divisor > 0 && divisor <= 64) {
      return {end, Decimal(digits) / divisor};
    }
    return {};
  }
  return {at, Decimal(digits)};
}

// 4K7, 2M2, 4P7, 0R22: IEC 60062. The letters of voltages (5V6) are common practice.
std::optional<Value> ParseRkm(const std::string& text) {
  const std::size_t at = text.find_first_not_of("0123456789");
  if (at == std::string::npos || at == 0 || at > 3 || at + 1 >= text.size() || text.size() > at + 3 ||
      !std::all_of(text.begin() + static_cast<std::ptrdiff_t>(at) + 1, text.end(), IsDigit)) {
    return std::nullopt;
  }
  constexpr std::string_view kLetters = "RKMPNUV";
  if (kLetters.find(text[at]) == std::string_view::npos) {
    return std::nullopt;
  }
  const Unit* unit = UnitNamed(std::string_view(text).substr(at, 1));
  const double size = Decimal(text.substr(0, at) + "." + text.substr(at + 1));
  return Value{text, unit->quantity, size * unit->factor, true};
}

// 80-20MFD, 40/40/20UF: the sections of one capacitor. The magnitude is that of the first.
std::optional<Value> ParseSections(const std::string& text) {
  const std::size_t end = text.find_first_not_of("0123456789-/.");
  const std::size_t joint = text.find_first_of("-/");
  if (end == std::string::npos || joint == std::string::npos || joint == 0 || joint + 1 >= end) {
    return std::nullopt;
  }
  const Unit* unit = UnitNamed(std::string_view(text).substr(end));
  const Number first = NumberAtFront(std::string_view(text).substr(0, joint));
  if (unit == nullptr || unit->quantity != Quantity::kCapacitance || unit->text.size() < 2 || first.length != joint ||
      !IsDigit(text[end - 1]) || !IsDigit(text[joint + 1])) {
    return std::nullopt;
  }
  return Value{text, unit->quantity, first.size * unit->factor, false};
}

}  // namespace

bool BeginsWithDecimalComma(std::string_view text) {
  if (text.size() < 4 || !IsDigit(text[0]) || text[1] != ',' || !IsDigit(text[2])) {
    return false;
  }
  const std::size_t unit = text.find_first_not_of("0123456789", 2);
  constexpr std::string_view kMultipliers = "KkMm";
  return unit != std::string_view::npos && unit <= 4 && kMultipliers.find(text[unit]) != std::string_view::npos;
}

std::optional<Value> ParseValue(std::string_view plain) {
  if (plain.size() < 2 || plain.size() > 20 || std::none_of(plain.begin(), plain.end(), IsDigit)) {
    return std::nullopt;
  }
  std::string text = Upper(plain);
  if (BeginsWithDecimalComma(text)) {
    text[1] = '.';
  }
  if (auto rkm = ParseRkm(text)) {
    return rkm;
  }
  if (auto sections = ParseSections(text)) {
    return sections;
  }
  const std::size_t sign = text[0] == '+' || text[0] == '-' ? 1 : 0;
  const Number number = NumberAtFront(std::string_view(text).substr(sign));
  if (number.length == 0) {
    return std::nullopt;
  }
  std::string unit_text = text.substr(sign + number.length);
  unit_text.erase(std::remove(unit_text.begin(), unit_text.end(), '.'), unit_text.end());
  if (unit_text.size() >= 4 && unit_text.front() == '-') {
    unit_text.erase(0, 1);  // 1-MEG
  }
  const Unit* unit = UnitNamed(unit_text);
  if (unit == nullptr || (sign == 1 && unit->quantity != Quantity::kVoltage)) {
    return std::nullopt;
  }
  const bool lost_dot = text[sign] == '0' && number.length > 1 && IsDigit(text[sign + 1]);
  return Value{(lost_dot ? "." : "") + text.substr(0, sign + number.length) + unit_text, unit->quantity,
               number.size * unit->factor, false};
}

bool IsValueNumber(std::string_view plain) {
  // The sections of one capacitor count as a number: 80-20.
  const std::size_t joint = plain.find('-');
  if (joint != std::string_view::npos && joint > 0 && joint + 1 < plain.size()) {
    return NumberAtFront(plain.substr(0, joint)).length == joint && IsValueNumber(plain.substr(joint + 1));
  }
  return !plain.empty() && NumberAtFront(plain).length == plain.size();
}

bool IsValueUnit(std::string_view plain) {
  std::string text = Upper(plain);
  text.erase(std::remove(text.begin(), text.end(), '.'), text.end());
  return UnitNamed(text) != nullptr;
}

std::optional<Quantity> QuantityOf(std::string_view letters) {
  if (letters == "R" || letters == "RT" || letters == "VR" || letters == "RN") {
    return Quantity::kResistance;
  }
  if (letters == "C" || letters == "VC") {
    return Quantity::kCapacitance;
  }
  if (letters == "L" || letters == "RFC") {
    return Quantity::kInductance;
  }
  if (letters == "F") {
    return Quantity::kCurrent;
  }
  if (letters == "Y" || letters == "XTAL" || letters == "XL") {
    return Quantity::kFrequency;
  }
  return std::nullopt;
}

std::optional<Value> ParseBareValue(std::string_view plain, std::string_view letters) {
  const auto quantity = QuantityOf(letters);
  if (!quantity || !IsValueNumber(plain)) {
    return std::nullopt;
  }
  const double size = NumberAtFront(plain).size;
  const std::string text(plain);
  switch (*quantity) {
    case Quantity::kResistance:
      return Value{text, *quantity, size, false};
    case Quantity::kCapacitance:
      return Value{text, *quantity, size * (size < 1 ? 1e-6 : 1e-12), false};
    default:
      return std::nullopt;
  }
}

std::optional<Value> ParsePartValue(std::string_view plain, std::string_view letters) {
  auto value = ParseValue(plain);
  return value ? value : ParseBareValue(plain, letters);
}

bool SameMagnitude(double a, double b) {
  constexpr double kRounding = 0.005;
  return std::abs(a - b) <= kRounding * std::abs(b);
}

}  // namespace benchleaf::extract
