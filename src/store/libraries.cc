#include "benchleaf/store/libraries.h"

#include <xapian.h>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfStore() { return {{"xapian", Xapian::version_string()}}; }

}  // namespace benchleaf
