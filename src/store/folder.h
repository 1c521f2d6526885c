// Whether a folder holds an index of ours, nothing yet, or something to keep our hands off.

#ifndef BENCHLEAF_STORE_FOLDER_H_
#define BENCHLEAF_STORE_FOLDER_H_

#include "benchleaf/core/result.h"

#include <xapian.h>

#include <filesystem>

namespace benchleaf::store {

enum class FolderState {
  kNothing,   // missing or empty
  kBegun,     // the empty files of a database that a process was killed over while making it
  kDatabase,  // a Xapian database, ours or not
  kOther,     // something else
};

// Fails with kIo when the folder cannot be read.
Result<FolderState> LookAt(const std::filesystem::path& folder);

enum class SchemaState {
  kOurs,
  kNew,  // a database without any content, as a process leaves it that was killed before its first commit
};

// Fails with kForeign for another's database, or one of another schema version. Throws Xapian::Error.
Result<SchemaState> CheckSchema(const Xapian::Database& database, const std::filesystem::path& folder);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_FOLDER_H_
