// Values as service manuals write them: .05 MFD, 250 MMF, 4.7K, 4K7, 2.2 MEG, 600V, 1/2W, 10MH.

#ifndef BENCHLEAF_SRC_EXTRACT_VALUE_H_
#define BENCHLEAF_SRC_EXTRACT_VALUE_H_

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

enum class Quantity { kResistance, kCapacitance, kInductance, kVoltage, kCurrent, kPower, kFrequency };

struct Value {
  std::string canonical;  // as printed, in capitals, without spaces
  Quantity quantity = Quantity::kResistance;
  double magnitude = 0;  // in ohms, farads, henries, volts, amperes, watts or hertz
  bool rkm = false;      // the unit stands for the decimal point (IEC 60062)
};

// Whether the text begins with a figure, a comma for a decimal point, one or two figures and K or M: 4,7K. Blurred
// print makes the one of the other, and some lists are printed so (common practice, no source).
bool BeginsWithDecimalComma(std::string_view text);

// A whole text as a number with a unit. MF and MFD are microfarads and M behind a resistor's number megohms, as was
// common practice; RKM code by IEC 60062.
std::optional<Value> ParseValue(std::string_view plain);

// Whether the text is a number that a unit may follow (.05, 470, 1/2, 10,000), and whether it is a unit alone.
bool IsValueNumber(std::string_view plain);
bool IsValueUnit(std::string_view plain);

// A number alone beside a part of the class with these letters: ohms for R; for C microfarads when it is below 1,
// else micromicrofarads, as the notes on old schematics say. Nothing for other classes, or when the text is no number.
std::optional<Value> ParseBareValue(std::string_view plain, std::string_view letters);

// The value of a part of the class with these letters: as ParseValue, else as ParseBareValue.
std::optional<Value> ParsePartValue(std::string_view plain, std::string_view letters);

// Whether two magnitudes of one quantity are the same, but for the rounding of their figures.
bool SameMagnitude(double a, double b);

// The quantity that a part of this class is measured in, if it has one (R, C, L and what begins like them).
std::optional<Quantity> QuantityOf(std::string_view letters);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_VALUE_H_
