#include "benchleaf/report/library_rows.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/csv.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace benchleaf {
namespace {

std::string FolderOf(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string::npos ? std::string() : path.substr(0, slash);
}

// How many manuals have files in each folder or below it.
using FolderUses = std::map<std::string, int>;

FolderUses UsesOfFolders(const ScannedLibrary& library) {
  FolderUses uses;
  for (const ScannedSet& set : library.sets) {
    for (const ScannedManual& manual : set.manuals) {
      std::set<std::string> folders;
      for (const ScanFile& file : manual.files) {
        for (std::string folder = FolderOf(file.path); !folder.empty(); folder = FolderOf(folder)) {
          folders.insert(folder);
        }
      }
      for (const std::string& folder : folders) ++uses[folder];
    }
  }
  return uses;
}

// The folder that holds all pages of the manual and nothing else; empty when there is none.
std::string OwnFolder(const ScannedManual& manual, const FolderUses& uses) {
  const std::string folder = FolderOf(manual.files.front().path);
  const bool in_one = std::all_of(manual.files.begin(), manual.files.end(), [&](const ScanFile& file) {
    return FolderOf(file.path) == folder && file.volume == manual.files.front().volume;
  });
  return manual.files.size() > 1 && in_one && !folder.empty() && uses.at(folder) == 1 ? folder : std::string();
}

bool HasVolumes(const ScannedManual& manual) {
  return std::any_of(manual.files.begin(), manual.files.end(),
                     [&](const ScanFile& file) { return file.volume != manual.files.front().volume; });
}

// A spreadsheet must not take a file's name for a formula, nor may the name change.
std::string SafePath(const std::string& path) {
  return CsvField(path).find(path.front()) == 0 || CsvField(path).front() == '"' ? path : "./" + path;
}

}  // namespace

std::vector<LibraryRow> LibraryRows(const ScannedLibrary& library) {
  const FolderUses uses = UsesOfFolders(library);
  std::vector<LibraryRow> rows;
  for (const ScannedSet& set : library.sets) {
    const bool stated = !set.maker.empty() || !set.model.empty();
    for (const ScannedManual& manual : set.manuals) {
      LibraryRow row{"", set.maker, stated ? set.model : set.name, "", manual.title};
      row.file = OwnFolder(manual, uses);
      if (!row.file.empty()) {
        rows.push_back(std::move(row));
        continue;
      }
      const bool volumes = HasVolumes(manual);
      for (const ScanFile& file : manual.files) {
        row.file = file.path;
        row.volume = volumes ? std::to_string(file.volume) : "";
        rows.push_back(row);
      }
    }
  }
  return rows;
}

std::string LibraryCsv(const std::vector<LibraryRow>& rows) {
  std::string csv = CsvRecord({"file", "maker", "model", "volume", "title"});
  for (const LibraryRow& row : rows) {
    csv += CsvRecord({SafePath(row.file), row.maker, row.model, row.volume, row.title});
  }
  return csv;
}

std::string LibraryJson(const std::vector<LibraryRow>& rows) {
  std::string lines;
  for (const LibraryRow& row : rows) {
    lines += Json::Object({{"type", "file"},
                           {"file", row.file},
                           {"maker", row.maker},
                           {"model", row.model},
                           {"volume", row.volume},
                           {"title", row.title}})
                 .Dump() +
             "\n";
  }
  return lines;
}

}  // namespace benchleaf
