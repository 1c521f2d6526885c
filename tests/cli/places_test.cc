#include "cli/places.h"

#include "places/places.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

TEST(FindConfigFolder, TakesWhatWasInstalledBesideTheProgram) {
  const fs::path prefix = fs::temp_directory_path() / ("benchleaf-prefix-" + std::to_string(getpid()));
  fs::create_directories(prefix / "share" / "benchleaf");
  EXPECT_EQ(FindConfigFolder(prefix / "bin" / "benchleaf"), prefix / "share" / "benchleaf");
  fs::remove_all(prefix);
}

TEST(FindConfigFolder, ElseTheSourceTrees) {
  EXPECT_EQ(FindConfigFolder("/nowhere/bin/benchleaf"), SourceFolder() / "config");
  EXPECT_EQ(FindConfigFolder({}), SourceFolder() / "config");
}

TEST(PlaceOptions, TheIndexLiesInTheLibraryUnlessSaidOtherwise) {
  PlaceOptions options;
  options.library = "/scans";
  EXPECT_EQ(options.DatabaseFolders(), std::vector<fs::path>{"/scans/.benchleaf"});
  options.databases = {"/elsewhere", "/there"};
  EXPECT_EQ(options.DatabaseFolders(), (std::vector<fs::path>{"/elsewhere", "/there"}));
}

TEST(ProgramPath, IsAFile) { EXPECT_TRUE(fs::is_regular_file(ProgramPath())); }

}  // namespace
}  // namespace benchleaf
