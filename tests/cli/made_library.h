// A small library with its index, made without reading anything: two sets of invented makers.

#ifndef BENCHLEAF_TESTS_CLI_MADE_LIBRARY_H_
#define BENCHLEAF_TESTS_CLI_MADE_LIBRARY_H_

#include "benchleaf/cli/run.h"
#include "benchleaf/record/manual_record.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

// What a run of the program leaves behind.
struct RunResult {
  ExitCode code = ExitCode::kOk;
  std::string out;
  std::string err;
};

// Remembers things in `state_folder` unless that is empty.
RunResult RunProgram(const std::vector<std::string>& arguments, const std::filesystem::path& state_folder = {});

// QUILLHAVEN 12, a receiver: chassis.png (2 pages by its record, of which page 2 could not be read) and list.png.
// BRACKENFORD T7, a television: t7.png.
class MadeLibrary : public testing::Test {
 protected:
  void SetUp() override;
  void TearDown() override;

  // The arguments, with this library named.
  RunResult Ask(std::vector<std::string> arguments) const;

  // Takes a manual out of the index.
  void Forget(const std::string& set, const std::string& manual) const;

  std::filesystem::path folder_;        // of this test alone
  std::filesystem::path library_;       // in it
  std::filesystem::path state_folder_;  // empty until a test sets it
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_CLI_MADE_LIBRARY_H_
