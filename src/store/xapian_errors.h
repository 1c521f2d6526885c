// Xapian's errors, which are no std::exception, end here.

#ifndef BENCHLEAF_STORE_XAPIAN_ERRORS_H_
#define BENCHLEAF_STORE_XAPIAN_ERRORS_H_

#include "benchleaf/core/result.h"

#include <xapian.h>

#include <filesystem>

namespace benchleaf::store {

// What happened, in our words, with the folder as source.
Error FromXapian(const Xapian::Error& error, const std::filesystem::path& folder);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_XAPIAN_ERRORS_H_
