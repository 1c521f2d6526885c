#include "orders/new_part.h"

#include "benchleaf/core/figure.h"
#include "benchleaf/orders/preferred_values.h"

#include <cmath>

namespace benchleaf::orders {
namespace {

constexpr double kTenth = 0.1;
constexpr double kWellAbove = 1.3;  // of a filter's capacitance: judged, no source

double Electrolytic(double farads) { return PreferredFrom(farads * (1 - kTenth), Series::kE6); }

double Paper(double farads) {
  const double rough = NearestPreferred(farads, Series::kE6);
  return std::abs(rough / farads - 1) <= kTenth ? rough : NearestPreferred(farads, Series::kE12);
}

std::string Volts(double volts) { return Figure(volts) + " V"; }

std::string Rating(std::optional<double> volts) { return volts ? Volts(*volts) : std::string(); }

std::string LineNote(LinePlace line) {
  const std::string rule = " (IEC 60384-14), rated for the line's voltage";
  switch (line) {
    case LinePlace::kAcross:
      return "across the line: safety-rated class X" + rule;
    case LinePlace::kToChassis:
      return "line to chassis: safety-rated class Y" + rule +
             "; its value is limited by the current that may be touched: do not copy a large old one";
    case LinePlace::kUnsaid:
      break;
  }
  return "at the line: safety-rated class X across it, class Y from it to chassis" + rule +
         "; the drawing tells which, and a class Y value is limited by the current that may be touched";
}

void AddNote(NewPart& part, const std::string& note) { part.note += (part.note.empty() ? "" : "; ") + note; }

}  // namespace

NewPart NewCapacitor(PartKind kind, const CapacitorSection& old, bool alternating, std::optional<LinePlace> line) {
  NewPart part;
  part.kind = kind;
  switch (kind) {
    case PartKind::kElectrolytic:
      part.what = "electrolytic capacitor";
      part.size = Electrolytic(old.farads);
      if (old.volts) part.rating = Rating(ElectrolyticVolts(*old.volts));
      if (old.volts && part.rating.empty()) {
        AddNote(part, "none is made for " + Volts(*old.volts) +
                          ": two of twice the value in series, with equal resistors across them, or film");
      }
      if (part.size > old.farads * kWellAbove) {
        AddNote(part, "well above the old value: fit for a cathode, not for a filter's input");
      }
      break;
    case PartKind::kMica:
    case PartKind::kCeramic:
      part.what = kind == PartKind::kMica ? "mica capacitor" : "ceramic capacitor, of a stable kind in tuned circuits";
      part.size = NearestPreferred(old.farads, Series::kE24);
      if (old.volts) part.rating = Rating(MicaVolts(*old.volts));
      break;
    default:
      part.what = "film capacitor";
      part.size = Paper(old.farads);
      if (old.volts) part.rating = Rating(FilmVolts(*old.volts));
      if (old.volts && part.rating.empty()) AddNote(part, "look for " + Volts(*old.volts) + " or more");
      break;
  }
  if (line) {
    part.what = *line == LinePlace::kAcross      ? "class X capacitor"
                : *line == LinePlace::kToChassis ? "class Y capacitor"
                                                 : "class X or Y capacitor";
    part.note = LineNote(*line);
    part.rating.clear();
  } else if (alternating) {
    AddNote(part, "the old rating is of alternating current: order by an a.c. rating, class X or Y at the line");
    part.rating.clear();
  }
  part.value = FaradsText(part.size);
  part.code = FaradsCode(part.size);
  return part;
}

NewPart NewResistor(PartKind kind, const OldRating& old) {
  NewPart part;
  part.kind = kind;
  part.what = kind == PartKind::kWirewound ? "wirewound resistor" : "film resistor";
  part.size = NearestPreferred(*old.ohms, Series::kE24);
  part.value = OhmsText(part.size);
  part.code = OhmsCode(part.size);
  const auto watts = old.watts ? ResistorWatts(*old.watts) : std::nullopt;
  if (watts) part.rating = Figure(*watts) + " W";
  return part;
}

std::vector<NewPart> NewRectifier(const OldRating& old) {
  // What a selenium stack for the line drops more than silicon at its full current, and the current of the smallest
  // common diode: common practice, no source.
  constexpr double kExtraDrop = 5;
  constexpr double kLeastMargin = 2;
  NewPart diode;
  diode.kind = PartKind::kSelenium;
  diode.what = "silicon diode";
  const bool large = old.amps && *old.amps > 0.5;
  diode.rating = large ? "3 A 1000 V" : "1 A 1000 V";
  diode.note = "one for each stack, or four for a bridge; the cathode goes where the stack's + was";

  NewPart resistor;
  resistor.kind = PartKind::kSelenium;
  resistor.what = "series resistor, wirewound";
  resistor.note =
      "in series with the diode: silicon drops less than selenium, which raises B+ over what the set was made for; "
      "choose it so that B+ is as the schematic says, with the line at its usual voltage";
  if (old.amps && *old.amps > 0) {
    resistor.size = NearestPreferred(kExtraDrop / *old.amps, Series::kE12);
    resistor.value = OhmsText(resistor.size);
    resistor.code = OhmsCode(resistor.size);
    const auto watts = ResistorWatts(std::max(5.0, kLeastMargin * *old.amps * *old.amps * resistor.size));
    if (watts) resistor.rating = Figure(*watts) + " W";
    resistor.note += "; this value is a start: 5 V at the old rating";
  }
  return {diode, resistor};
}

}  // namespace benchleaf::orders
