#include "benchleaf/orders/preferred_values.h"

#include "benchleaf/core/figure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <string_view>

namespace benchleaf {
namespace {

// A value just under a preferred one by the rounding of its reading is that value.
constexpr double kSlack = 1e-6;

std::optional<double> FirstFrom(const std::vector<double>& ratings, double least) {
  const auto found =
      std::find_if(ratings.begin(), ratings.end(), [&](double rating) { return rating >= least * (1 - kSlack); });
  return found == ratings.end() ? std::nullopt : std::optional(*found);
}

// Powers of ten exactly as they are written, so that 0.047 is printed as such.
double InDecade(double mantissa, int decade) {
  return decade < 0 ? mantissa / std::pow(10.0, -decade) : mantissa * std::pow(10.0, decade);
}

int DecadeOf(double value) { return static_cast<int>(std::floor(std::log10(value * (1 + kSlack)))); }

struct Prefix {
  double factor;
  std::string_view text;
  std::string_view letter;  // of IEC 60062
};

// The largest prefix that leaves a figure of 1 or more.
template <std::size_t size>
const Prefix& PrefixFor(double value, const std::array<Prefix, size>& prefixes) {
  const auto found = std::find_if(prefixes.begin(), prefixes.end(),
                                  [&](const Prefix& prefix) { return value >= prefix.factor * (1 - kSlack); });
  return found == prefixes.end() ? prefixes.back() : *found;
}

constexpr std::array<Prefix, 3> kOhms = {{{1e6, " Mohm", "M"}, {1e3, " kohm", "K"}, {1, " ohm", "R"}}};
// IEC 60062 has the letters p, n, u (for the micro sign) and m.
constexpr std::array<Prefix, 3> kFarads = {{{1e-6, " uF", "u"}, {1e-9, " nF", "n"}, {1e-12, " pF", "p"}}};

// The letter in the place of the decimal point: 4n7, 470p.
std::string Code(double value, const Prefix& prefix) {
  std::string figure = Figure(value / prefix.factor);
  const std::size_t point = figure.find('.');
  if (point == std::string::npos) return figure + std::string(prefix.letter);
  return figure.replace(point, 1, prefix.letter);
}

}  // namespace

const std::vector<double>& ValuesOf(Series series) {
  static const std::vector<double> e6 = {1.0, 1.5, 2.2, 3.3, 4.7, 6.8};
  static const std::vector<double> e12 = {1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2};
  static const std::vector<double> e24 = {1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0,
                                          3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1};
  switch (series) {
    case Series::kE6:
      return e6;
    case Series::kE12:
      return e12;
    case Series::kE24:
      break;
  }
  return e24;
}

double NearestPreferred(double value, Series series) {
  if (!(value > 0) || !std::isfinite(value)) return value;
  const int decade = DecadeOf(value);
  double best = InDecade(1, decade);
  const auto offer = [&](double candidate) {
    if (std::abs(std::log(candidate / value)) < std::abs(std::log(best / value))) best = candidate;
  };
  for (const double mantissa : ValuesOf(series)) offer(InDecade(mantissa, decade));
  offer(InDecade(1, decade + 1));
  return best;
}

double PreferredFrom(double least, Series series) {
  if (!(least > 0) || !std::isfinite(least)) return least;
  const int decade = DecadeOf(least);
  for (const double mantissa : ValuesOf(series)) {
    const double value = InDecade(mantissa, decade);
    if (value >= least * (1 - kSlack)) return value;
  }
  return InDecade(1, decade + 1);
}

bool IsUsualValue(double value) {
  constexpr double kFiguresRounding = 0.005;
  constexpr std::array<double, 9> kRound = {1.25, 2.5, 3.5, 4, 5, 6, 7, 8, 9};
  const auto same = [&](double usual) { return std::abs(value - usual) <= kFiguresRounding * usual; };
  const int decade = DecadeOf(value);
  return same(NearestPreferred(value, Series::kE24)) ||
         std::any_of(kRound.begin(), kRound.end(), [&](double round) { return same(InDecade(round, decade)); });
}

std::optional<double> ElectrolyticVolts(double least) {
  static const std::vector<double> ratings = {6.3, 10, 16, 25, 35, 50, 63, 100, 160, 200, 250, 350, 400, 450, 500};
  return FirstFrom(ratings, least);
}

std::optional<double> FilmVolts(double least) {
  static const std::vector<double> ratings = {100, 250, 400, 630, 1000, 1600, 2000};
  return FirstFrom(ratings, least);
}

std::optional<double> MicaVolts(double least) {
  static const std::vector<double> ratings = {100, 300, 500, 1000, 2000, 3000, 6000};
  return FirstFrom(ratings, least);
}

std::optional<double> ResistorWatts(double least) {
  static const std::vector<double> ratings = {0.25, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 50};
  return FirstFrom(ratings, least);
}

std::string FaradsText(double farads) {
  // Nanofarads stand on no old schematic: 0.047 uF is what a restorer compares with.
  constexpr double kLeastMicro = 1e-9;
  const bool micro = farads >= kLeastMicro * (1 - kSlack);
  return Figure(farads / (micro ? 1e-6 : 1e-12)) + (micro ? " uF" : " pF");
}

std::string OhmsText(double ohms) {
  const Prefix& prefix = PrefixFor(ohms, kOhms);
  return Figure(ohms / prefix.factor) + std::string(prefix.text);
}

std::string FaradsCode(double farads) { return Code(farads, PrefixFor(farads, kFarads)); }
std::string OhmsCode(double ohms) { return Code(ohms, PrefixFor(ohms, kOhms)); }

}  // namespace benchleaf
