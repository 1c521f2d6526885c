#include "report/heater_words.h"

#include "benchleaf/core/figure.h"

#include <optional>

namespace benchleaf {

std::string HeaterWords(const TubeEntry& entry) {
  if (entry.has_no_heater()) return "none";
  std::string words;
  for (const HeaterSupply& supply : entry.heater) {
    if (!words.empty()) words += " or ";
    words += supply.volts ? Figure(*supply.volts) + " V" : "volts not known to us";
    words += supply.amps ? ", " + Figure(*supply.amps) + " A" : ", amps not known to us";
  }
  return words;
}

Json HeaterJson(const TubeEntry& entry) {
  const auto known = [](const std::optional<double>& value) { return value ? Json(*value) : Json(); };
  Json heater = Json::Array();
  for (const HeaterSupply& supply : entry.heater) {
    heater.Add(Json::Object({{"volts", known(supply.volts)}, {"amps", known(supply.amps)}}));
  }
  return heater;
}

}  // namespace benchleaf
