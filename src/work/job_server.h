// The worker's side of the protocol: takes jobs from one descriptor and answers them on another.

#ifndef BENCHLEAF_SRC_WORK_JOB_SERVER_H_
#define BENCHLEAF_SRC_WORK_JOB_SERVER_H_

#include "work/protocol.h"

#include <functional>

namespace benchleaf {

// Greets, then answers every job until `in` ends. Gives the process's exit code: 0 at the end of the input, 1 when the
// input is no job or the parent no longer listens.
int ServeJobs(int in, int out, const std::function<Answer(const Job&)>& answer);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_JOB_SERVER_H_
