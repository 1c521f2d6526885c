// What lies in a folder of scans: its sets, their manuals, and the manuals' files.

#ifndef BENCHLEAF_LIBRARY_LIBRARY_H_
#define BENCHLEAF_LIBRARY_LIBRARY_H_

#include "benchleaf/core/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

enum class ScanFormat { kPdf, kTiff, kPng, kJpeg };

// One file of a manual. Pages are counted when the file is opened, not here.
struct ScanFile {
  std::string path;  // relative to the library, '/' between parts, bytes as the file system has them
  ScanFormat format = ScanFormat::kPdf;
  std::uint64_t size_bytes = 0;
  std::string hash;  // SHA-256 of the content, 64 hexadecimal digits
  int volume = 1;    // counts from 1

  friend bool operator==(const ScanFile&, const ScanFile&) = default;
};

// One document of a set, in one or more files, which are its volumes or, for pictures, its pages, in reading order.
struct ScannedManual {
  std::string name;   // unique within the set, from library.csv or the file names
  std::string title;  // from library.csv, or empty
  std::vector<ScanFile> files;

  friend bool operator==(const ScannedManual&, const ScannedManual&) = default;
};

// One instrument, receiver or amplifier.
struct ScannedSet {
  std::string name;   // unique in the library; "MAKER MODEL" from library.csv, else the folder's or file's name
  std::string maker;  // from library.csv, or empty
  std::string model;  // from library.csv, or empty
  std::vector<ScannedManual> manuals;

  friend bool operator==(const ScannedSet&, const ScannedSet&) = default;
};

struct ScannedLibrary {
  std::filesystem::path root;
  std::vector<ScannedSet> sets;  // by name
  // Files that were left out, and rows of library.csv that cannot be used (message with line and column), each with
  // its reason. They never stop the rest.
  std::vector<Error> problems;
};

// Walks the folder, follows no links out of it, and skips whatever is not a scan. A file directly in `root` is a set
// of its own; a folder of `root`, with its subfolders, is one set; `root`/library.csv (columns file, maker, model,
// volume, title in any order) overrides both. Files of a set whose names differ only in a volume's number are the
// volumes of one manual; the pictures of one folder are the pages of one manual. Files directly in `root` whose names
// differ only in a volume's or a page's number ("page 2") are one set. See src/library/grouping.h for the rules, and
// src/library/library_table.h for those of library.csv.
//
// Fails with kMissing when `root` is no folder and with kEmpty when no scan lies in it (the message says what was
// looked for).
Result<ScannedLibrary> ScanLibrary(const std::filesystem::path& root);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_LIBRARY_H_
