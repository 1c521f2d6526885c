// Preferred values (IEC 60063), standard ratings, and values as people order them.

#ifndef BENCHLEAF_ORDERS_PREFERRED_VALUES_H_
#define BENCHLEAF_ORDERS_PREFERRED_VALUES_H_

#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

enum class Series { kE6, kE12, kE24 };

// The values of a decade, from 1 to under 10, ascending: IEC 60063.
const std::vector<double>& ValuesOf(Series series);

// The value of the series that is nearest by ratio, in any decade. What is not above 0 or not finite has none, and
// comes back as it is.
double NearestPreferred(double value, Series series);

// The smallest value of the series that is not below `least`; what is not above 0 or not finite comes back as it is.
double PreferredFrom(double least, Series series);

// Whether parts were usually made in that value: those of E24 in any decade, and the round ones of the time before the
// series (1 to 9, 1.25, 2.5, 3.5): common practice, no source. REQUIRES: value > 0.
bool IsUsualValue(double value);

// The first standard rating that is not below `least`; nothing when the list ends below it. Common practice, no source.
std::optional<double> ElectrolyticVolts(double least);
std::optional<double> FilmVolts(double least);
std::optional<double> MicaVolts(double least);
std::optional<double> ResistorWatts(double least);

// "0.047 uF", "470 pF", "22 uF"; "470 kohm", "2.2 Mohm", "68 ohm".
std::string FaradsText(double farads);
std::string OhmsText(double ohms);

// The same by the letter and digit code of IEC 60062: 47n, 470p, 22u; 470K, 2M2, 68R.
std::string FaradsCode(double farads);
std::string OhmsCode(double ohms);

}  // namespace benchleaf

#endif  // BENCHLEAF_ORDERS_PREFERRED_VALUES_H_
