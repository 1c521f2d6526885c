// Locks the running process in, for the time in which it opens files of strangers.

#ifndef BENCHLEAF_SRC_WORK_CONFINE_H_
#define BENCHLEAF_SRC_WORK_CONFINE_H_

#include "benchleaf/core/result.h"

namespace benchleaf {

// From here on the process may read files and use the descriptors that it has. The system refuses, with EPERM,
// whatever else it asks for: opening a file for writing, making, renaming or removing one, sockets, starting programs,
// new processes and threads, signals to others. Nothing undoes this. Fails with kUnsupported when the system has no
// filter of system calls (seccomp).
Result<void> ConfineToReading();

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_CONFINE_H_
