#include "benchleaf/orders/old_rating.h"

#include "benchleaf/core/figure.h"
#include "benchleaf/orders/preferred_values.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

// "0.05 uF 600 V", "40 uF 450 V + 20 uF 25 V", "470 kohm 0.5 W"; "!" behind it for each doubt.
std::string Text(const OldRating& rating) {
  std::string text;
  for (const CapacitorSection& section : rating.sections) {
    text += (text.empty() ? "" : " + ") + FaradsText(section.farads);
    if (section.volts) text += " " + Figure(*section.volts) + " V";
  }
  if (rating.ohms) text += OhmsText(*rating.ohms);
  if (rating.watts) text += " " + Figure(*rating.watts) + " W";
  if (rating.alternating) text += " AC";
  return text + std::string(rating.doubts.size(), '!');
}

// Values as lists of 1930 to 1965 print them: common practice, no source; RKM code: IEC 60062. Those marked "scan" are
// as the program read its own sample manuals.
TEST(ReadRating, OfCapacitors) {
  const struct {
    const char* value;  // as the index has it
    const char* description;
    const char* rating;
  } kCases[] = {
      {"", "CAPACITOR, .05 MFD 600 V PAPER", "0.05 uF 600 V"},
      {".05MFD", "CAPACITOR, .05 MFD. 600 V.", "0.05 uF 600 V"},
      {"", "250 MMF mica", "250 pF"},
      {"", "250 uuF, 500 WVDC", "250 pF 500 V"},
      {"", "100 mmfd. 500V", "100 pF 500 V"},
      {"", ".0047 paper 400 V", "0.0047 uF 400 V"},
      {".0047", "PAPER, 400 V", "0.0047 uF 400 V"},
      {"", "4n7 630 V", "0.0047 uF 630 V"},
      {"", "20-20/450", "20 uF 450 V + 20 uF 450 V!"},
      {"", "electrolytic 20-20 MFD 450 V", "20 uF 450 V + 20 uF 450 V"},
      {"80-40MFD", "Capacitor electrolytic, 80-40 MFD 450 V", "80 uF 450 V + 40 uF 450 V"},
      {"", "40/450-40/450-20/25 MFD", "40 uF 450 V + 40 uF 450 V + 20 uF 25 V"},
      {"", "40/450-40/450-20/25", "40 uF 450 V + 40 uF 450 V + 20 uF 25 V!"},
      {"", "40/40/20 UF 350 VDC", "40 uF 350 V + 40 uF 350 V + 20 uF 350 V"},
      {"", "8/450 electrolytic", "8 uF 450 V!"},
      {"", "30-30/150-20/25 MFD", "30 uF 150 V + 30 uF 150 V + 20 uF 25 V"},
      {"", "10,000 MMF 500 V", "0.01 uF 500 V"},
      {"", ".1 MFD 150 VAC", "0.1 uF 150 V AC"},
      {"", ".02 MFD, 20%, 400 V", "0.02 uF 400 V"},
      // scan
      {"", "Capacitor, 05 MFD, 600 V. paper", "0.05 uF 600 V"},
      {"", "Capacitor, .05 MFD.200 V. paper", "0.05 uF 200 V"},
      {".1", "Capacitor .1 MFD7 200 V paper", "0.1 uF 200 V"},
      {"", "Capacitor, .005 MFD 600 Vv, paper", "0.005 uF 600 V"},
      {"20MFD", "Capacitor electrolytic 20 MFD 25", "20 uF 25 V!"},
      {"", "Capacitor, 100 MMF, S00 V. mica", "100 pF 500 V!"},
      {"", "Capacitor, 1000 MMF, SO0v. mica", "0.001 uF 500 V!"},
      {"", "Capacitor, 1MFD,200 V. paper", "1 uF 200 V!"},
      {".1MFD", "Capacitor -1 MFD, 200 V paper", "0.1 uF 200 V!"},
      // nothing to take for a capacitance
      {"", "CAPACITOR, PAPER", ""},
      {"", "", ""},
  };
  for (const auto& c : kCases) EXPECT_EQ(Text(ReadRating(c.value, c.description, "C")), c.rating) << c.description;
}

TEST(ReadRating, OfResistors) {
  const struct {
    const char* value;
    const char* description;
    const char* rating;
  } kCases[] = {
      {"", "RESISTOR, 470K 1/2 W 10%", "470 kohm 0.5 W"},
      {"", "2.2 MEG. 1/2 W", "2.2 Mohm 0.5 W"},
      {"", "10,000 OHMS, 1 WATT", "10 kohm 1 W"},
      {"", "4.7 K OHMS", "4.7 kohm"},
      {"", "4K7", "4.7 kohm"},
      {"1M", "RESISTOR 1M", "1 Mohm"},
      {"150OHM", "Resistor 150 OHM 1 W7 10%", "150 ohm 1 W"},
      // scan: a comma read as 7, where 33.7K is no value of IEC 60063
      {"33K7", "Resistor, 33K7 1/2 W 10%", "33 kohm 0.5 W!"},
      // the 7 is no comma behind a resistance of nothing
      {"0K7", "RESISTOR", "700 ohm"},
      {"", "Resistor, 1 MEG 1/2 W", "1 Mohm 0.5 W"},
      {"", "RESISTOR", ""},
  };
  for (const auto& c : kCases) EXPECT_EQ(Text(ReadRating(c.value, c.description, "R")), c.rating) << c.description;
}

TEST(ReadRating, OfRectifiers) {
  const OldRating rating = ReadRating("", "RECTIFIER, SELENIUM, 75 MA 130 V", "SR");
  EXPECT_NEAR(*rating.amps, 0.075, 1e-9);
  EXPECT_NEAR(*rating.volts, 130, 1e-9);
  EXPECT_TRUE(rating.sections.empty());
}

}  // namespace
}  // namespace benchleaf
