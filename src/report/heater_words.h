// Figures of heaters in words, the same in every report.

#ifndef BENCHLEAF_SRC_REPORT_HEATER_WORDS_H_
#define BENCHLEAF_SRC_REPORT_HEATER_WORDS_H_

#include "benchleaf/record/json.h"
#include "benchleaf/tubes/tube_table.h"

#include <string>

namespace benchleaf {

// "12.6 V, 0.15 A or 6.3 V, 0.3 A"; "none"; says so where a figure is not known.
std::string HeaterWords(const TubeEntry& entry);

// [{"volts", "amps"}], null where a figure is not known.
Json HeaterJson(const TubeEntry& entry);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_HEATER_WORDS_H_
