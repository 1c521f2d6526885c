#include "benchleaf/orders/old_rating.h"

#include "extract/value.h"
#include "orders/rating_words.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/orders/preferred_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace benchleaf {
namespace {

using extract::ParseValue;
using extract::Quantity;
using extract::Value;

// Working voltages that old electrolytics and paper capacitors were printed with: common practice, no source.
constexpr std::array<double, 27> kOldVolts = {3,   6,   10,  12,  15,  25,  50,  100, 150, 160,  200,  250,  300, 350,
                                              400, 450, 475, 500, 525, 600, 630, 700, 800, 1000, 1200, 1600, 2000};

bool IsOldVoltage(double volts) { return std::find(kOldVolts.begin(), kOldVolts.end(), volts) != kOldVolts.end(); }

std::vector<std::string> Split(const std::string& text, char at) {
  std::vector<std::string> parts(1);
  for (const char c : text) {
    if (c == at) {
      parts.emplace_back();
    } else {
      parts.back() += c;
    }
  }
  return parts;
}

std::optional<double> Number(std::string_view text) {
  double number = 0;
  const std::string whole = text.starts_with('.') ? "0" + std::string(text) : std::string(text);
  const auto [end, problem] = std::from_chars(whole.data(), whole.data() + whole.size(), number);
  const bool all = problem == std::errc() && end == whole.data() + whole.size();
  return all && number > 0 && number < 1e7 ? std::optional(number) : std::nullopt;
}

// One section: "40", "40/450".
struct Section {
  double size = 0;
  std::optional<double> volts;
};

std::optional<Section> OneSection(const std::string& text) {
  const std::vector<std::string> parts = Split(text, '/');
  if (parts.size() > 2) return std::nullopt;
  const auto size = Number(parts[0]);
  if (!size) return std::nullopt;
  if (parts.size() == 1) return Section{*size, {}};
  const auto volts = Number(parts[1]);
  if (!volts || !IsOldVoltage(*volts)) return std::nullopt;
  return Section{*size, volts};
}

// The sections of a can: 20-20/450, 40/450-20/25, 40/40/20; nothing for a single number or fraction.
std::vector<Section> SectionsIn(const std::string& numbers) {
  std::vector<Section> sections;
  const bool dashed = numbers.find('-') != std::string::npos;
  const auto strokes = std::count(numbers.begin(), numbers.end(), '/');
  // Without a dash one stroke stands before the volts (8/450), several between the sections (40/40/20).
  for (const std::string& part : Split(numbers, !dashed && strokes > 1 ? '/' : '-')) {
    const auto section = OneSection(part);
    if (!section) return {};
    sections.push_back(*section);
  }
  if (sections.size() == 1 && !sections.front().volts) return {};
  // "20-20/450": the volts of those before it too.
  for (std::size_t i = sections.size(); i-- > 1;) {
    if (!sections[i - 1].volts) sections[i - 1].volts = sections[i].volts;
  }
  return sections;
}

class RatingReader {
 public:
  RatingReader(std::string_view value, std::string_view description, std::string_view letters)
      : letters_(letters), words_(orders::RatingWords(description, rating_.doubts)) {
    if (!value.empty()) TakeValue(std::string(value));
  }

  OldRating Read() {
    for (std::size_t i = 0; i < words_.size(); ++i) i += TakeAt(i);
    TakeBareVolts();
    DoubtLostDot();
    return std::move(rating_);
  }

 private:
  bool capacitor() const { return letters_ == "C"; }

  // The value as the index has it.
  void TakeValue(const std::string& value) {
    if (TakeSections(value, "")) return;
    if (const auto parsed = ParseValue(value)) {
      Take(*parsed);
    } else if (const auto bare = extract::ParseBareValue(value, letters_)) {
      Take(*bare);
    }
  }

  // Takes what begins at a word; gives how many words behind it went into it.
  std::size_t TakeAt(std::size_t at) {
    const std::string& word = words_[at];
    const std::string unit = at + 1 < words_.size() ? words_[at + 1] : std::string();
    if (word.find('%') != std::string::npos || unit == "%") return 0;
    if (TakeSections(word, unit)) return extract::IsValueUnit(unit) ? 1 : 0;
    if (auto value = ParseValue(word)) {
      Take(*value);
      return 0;
    }
    if (!extract::IsValueNumber(word) || !extract::IsValueUnit(unit)) {
      if (const auto bare = Number(word); bare && capacitor()) bare_.push_back({*bare, rating_.sections.empty()});
      return 0;
    }
    // A multiplier may stand apart from its unit: 4.7 K OHMS.
    if (at + 2 < words_.size() && unit.size() == 1) {
      if (auto value = ParseValue(word + unit + words_[at + 2])) {
        Take(*value);
        return 2;
      }
    }
    if (auto value = ParseValue(word + unit)) Take(*value);
    return 1;
  }

