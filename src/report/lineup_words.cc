#include "report/lineup_words.h"

namespace benchleaf {

std::string TubeWords(const LineupTube& tube) {
  return tube.socket.designator.empty() ? "(" + tube.socket.type + ")" : tube.socket.designator;
}

std::string TubeWords(const std::vector<LineupTube>& tubes, const std::vector<std::size_t>& which) {
  std::string words;
  for (const std::size_t i : which) words += (words.empty() ? "" : ", ") + TubeWords(tubes[i]);
  return words;
}

std::string DutyWords(const LineupTube& tube) {
  std::string words;
  std::string section;
  for (const TubeDuty& duty : tube.duties) {
    if (!words.empty()) words += duty.section == section ? ", " : "; ";
    if (duty.section != section) words += duty.section + ": ";
    section = duty.section;
    words += duty.function.empty() ? "\"" + duty.read + "\"" : duty.function;
  }
  return words;
}

std::string SetWords(const ManualLineup& lineup) {
  return lineup.manual == lineup.set ? lineup.set : lineup.set + ", " + lineup.manual;
}

}  // namespace benchleaf
