// The real worker, without the command line around it.

#include "places/places.h"

#include "benchleaf/work/index_library.h"

int main() { return benchleaf::RunWorker(benchleaf::SourceFolder() / "config"); }
