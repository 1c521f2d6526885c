// The real worker, without the command line around it.

#include "benchleaf/work/index_library.h"

int main() { return benchleaf::RunWorker(BENCHLEAF_SOURCE_DIR "/config"); }
