// Where things lie: the library, its index, the project's data, the program itself.

#ifndef BENCHLEAF_SRC_CLI_PLACES_H_
#define BENCHLEAF_SRC_CLI_PLACES_H_

#include "cli/job.h"

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

// As typed; empty where nothing was said.
struct PlaceOptions {
  std::string library = ".";
  std::vector<std::string> databases;
  std::string config;

  std::vector<std::filesystem::path> DatabaseFolders() const;  // LIBRARY/.benchleaf unless said otherwise
  std::filesystem::path ConfigFolder() const;                  // as said; else found by FindConfigFolder
};

// --db, once, and --config.
void AddPlaceOptions(CLI::App& command, PlaceOptions& options);
// --db, which may be repeated, --config and --library, for commands that ask an index.
void AddIndexPlaceOptions(CLI::App& command, PlaceOptions& options);

// The project's data, from the places where it may lie beside `program`: PREFIX/share/benchleaf of a program in
// PREFIX/bin; else the source tree's.
std::filesystem::path FindConfigFolder(const std::filesystem::path& program);

// The running program; empty when the system does not tell.
std::filesystem::path ProgramPath();

// The table of that name among benchleaf's data files, and over it the restorer's own in the library's folder, where
// there is one.
std::vector<std::filesystem::path> TablesNamed(const std::string& name, const PlaceOptions& options);

// The rules of benchleaf's data files with the restorer's own rows over them. Fails as the other LoadRules does.
Result<std::shared_ptr<const Rules>> LoadRules(const PlaceOptions& options);

// Fails with kUsage for a place in the library: what is written there would be read as a scan at the next index.
Result<void> CheckOutsideLibrary(const PlaceOptions& options, const std::filesystem::path& out);

// The index of the library. Fails as LoadRules and IndexReader::Open do.
Result<std::unique_ptr<IndexReader>> OpenIndex(const PlaceOptions& options);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PLACES_H_
