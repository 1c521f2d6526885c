#include "library/grouping.h"

#include "library/file_names.h"
#include "library/natural_order.h"

#include <algorithm>
#include <cstddef>
#include <filesystem>
#include <iterator>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// A file with what its path and the table say.
struct Placed {
  ScanFile file;
  StatedFacts facts;
  std::string set;
  std::string key;    // the same for all files of one manual, within the set
  std::string unit;   // the file itself, or for pages the folder: what can be one volume
  std::string name;   // of the manual, when the file stands with others
  std::string own;    // of the manual, when the file stands alone
  std::string whole;  // of the manual, when those are taken: the path
};

bool IsPicture(ScanFormat format) { return format == ScanFormat::kPng || format == ScanFormat::kJpeg; }

std::vector<std::string> Parts(const std::string& path) {
  std::vector<std::string> parts;
  std::size_t begin = 0;
  for (std::size_t slash = path.find('/'); slash != std::string::npos; slash = path.find('/', begin)) {
    parts.push_back(path.substr(begin, slash - begin));
    begin = slash + 1;
  }
  parts.push_back(path.substr(begin));
  return parts;
}

std::string Joined(const std::vector<std::string>& parts, char by) {
  std::string text;
  for (const std::string& part : parts) {
    if (!part.empty()) {
      text += text.empty() ? "" : std::string(1, by);
      text += part;
    }
  }
  return text;
}

std::string StatedSet(const StatedFacts& facts) { return Joined({facts.maker, facts.model}, ' '); }

// The set's name for a file directly in the library.
std::string LooseName(const std::string& stem, ScanFormat format, const std::string& library_name) {
  const std::string without_volume = SplitVolume(stem).base;
  const std::string base = format == ScanFormat::kPdf ? without_volume : SplitPage(without_volume).base;
  if (!base.empty()) {
    return ReadableName(base);
  }
  return without_volume.empty() ? ReadableName(stem) : library_name;
}

Placed Place(ScanFile file, const LibraryTable& table, const std::string& library_name) {
  Placed placed;
  placed.facts = table.For(file.path);
  std::vector<std::string> parts = Parts(file.path);
  const std::string stem = std::filesystem::path(parts.back()).stem().string();
  parts.pop_back();
  const bool loose = parts.empty();
  const bool picture = IsPicture(file.format);

  // The folders, and what counts of the file's own name, without their numbers.
  int volume = 0;
  bool counted = false;
  std::vector<std::string> bare;
  std::vector<std::string> readable;
  const auto strip_volume = [&](const std::string& part) {
    NumberedName split = SplitVolume(part);
    volume = split.number > 0 ? split.number : volume;
    return std::move(split.base);
  };
  for (const std::string& part : parts) {
    bare.push_back(strip_volume(part));
    readable.push_back(ReadableName(part));
  }
  readable.push_back(ReadableName(stem));
  std::string base = strip_volume(stem);
  const bool numbered_itself = base != stem;
  placed.own = ReadableName(base.empty() ? stem : base);
  if (file.format == ScanFormat::kTiff) {
    const NumberedName page = SplitPage(base);
    counted = page.number > 0;
    if (counted) {
      base = page.base;
    } else if (CountedName split = SplitTrailingNumber(base); !loose && !numbered_itself && split.counted) {
      // In "Model 84 vol 1" the number before the volume is the model's, not a page's.
      counted = true;
      base = std::move(split.base);
    }
  }

  placed.set = StatedSet(placed.facts);
  if (placed.set.empty()) {
    placed.set = loose                  ? LooseName(stem, file.format, library_name)
                 : bare.front().empty() ? readable.front()
                                        : ReadableName(bare.front());
  }
  if (!picture) {
    bare.push_back(base);
  }
  placed.name = placed.set;
  for (std::size_t i = loose ? 0 : 1; i < bare.size(); ++i) {
    placed.name = bare[i].empty() ? placed.name : ReadableName(bare[i]);
  }
  if (picture || (base.empty() && !counted)) {
    placed.own = placed.name;
  }
  placed.whole = Joined(readable, ' ');

  std::vector<std::string> key_parts;
  std::transform(bare.begin(), bare.end(), std::back_inserter(key_parts),
                 [](const std::string& part) { return LowerAscii(ReadableName(part)); });
  placed.key = "path " +
               std::string(picture                            ? "pictures"
                           : volume > 0 && !counted           ? "scans"
                           : file.format == ScanFormat::kTiff ? "tiff"
                                                              : "pdf") +
               (volume > 0 ? " volumes" : "") + (counted ? " pages" : "") + " /";
  for (const std::string& part : key_parts) {
    placed.key += part + '/';
  }
  placed.unit = picture || counted ? Joined(parts, '/') + '/' : file.path;
  file.volume = placed.facts.volume > 0 ? placed.facts.volume : std::max(volume, 1);
  placed.file = std::move(file);
  return placed;
}

