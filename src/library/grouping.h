// Which files are one manual, and which manuals are one set's.

#ifndef BENCHLEAF_LIBRARY_GROUPING_H_
#define BENCHLEAF_LIBRARY_GROUPING_H_

#include "library/library_table.h"

#include "benchleaf/library/library.h"

#include <string>
#include <vector>

namespace benchleaf {

// Puts the files together as ScanLibrary says. Pure; the result does not depend on the files' order.
//
// Set: "MAKER MODEL" where the table states one of them; else the name of the file's uppermost folder; else, for a
// file directly in the library, its own name, without a volume's number and, for a TIFF, PNG or JPEG, a page's
// (`library_name` when nothing else is left: page-1.png). Names that differ only in case are one set.
//
// Manual, within a set: files with the same stated title; files for which the table states volumes and no title, when
// no number stands twice; else
// - PDF and TIFF files whose paths differ only in volumes' numbers, folders' included; where a number stands in both
//   formats, those of each format,
// - TIFF files of one folder whose names differ only in a page's or last number, which are pages,
// - the PNG and JPEG files of one folder, which are pages; folders that differ only in volumes' numbers go together.
// A title stated for one volume holds for the others.
std::vector<ScannedSet> GroupIntoSets(std::vector<ScanFile> files, const LibraryTable& table,
                                      const std::string& library_name);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_GROUPING_H_
