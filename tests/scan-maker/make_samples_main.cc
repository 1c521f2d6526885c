// make-samples OUT: writes the sample library into the folder OUT.

#include "scan-maker/sample_library.h"

#include <cstdio>
#include <exception>

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fputs("usage: make-samples OUT\n", stderr);
    return 2;
  }
  try {
    benchleaf::scanmaker::WriteSampleLibrary(argv[1]);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "make-samples: %s\n", error.what());
    return 1;
  }
  return 0;
}
