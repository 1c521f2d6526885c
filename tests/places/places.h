// Where the tests' own tree lies: in one place, so that no other object file depends on the folder it was built in.

#ifndef BENCHLEAF_TESTS_PLACES_PLACES_H_
#define BENCHLEAF_TESTS_PLACES_PLACES_H_

#include <filesystem>

namespace benchleaf {

// The checkout, and the build's folder.
std::filesystem::path SourceFolder();
std::filesystem::path BuildFolder();

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_PLACES_PLACES_H_
