// How answers name the tubes of a lineup.

#ifndef BENCHLEAF_SRC_REPORT_LINEUP_WORDS_H_
#define BENCHLEAF_SRC_REPORT_LINEUP_WORDS_H_

#include "benchleaf/lineup/line_up.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf {

// "V3", and the type in brackets where no designator is known: "(6AU6)".
std::string TubeWords(const LineupTube& tube);

// The tubes at these positions: "V3, V4".
std::string TubeWords(const std::vector<LineupTube>& tubes, const std::vector<std::size_t>& which);

// "mixer; B: oscillator": the functions of the whole tube, then of its sections; the manual's words in quotes where no
// function is known by them.
std::string DutyWords(const LineupTube& tube);

// The set's name, and the manual's where it has another.
std::string SetWords(const ManualLineup& lineup);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_LINEUP_WORDS_H_
