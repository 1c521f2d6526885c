#include "benchleaf/report/lineup.h"

#include "report/heater_words.h"
#include "report/lineup_words.h"
#include "report/place.h"

#include "benchleaf/core/figure.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/csv.h"
#include "benchleaf/report/text.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <cstdint>
#include <set>

namespace benchleaf {
namespace {

// "6CB6 (71 %)": what else was read at the same designator.
std::string OtherTypes(const TubeSocket& socket) {
  std::string words;
  std::set<std::string> once;
  for (const SeenTube& seen : socket.otherwise) {
    if (!once.insert(seen.sighting.text).second) continue;
    words += (words.empty() ? "" : ", ") + seen.sighting.text + " (" + Sureness(seen.sighting.confidence) + ", " +
             seen.place.file + " p. " + std::to_string(seen.place.page) + ")";
  }
  return words;
}

Table TubesTable() {
  return Table({{"tube"},
                {"type"},
                {"function", Column::Align::kLeft, Column::Fit::kWrap},
                {"what it is", Column::Align::kLeft, Column::Fit::kWrap},
                {"heater", Column::Align::kLeft, Column::Fit::kWrap},
                {"surest place", Column::Align::kLeft, Column::Fit::kWrap},
                {"sure", Column::Align::kRight},
                {"also read", Column::Align::kLeft, Column::Fit::kWrap}});
}

void AddTube(Table& table, const LineupTube& tube) {
  const SeenTube& seen = tube.socket.seen.front();
  table.Add({tube.socket.designator, tube.socket.type, DutyWords(tube),
             tube.row == nullptr ? std::string() : tube.row->tube_class, LineupHeater(tube), ShortPlace(seen.place),
             Sureness(tube.socket.confidence), Cell(OtherTypes(tube.socket), Paint::kWarning)});
}

std::vector<std::size_t> TubesOf(const std::vector<CountedHeater>& heaters) {
  std::vector<std::size_t> tubes;
  tubes.reserve(heaters.size());
  for (const CountedHeater& heater : heaters) tubes.push_back(heater.tube);
  return tubes;
}

std::string TwoWays(const ManualLineup& lineup, const std::vector<CountedHeater>& heaters) {
  std::vector<std::size_t> tubes;
  for (const CountedHeater& heater : heaters) {
    if (heater.one_of_two) tubes.push_back(heater.tube);
  }
  return tubes.empty() ? std::string() : "; wired for this voltage: " + TubeWords(lineup.tubes, tubes);
}

// "121.6 V against the line's 117 V: 4.6 V more", and what that means.
std::string AgainstTheLine(double volts) {
  const double rest = kLineVolts - volts;
  const std::string sum = Figure(volts) + " V against the line's " + Figure(kLineVolts) + " V";
  if (rest < 0) return sum + ": " + Figure(-rest) + " V more than the line has";
  return sum + ": " + Figure(rest) + " V for a resistor, a ballast, or heaters that are not known here";
}

std::string HeatersText(const ManualLineup& lineup) {
  const HeaterSums& heaters = lineup.heaters;
  std::string text = "heaters: " + std::string(Name(heaters.wiring)) + ": " + heaters.reason + "\n";
  for (const HeaterGroup& group : heaters.groups) {
    text += "  " + Figure(group.volts) + " V: " + Figure(group.amps) + " A for " +
            Counted(group.heaters.size(), "heater") + ": " + TubeWords(lineup.tubes, TubesOf(group.heaters)) +
            TwoWays(lineup, group.heaters) + "\n";
  }
  if (heaters.string) {
    const HeaterString& string = *heaters.string;
    text += "  string of " + Figure(string.amps) + " A: " + Counted(string.heaters.size(), "heater") + ", " +
            AgainstTheLine(string.volts) + ": " + TubeWords(lineup.tubes, TubesOf(string.heaters)) +
            TwoWays(lineup, string.heaters) + "\n";
    for (const CountedHeater& heater : string.unequal) {
      text += "  unequal current: " + TubeWords(lineup.tubes[heater.tube]) + ", " +
              lineup.tubes[heater.tube].socket.type + ": " + Figure(heater.volts) + " V, " + Figure(heater.amps) +
              " A; not in the sum\n";
    }
  }
  const auto add = [&](const char* what, const std::vector<std::size_t>& tubes) {
    if (!tubes.empty()) text += "  " + std::string(what) + ": " + TubeWords(lineup.tubes, tubes) + "\n";
  };
  add("high-voltage rectifier, heated by the sweep's transformer; in no sum", heaters.high_voltage);
  add("no heater", heaters.without_heater);
  add("heater not known to us; in no sum", heaters.not_known);
  return text;
}

std::vector<std::size_t> NotCounted(const ManualLineup& lineup) {
  std::vector<std::size_t> tubes;
  for (std::size_t i = 0; i < lineup.tubes.size(); ++i) {
    if (!lineup.tubes[i].counted) tubes.push_back(i);
  }
  return tubes;
}

// Where the figures come from, each source once.
std::set<std::string> Sources(const ManualLineup& lineup) {
  std::set<std::string> sources;
  for (const LineupTube& tube : lineup.tubes) {
    if (tube.row != nullptr) sources.insert(tube.row->source);
  }
  return sources;
}

std::string SourcesText(const ManualLineup& lineup) {
  std::string words;
  for (const std::string& source : Sources(lineup)) words += (words.empty() ? "" : "; ") + CleanText(source);
  return words.empty() ? std::string()
                       : "  source of the figures: " + words + ". Check a heater's figures before you power a set.\n";
}

std::string UnplacedText(const ManualLineup& lineup) {
  if (lineup.unplaced.empty()) return {};
  std::string text = "named without a designator, and not counted (further tubes, or the same ones named again):\n";
  Table table({{"type"}, {"place", Column::Align::kLeft, Column::Fit::kWrap}, {"sure", Column::Align::kRight}});
  for (const SeenTube& seen : lineup.unplaced) {
    table.Add({seen.sighting.text, ShortPlace(seen.place), Sureness(seen.sighting.confidence)});
  }
  return text + table.Render({});
}

Json Tubes(const ManualLineup& lineup, const std::vector<std::size_t>& which) {
  Json names = Json::Array();
  for (const std::size_t i : which) names.Add(TubeWords(lineup.tubes[i]));
  return names;
}

Json Strings(const std::set<std::string>& texts) {
  Json array = Json::Array();
  for (const std::string& text : texts) array.Add(text);
  return array;
}

Json HeatersJson(const ManualLineup& lineup) {
  const HeaterSums& heaters = lineup.heaters;
  Json groups = Json::Array();
  for (const HeaterGroup& group : heaters.groups) {
    groups.Add(
        Json::Object({{"volts", group.volts}, {"amps", group.amps}, {"tubes", Tubes(lineup, TubesOf(group.heaters))}}));
  }
  Json object = Json::Object({{"type", "heaters"},
                              {"set", lineup.set},
                              {"manual", lineup.manual},
                              {"wiring", std::string(Name(heaters.wiring))},
                              {"reason", heaters.reason},
                              {"parallel", std::move(groups)}});
  if (heaters.string) {
    const HeaterString& string = *heaters.string;
    object.Set("string", Json::Object({{"amps", string.amps},
                                       {"volts", string.volts},
                                       {"line_volts", kLineVolts},
                                       {"tubes", Tubes(lineup, TubesOf(string.heaters))},
                                       {"unequal", Tubes(lineup, TubesOf(string.unequal))}}));
  }
  object.Set("high_voltage", Tubes(lineup, heaters.high_voltage));
  object.Set("without_heater", Tubes(lineup, heaters.without_heater));
  object.Set("not_known", Tubes(lineup, heaters.not_known));
  object.Set("not_counted", Tubes(lineup, NotCounted(lineup)));
  object.Set("sources", Strings(Sources(lineup)));
  return object;
}

}  // namespace

std::string LineupHeater(const LineupTube& tube) {
  if (tube.row == nullptr) return "no row for this type";
  const std::string words = tube.row->heater.empty() ? "not known to us" : HeaterWords(*tube.row);
  const std::vector<std::string> names = TubeNames(tube.socket.type);
  const bool very = std::find(names.begin(), names.end(), tube.row->type) != names.end();
  return very ? words : words + " (row of " + tube.row->type + ")";
}

std::string HeaterLines(const ManualLineup& lineup) {
  std::string text = HeatersText(lineup);
  const std::vector<std::size_t> left_out = NotCounted(lineup);
  if (!left_out.empty()) {
    text += "  without a designator; in no sum: " + CleanText(TubeWords(lineup.tubes, left_out)) + "\n";
  }
  return text + SourcesText(lineup);
}

std::string LineupText(const ManualLineup& lineup, const Look& look) {
  Table designated = TubesTable();
  Table others = TubesTable();
  for (const LineupTube& tube : lineup.tubes) AddTube(tube.socket.designator.empty() ? others : designated, tube);
  std::string text = CleanText(SetWords(lineup)) + ": " + Counted(lineup.tubes.size(), "tube") + " on " +
                     Counted(lineup.pages, "page") + " read\n";
  for (const Error& failure : lineup.failures) text += "not read: " + CleanText(failure.ToString()) + "\n";
  text += designated.Render(look);
  if (!others.empty()) text += "without a designator:\n" + others.Render(look);
  text += UnplacedText(lineup);
  return lineup.tubes.empty() ? text : text + HeaterLines(lineup);
}

std::string LineupJson(const ManualLineup& lineup) {
  std::string lines;
  for (const LineupTube& tube : lineup.tubes) {
    Json object = Json::Object({{"type", "lineup-tube"}, {"designator", tube.socket.designator}});
    object.Set("tube_type", tube.socket.type);
    SetPlace(object, tube.socket.seen.front().place);
    object.Set("box", ToJson(tube.socket.seen.front().sighting.box));
    object.Set("confidence", tube.socket.confidence);
    object.Set("places", static_cast<std::int64_t>(tube.socket.seen.size()));
    std::set<std::string> others;
    for (const SeenTube& seen : tube.socket.otherwise) others.insert(seen.sighting.text);
    object.Set("other_types", Strings(others));
    Json duties = Json::Array();
    for (const TubeDuty& duty : tube.duties) {
      duties.Add(Json::Object({{"section", duty.section},
                               {"function", duty.function},
                               {"read", duty.read},
                               {"file", duty.place.file},
                               {"page", duty.place.page},
                               {"box", ToJson(duty.box)},
                               {"confidence", duty.confidence}}));
    }
    object.Set("functions", std::move(duties));
    object.Set("row", tube.row == nullptr ? Json() : Json(tube.row->type));
    if (tube.row != nullptr) {
      object.Set("class", tube.row->tube_class);
      object.Set("heater", HeaterJson(*tube.row));
      object.Set("source", tube.row->source);
    }
    lines += object.Dump() + "\n";
  }
  for (const SeenTube& seen : lineup.unplaced) {
    Json object = Json::Object({{"type", "lineup-unplaced"}});
    SetPlace(object, seen.place);
    SetSighting(object, seen.sighting);
    lines += object.Dump() + "\n";
  }
  return lines + HeatersJson(lineup).Dump() + "\n";
}

std::string LineupCsv(const ManualLineup& lineup, WithHeader with_header) {
  std::string csv = with_header == WithHeader::kYes
                        ? CsvRecord({"set", "manual", "designator", "type", "functions", "class", "heater", "file",
                                     "page", "confidence", "other_types"})
                        : std::string();
  for (const LineupTube& tube : lineup.tubes) {
    const SeenTube& seen = tube.socket.seen.front();
    csv += CsvRecord({lineup.set, lineup.manual, tube.socket.designator, tube.socket.type, DutyWords(tube),
                      tube.row == nullptr ? std::string() : tube.row->tube_class, LineupHeater(tube), seen.place.file,
                      std::to_string(seen.place.page), Json(tube.socket.confidence).Dump(), OtherTypes(tube.socket)});
  }
  return csv;
}

}  // namespace benchleaf