  // "40-20" with MFD behind it or without, "80-40MFD" in one word.
  bool TakeSections(const std::string& word, const std::string& unit_behind) {
    if (!capacitor() || !rating_.sections.empty()) return false;
    const std::size_t end = std::min(word.find_first_not_of("0123456789.-/"), word.size());
    const std::string numbers = word.substr(0, end);
    if (numbers.find_first_of("-/") == std::string::npos || numbers.front() == '-') return false;
    const std::vector<Section> sections = SectionsIn(numbers);
    if (sections.empty()) return false;
    const std::string unit = end < word.size() ? word.substr(end) : unit_behind;
    const auto one = ParseValue("1" + unit);
    double factor = 1e-6;
    if (one && one->quantity == Quantity::kCapacitance) {
      factor = one->magnitude;
    } else if (end < word.size() || (sections.size() == 1 && extract::IsValueUnit(unit) && one)) {
      return false;  // 1/2W, and 8/450 of something else than farads
    } else {
      rating_.doubts.push_back("'" + numbers + "' without a unit taken for microfarads");
    }
    for (const Section& section : sections) rating_.sections.push_back({section.size * factor, section.volts});
    return true;
  }

  void Take(const Value& value) {
    switch (value.quantity) {
      case Quantity::kCapacitance:
        if (capacitor() && rating_.sections.empty()) rating_.sections.push_back({value.magnitude, {}});
        break;
      case Quantity::kResistance:
        if (!rating_.ohms && value.magnitude > 0) rating_.ohms = Ohms(value);
        break;
      case Quantity::kVoltage:
        if (!rating_.volts && value.magnitude >= 3) {
          rating_.volts = value.magnitude;
          rating_.alternating = value.canonical.find("VAC") != std::string::npos;
        }
        break;
      case Quantity::kPower:
        if (!rating_.watts) rating_.watts = value.magnitude;
        break;
      case Quantity::kCurrent:
        if (!rating_.amps) rating_.amps = value.magnitude;
        break;
      default:
        break;
    }
  }

  // 47K of 47K7, whose 7 was a comma.
  double Ohms(const Value& value) {
    const double ohms = value.magnitude;
    if (!value.rkm || value.canonical.back() != '7') return ohms;
    const auto shorter = ParseValue(value.canonical.substr(0, value.canonical.size() - 1));
    const auto preferred = [](double one) { return std::abs(NearestPreferred(one, Series::kE24) / one - 1) < 0.001; };
    if (!shorter || preferred(ohms) || !preferred(shorter->magnitude)) return ohms;
    rating_.doubts.push_back(value.canonical + " taken for " + shorter->canonical);
    return shorter->magnitude;
  }

  // A number without a unit: a capacitance where none was read, else the volts behind it.
  void TakeBareVolts() {
    if (!capacitor()) return;
    for (const auto& [number, before_value] : bare_) {
      if (rating_.sections.empty()) {
        rating_.sections.push_back({number * (number < 1 ? 1e-6 : 1e-12), {}});
        if (number >= 1) {
          rating_.doubts.push_back("'" + FaradsText(number * 1e-12) + "' by a number without a unit");
        }
      } else if (!rating_.volts && !rating_.sections.front().volts && !before_value && IsOldVoltage(number)) {
        rating_.volts = number;
        rating_.doubts.push_back("a number without a unit taken for volts");
      }
    }
    for (CapacitorSection& section : rating_.sections) {
      if (!section.volts) section.volts = rating_.volts;
    }
  }

  // The dot of .1 MFD is easily lost, and no common paper capacitor of over 100 V has 1 MFD or more.
  void DoubtLostDot() {
    if (rating_.sections.size() != 1) return;
    const CapacitorSection& only = rating_.sections.front();
    const double micro = only.farads / 1e-6;
    const bool whole = micro >= 1 - 1e-9 && micro < 1.5;
    if (whole && only.volts && *only.volts >= 100) {
      rating_.doubts.emplace_back("may be .1 MFD whose dot was lost");
    }
  }

  std::string letters_;
  OldRating rating_;
  std::vector<std::string> words_;
  std::vector<std::pair<double, bool>> bare_;  // numbers without a unit, and whether no value was read before them
};

}  // namespace

OldRating ReadRating(std::string_view value, std::string_view description, std::string_view letters) {
  return RatingReader(value, description, letters).Read();
}

}  // namespace benchleaf