// Carries a title stated for some of a manual's files to the others.
void SpreadTitles(std::vector<Placed>& files) {
  std::map<std::string, std::set<std::string>> titles;
  for (const Placed& placed : files) {
    if (!placed.facts.title.empty()) {
      titles[placed.key].insert(placed.facts.title);
    }
  }
  for (Placed& placed : files) {
    const auto found = titles.find(placed.key);
    if (placed.facts.title.empty() && found != titles.end() && found->second.size() == 1) {
      placed.facts.title = *found->second.begin();
    }
  }
  for (Placed& placed : files) {
    if (!placed.facts.title.empty()) {
      placed.key = "title " + LowerAscii(placed.facts.title);
    }
  }
}

// Volumes may come in several formats, but one number in two formats means two copies: each format is then a manual.
void KeepCopiesApart(std::vector<Placed>& files) {
  std::map<std::string, std::map<int, std::set<ScanFormat>>> formats;
  for (const Placed& placed : files) {
    formats[placed.key][placed.file.volume].insert(placed.file.format);
  }
  for (Placed& placed : files) {
    const auto& by_volume = formats[placed.key];
    const bool copied =
        std::any_of(by_volume.begin(), by_volume.end(), [](const auto& of) { return of.second.size() > 1; });
    if (copied && placed.key.starts_with("path scans volumes")) {
      placed.key += placed.file.format == ScanFormat::kTiff ? " tiff" : " pdf";
    }
  }
}

// Joins the files of a set for which the table states volumes and no title, when each number stands for one unit.
void JoinStatedVolumes(std::vector<Placed>& files) {
  const auto is_stated = [](const Placed& placed) { return placed.facts.volume > 0 && placed.facts.title.empty(); };
  std::map<int, std::string> units;
  for (const Placed& placed : files) {
    if (is_stated(placed) && units.emplace(placed.facts.volume, placed.unit).first->second != placed.unit) {
      return;
    }
  }
  if (units.size() < 2) {
    return;
  }
  for (Placed& placed : files) {
    if (is_stated(placed)) {
      placed.key = "stated volumes";
      placed.name = placed.set;
    }
  }
}

ScannedManual MakeManual(std::vector<Placed> files, std::set<std::string>& taken) {
  std::sort(files.begin(), files.end(), [](const Placed& a, const Placed& b) {
    return a.file.volume != b.file.volume ? a.file.volume < b.file.volume : NaturalLess(a.file.path, b.file.path);
  });
  const Placed& first = files.front();
  ScannedManual manual;
  manual.title = first.facts.title;
  std::vector<std::string> names = {manual.title, files.size() > 1 ? first.name : first.own, first.whole};
  std::size_t choice = manual.title.empty() ? 1 : 0;
  manual.name = names[choice];
  for (int count = 2; !taken.insert(LowerAscii(manual.name)).second;) {
    manual.name = choice + 1 < names.size() ? names[++choice] : names.back() + ' ' + std::to_string(count++);
  }
  std::transform(files.begin(), files.end(), std::back_inserter(manual.files),
                 [](Placed& placed) { return std::move(placed.file); });
  return manual;
}

ScannedSet MakeSet(std::vector<Placed> files) {
  ScannedSet set;
  set.name = files.front().set;
  for (const Placed& placed : files) {
    set.maker = set.maker.empty() ? placed.facts.maker : set.maker;
    set.model = set.model.empty() ? placed.facts.model : set.model;
  }
  KeepCopiesApart(files);
  SpreadTitles(files);
  JoinStatedVolumes(files);
  std::map<std::string, std::vector<Placed>> manuals;
  for (Placed& placed : files) {
    manuals[placed.key].push_back(std::move(placed));
  }
  std::set<std::string> taken;
  // Stated titles first: a file's name must not take a title from its manual.
  for (const bool titled : {true, false}) {
    for (auto& [key, group] : manuals) {
      if (key.starts_with("title ") == titled) {
        set.manuals.push_back(MakeManual(std::move(group), taken));
      }
    }
  }
  std::sort(set.manuals.begin(), set.manuals.end(),
            [](const ScannedManual& a, const ScannedManual& b) { return NaturalLess(a.name, b.name); });
  return set;
}

}  // namespace

std::vector<ScannedSet> GroupIntoSets(std::vector<ScanFile> files, const LibraryTable& table,
                                      const std::string& library_name) {
  std::sort(files.begin(), files.end(),
            [](const ScanFile& a, const ScanFile& b) { return NaturalLess(a.path, b.path); });
  std::map<std::string, std::vector<Placed>> by_set;
  for (ScanFile& file : files) {
    Placed placed = Place(std::move(file), table, library_name);
    by_set[LowerAscii(placed.set)].push_back(std::move(placed));
  }
  std::vector<ScannedSet> sets;
  std::transform(by_set.begin(), by_set.end(), std::back_inserter(sets),
                 [](auto& keyed) { return MakeSet(std::move(keyed.second)); });
  std::sort(sets.begin(), sets.end(), [](const ScannedSet& a, const ScannedSet& b) { return a.name < b.name; });
  return sets;
}

}  // namespace benchleaf
