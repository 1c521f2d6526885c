#include "benchleaf/report/tube_knowledge.h"

#include "report/heater_words.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/text.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kLabelWidth = 16;
constexpr int kWidest = 100;  // of lines where the terminal does not say

std::string Listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

// The names, with the heaters of those that have another one than the tube asked for: "3CB6 (3.15 V, 0.6 A)".
std::string WithHeaters(const std::vector<std::string>& names, const TubeEntry& asked, const TubeTable& table) {
  std::vector<std::string> described;
  for (const std::string& name : names) {
    const TubeEntry* entry = table.Find(name);
    const bool other = entry != nullptr && !entry->heater.empty() && entry->heater != asked.heater;
    described.push_back(other ? name + " (" + HeaterWords(*entry) + ")" : name);
  }
  return Listed(described);
}

std::string NumberWords(const DecodedType& decoded) {
  if (decoded.parts.empty()) return "says nothing by any standard that we know";
  std::string words;
  for (const TypePart& part : decoded.parts) {
    words += words.empty() ? "" : "; ";
    words += part.text.empty() ? part.meaning : part.text + ": " + part.meaning;
  }
  return words + (decoded.complete ? "" : "; the rest is not known to us");
}

void AddEntryLines(std::vector<KnownLine>& lines, const TubeKnowledge& tube, const TubeTable& table) {
  const TubeEntry& entry = *tube.entry;
  if (!tube.is_of_the_very_type()) {
    lines.push_back({"row", "of " + entry.type + ": there is none for " + tube.decoded.type});
  }
  lines.push_back({"heater", HeaterWords(entry)});
  lines.push_back({"base", entry.base + (entry.basing.empty() ? "" : ", pins " + entry.basing)});
  lines.push_back({"equivalents", Listed(entry.equivalents)});
  lines.push_back({"served by", Listed(entry.served_by)});
  lines.push_back({"serves for", Listed(entry.serves_for)});
  lines.push_back({"industrial form", WithHeaters(entry.industrial, entry, table)});
  lines.push_back({"a form of", WithHeaters(entry.version_of, entry, table)});
  lines.push_back({"other heaters", WithHeaters(entry.variants, entry, table)});
  if (!entry.variants.empty()) {
    lines.push_back({"", "the same tube for another supply: only where its volts and amps fit the set"});
  }
  lines.push_back({"service numbers", Listed(entry.service)});
  lines.push_back({"note", entry.note});
  lines.push_back({"source", entry.source});
}

Json Names(const std::vector<std::string>& names) {
  Json array = Json::Array();
  for (const std::string& name : names) array.Add(name);
  return array;
}

Json ToJson(const TubeKnowledge& tube) {
  Json number = Json::Array();
  for (const TypePart& part : tube.decoded.parts) {
    number.Add(Json::Object({{"part", part.text}, {"meaning", part.meaning}}));
  }
  Json object = Json::Object({{"type", "tube-type"},
                              {"name", tube.decoded.type},
                              {"system", std::string(Name(tube.decoded.system))},
                              {"number", std::move(number)},
                              {"number_complete", tube.decoded.complete},
                              {"number_source", std::string(SourceOf(tube.decoded.system))},
                              {"row", tube.entry != nullptr ? Json(tube.entry->type) : Json()}});
  if (tube.entry == nullptr) return object;
  const TubeEntry& entry = *tube.entry;
  object.Set("class", entry.tube_class);
  object.Set("heater", HeaterJson(entry));
  object.Set("base", entry.base);
  object.Set("basing", entry.basing);
  const std::array<std::pair<const char*, const std::vector<std::string>*>, 7> lists = {{
      {"equivalents", &entry.equivalents},
      {"heater_variants", &entry.variants},
      {"served_by", &entry.served_by},
      {"serves_for", &entry.serves_for},
      {"industrial", &entry.industrial},
      {"version_of", &entry.version_of},
      {"service", &entry.service},
  }};
  for (const auto& [name, list] : lists) object.Set(name, Names(*list));
  object.Set("note", entry.note);
  object.Set("source", entry.source);
  return object;
}

}  // namespace

std::vector<TubeKnowledge> KnowTube(std::string_view asked, const TubeTable& table) {
  std::vector<TubeKnowledge> tubes;
  for (const std::string& name : TubeNames(asked)) {
    TubeKnowledge tube;
    tube.decoded = DecodeTubeType(name);
    tube.entry = table.FindNearest(tube.decoded.type);
    tubes.push_back(std::move(tube));
  }
  return tubes;
}

std::vector<std::string> OtherNames(const std::vector<TubeKnowledge>& tubes) {
  std::vector<std::string> names;
  const auto add = [&](const std::string& name) {
    const bool asked =
        std::any_of(tubes.begin(), tubes.end(), [&](const TubeKnowledge& tube) { return tube.decoded.type == name; });
    if (!asked && std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  for (const TubeKnowledge& tube : tubes) {
    if (tube.entry == nullptr) continue;
    add(tube.entry->type);
    for (const auto* list : {&tube.entry->equivalents, &tube.entry->service}) {
      for (const std::string& name : *list) add(name);
    }
  }
  return names;
}

std::string KnownClass(const TubeKnowledge& tube) {
  return tube.entry != nullptr ? tube.entry->tube_class : "no row in the tables of tube types";
}

std::vector<KnownLine> KnownLines(const TubeKnowledge& tube, const TubeTable& table) {
  std::vector<KnownLine> lines;
  if (tube.entry != nullptr) AddEntryLines(lines, tube, table);
  lines.push_back({"the number", NumberWords(tube.decoded)});
  if (!tube.decoded.parts.empty()) lines.push_back({"read by", std::string(SourceOf(tube.decoded.system))});
  std::erase_if(lines, [](const KnownLine& line) { return line.words.empty(); });
  return lines;
}

std::string KnowledgeText(const std::vector<TubeKnowledge>& tubes, const TubeTable& table, const Look& look) {
  const int columns = look.columns > 0 ? look.columns : kWidest;
  const int width = std::max(20, columns - static_cast<int>(kLabelWidth) - 2);
  std::string text;
  for (const TubeKnowledge& tube : tubes) {
    text += Painted(CleanText(tube.decoded.type), Paint::kStrong, look) + ": " + CleanText(KnownClass(tube)) + "\n";
    for (const KnownLine& known : KnownLines(tube, table)) {
      std::string front = "  " + known.label + std::string(kLabelWidth - known.label.size(), ' ');
      for (const std::string& line : Wrapped(CleanText(known.words), width)) {
        text += front + line + "\n";
        front.assign(front.size(), ' ');
      }
    }
  }
  return text;
}

std::string KnowledgeJson(const std::vector<TubeKnowledge>& tubes) {
  std::string lines;
  for (const TubeKnowledge& tube : tubes) lines += ToJson(tube).Dump() + "\n";
  return lines;
}

}  // namespace benchleaf
