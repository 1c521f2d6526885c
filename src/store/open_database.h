// Opens an index to be asked, wherever it lies.

#ifndef BENCHLEAF_STORE_OPEN_DATABASE_H_
#define BENCHLEAF_STORE_OPEN_DATABASE_H_

#include "benchleaf/core/result.h"

#include <xapian.h>

#include <filesystem>

namespace benchleaf::store {

// The index in the folder, or the one that "remote:HOST:PORT" names. Fails with kMissing, kForeign, kUsage for a remote
// name that is none, and kIo.
Result<Xapian::Database> OpenDatabase(const std::filesystem::path& folder);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_OPEN_DATABASE_H_
