// The program of these tests is its own worker: the commands under test start the running program as one.

#include "benchleaf/cli/run.h"

#include <gtest/gtest.h>

#include <iostream>
#include <string_view>

int main(int argc, char** argv) {
  if (argc > 1 && std::string_view(argv[1]) == "worker") {
    return static_cast<int>(
        benchleaf::Run({argv + 1, argv + argc}, {.out = std::cout, .err = std::cerr, .out_columns = 80}));
  }
  testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
