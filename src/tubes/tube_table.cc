#include "benchleaf/tubes/tube_table.h"

#include "benchleaf/core/table_file.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <charconv>
#include <set>
#include <sstream>

namespace benchleaf {
namespace {

// No heater of the table's tubes takes more: line-voltage heaters have 117 V, large rectifiers 7.5 A.
constexpr double kMostVolts = 130;
constexpr double kMostAmps = 20;

bool IsTypeName(std::string_view name) {
  return !name.empty() && std::none_of(name.begin(), name.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

// "12.6/6.3" as two figures; an empty cell, or an empty place before or behind the stroke, is a figure not known.
Result<std::vector<std::optional<double>>> Figures(const TableFile& file, std::size_t row, std::string_view column,
                                                   double most) {
  std::vector<std::optional<double>> figures;
  std::string_view rest = file.Cell(row, column);
  while (true) {
    const std::size_t stroke = std::min(rest.find('/'), rest.size());
    const std::string_view one = rest.substr(0, stroke);
    std::optional<double>& figure = figures.emplace_back();
    if (!one.empty()) {
      double number = -1;
      const auto [end, problem] = std::from_chars(one.data(), one.data() + one.size(), number);
      if (problem != std::errc() || end != one.data() + one.size() || !(number >= 0 && number <= most)) {
        return tl::unexpected<Error>(file.Complaint(
            row, column, "write figures from 0 to " + std::to_string(static_cast<int>(most)) + ", as 12.6/6.3"));
      }
      figure = number;
    }
    if (stroke == rest.size()) return figures;
    rest.remove_prefix(stroke + 1);
  }
}

Result<std::vector<HeaterSupply>> Heater(const TableFile& file, std::size_t row) {
  const auto volts = Figures(file, row, "heater_volts", kMostVolts);
  if (!volts) return tl::unexpected<Error>(volts.error());
  const auto amps = Figures(file, row, "heater_amps", kMostAmps);
  if (!amps) return tl::unexpected<Error>(amps.error());
  const bool no_amps = amps->size() == 1 && !amps->front();
  if (volts->size() != amps->size() && !no_amps) {
    return tl::unexpected<Error>(
        file.Complaint(row, "heater_amps", "write as many figures as heater_volts has, in the same order, or none"));
  }
  std::vector<HeaterSupply> heater;
  for (std::size_t i = 0; i < volts->size(); ++i) {
    heater.push_back({(*volts)[i], no_amps ? std::nullopt : (*amps)[i]});
  }
  if (heater.size() == 1 && !heater[0].volts && !heater[0].amps) heater.clear();
  return heater;
}

Result<std::vector<std::string>> Names(const TableFile& file, std::size_t row, std::string_view column) {
  std::vector<std::string> names;
  std::istringstream words(file.Cell(row, column));
  for (std::string name; words >> name;) {
    if (!IsTypeName(name)) {
      return tl::unexpected<Error>(file.Complaint(row, column, "write types in capitals with spaces between them"));
    }
    if (name == file.Cell(row, "type")) {
      return tl::unexpected<Error>(file.Complaint(row, column, "leave out the row's own type"));
    }
    names.push_back(name);
  }
  return names;
}

Result<TubeEntry> Entry(const TableFile& file, std::size_t row) {
  TubeEntry entry;
  entry.type = file.Cell(row, "type");
  if (!IsTypeName(entry.type) || entry.type.find(' ') != std::string::npos) {
    return tl::unexpected<Error>(file.Complaint(row, "type", "write the type in capitals, without spaces"));
  }
  auto heater = Heater(file, row);
  if (!heater) return tl::unexpected<Error>(heater.error());
  entry.heater = std::move(*heater);
  entry.tube_class = file.Cell(row, "class");
  entry.base = file.Cell(row, "base");
  if (!entry.base.empty() && std::find(TubeBases().begin(), TubeBases().end(), entry.base) == TubeBases().end()) {
    std::string known;
    for (const std::string_view base : TubeBases()) known.append(known.empty() ? "" : ", ").append(base);
    return tl::unexpected<Error>(file.Complaint(row, "base", "write one of: " + known + "; or nothing"));
  }
  entry.basing = file.Cell(row, "basing");
  struct List {
    std::string_view column;
    std::vector<std::string> TubeEntry::*names;
  };
  for (const List& list : {List{"equivalents", &TubeEntry::equivalents}, List{"heater_variants", &TubeEntry::variants},
                           List{"served_by", &TubeEntry::served_by}, List{"industrial", &TubeEntry::industrial},
                           List{"service", &TubeEntry::service}}) {
    auto names = Names(file, row, list.column);
    if (!names) return tl::unexpected<Error>(names.error());
    entry.*list.names = std::move(*names);
  }
  entry.note = file.Cell(row, "note");
  entry.source = file.Cell(row, "source");
  if (entry.source.empty()) {
    return tl::unexpected<Error>(
        file.Complaint(row, "source", "write where the row comes from, 'from memory' where so"));
  }
  return entry;
}

void AddOnce(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

}  // namespace

const std::vector<std::string_view>& TubeBases() {
  static const std::vector<std::string_view> bases = {
      "4-pin",  "5-pin",       "6-pin",    "7-pin",    "octal",        "loktal",       "7-pin miniature", "noval",
      "novar",  "magnoval",    "duodecar", "nuvistor", "acorn",        "subminiature", "rimlock",         "decal",
      "septar", "8-pin steel", "B9G",      "11-pin",   "side-contact", "duodecal",     "diheptal",        "magnal",
  };
  return bases;
}

Result<TubeTable> TubeTable::Load(const std::vector<std::filesystem::path>& files) {
  TubeTable table;
  for (const std::filesystem::path& path : files) {
    const auto file =
        TableFile::Read(path, {"type", "heater_volts", "heater_amps", "class", "base", "basing", "equivalents",
                               "heater_variants", "served_by", "industrial", "service", "note", "source"});
    if (!file) return tl::unexpected<Error>(file.error());
    std::set<std::string> here;
    for (std::size_t row = 0; row < file->size(); ++row) {
      auto entry = Entry(*file, row);
      if (!entry) return tl::unexpected<Error>(entry.error());
      if (!here.insert(entry->type).second) {
        return tl::unexpected<Error>(
            file->Complaint(row, "type", "the file has another row of this type; keep one of them"));
      }
      table.entries_[entry->type] = std::move(*entry);
    }
  }
  table.KnowFromBothSides();
  return table;
}

void TubeTable::KnowFromBothSides() {
  struct Relation {
    std::vector<std::string> TubeEntry::*said;
    std::vector<std::string> TubeEntry::*other_side;
  };
  for (const Relation& relation :
       {Relation{&TubeEntry::equivalents, &TubeEntry::equivalents},
        Relation{&TubeEntry::variants, &TubeEntry::variants}, Relation{&TubeEntry::served_by, &TubeEntry::serves_for},
        Relation{&TubeEntry::industrial, &TubeEntry::version_of}}) {
    for (const auto& [type, entry] : entries_) {
      const std::vector<std::string> names = entry.*relation.said;  // a copy: the other side may be this very row
      for (const std::string& name : names) {
        const auto other = entries_.find(name);
        if (other != entries_.end()) AddOnce(other->second.*relation.other_side, type);
      }
    }
  }
  for (const auto& [type, entry] : entries_) {
    for (const std::string& number : entry.service) by_service_.emplace(number, type);
  }
}

const TubeEntry* TubeTable::Find(std::string_view type) const {
  auto found = entries_.find(type);
  if (found == entries_.end()) {
    const auto service = by_service_.find(type);
    if (service == by_service_.end()) return nullptr;
    found = entries_.find(service->second);
  }
  return &found->second;
}

const TubeEntry* TubeTable::FirstForm(std::string_view number) const {
  const TubeEntry* first = nullptr;
  for (auto at = entries_.upper_bound(number); at != entries_.end() && at->first.starts_with(number); ++at) {
    const bool shorter = first == nullptr || at->first.size() < first->type.size();
    if (shorter && TubeBase(at->first) == number) first = &at->second;
  }
  return first;
}

const TubeEntry* TubeTable::FindNearest(std::string_view type) const {
  for (const std::string& name : TubeNames(type)) {
    const std::string plain(WithoutServiceMark(name));
    const TubeEntry* entry = Find(plain);
    if (entry == nullptr) entry = Find(TubeBase(plain));
    if (entry == nullptr) entry = FirstForm(plain);
    if (entry != nullptr) return entry;
  }
  return nullptr;
}

}  // namespace benchleaf
