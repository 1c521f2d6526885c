#include "library/walk.h"

#include "library/library_on_disk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>
#include <string>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(WalkTest, FindsFilesNamedLikeScansInNaturalOrder) {
  const LibraryOnDisk disk;
  for (const char* path : {"b/page-10.png", "b/page-2.png", "a.PDF", "b/deep/er/x.tif", "notes.txt", "b/readme"}) {
    disk.Write(path, "x");
  }
  const WalkedLibrary walked = WalkLibrary(disk.root());
  EXPECT_THAT(walked.files, ElementsAre("a.PDF", "b/deep/er/x.tif", "b/page-2.png", "b/page-10.png"));
  EXPECT_THAT(walked.problems, IsEmpty());
}

TEST(WalkTest, PassesOverHiddenNames) {
  const LibraryOnDisk disk;
  for (const char* path : {".benchleaf/a.pdf", ".a.pdf", "b/.c/d.pdf", "b/e.pdf"}) {
    disk.Write(path, "x");
  }
  const WalkedLibrary walked = WalkLibrary(disk.root());
  EXPECT_THAT(walked.files, ElementsAre("b/e.pdf"));
  EXPECT_THAT(walked.problems, IsEmpty());
}

TEST(WalkTest, AFolderMayBeNamedLikeAScan) {
  const LibraryOnDisk disk;
  disk.Write("a.pdf/b.pdf", "x");
  EXPECT_THAT(WalkLibrary(disk.root()).files, ElementsAre("a.pdf/b.pdf"));
}

TEST(WalkTest, KeepsTheBytesOfNamesThatAreNoText) {
  const LibraryOnDisk disk;
  disk.Write("\xFF\xFE.pdf", "x");
  EXPECT_THAT(WalkLibrary(disk.root()).files, ElementsAre("\xFF\xFE.pdf"));
}

TEST(WalkTest, FollowsLinksOnlyWithinTheLibrary) {
  const LibraryOnDisk disk;
  namespace fs = std::filesystem;
  disk.Write("a.pdf", "x");
  disk.Write("../elsewhere/b.pdf", "x");
  disk.Write("../scans-2/c.pdf", "x");
  fs::create_symlink("a.pdf", disk.root() / "inside.pdf");
  fs::create_symlink(disk.outside() / "elsewhere/b.pdf", disk.root() / "out.pdf");
  fs::create_directory_symlink(disk.outside() / "elsewhere", disk.root() / "out-folder");
  fs::create_directory_symlink(disk.outside() / "scans-2", disk.root() / "sibling");  // its path begins like the root's
  fs::create_directory_symlink(".", disk.root() / "loop");
  fs::create_symlink("nowhere.pdf", disk.root() / "dangling.pdf");
  fs::create_symlink("round.pdf", disk.root() / "round.pdf");
  fs::create_symlink("/etc/hostname", disk.root() / "notes.txt");
  const WalkedLibrary walked = WalkLibrary(disk.root());
  EXPECT_THAT(walked.files, ElementsAre("a.pdf", "inside.pdf"));
  std::vector<std::string> left_out;
  for (const Error& problem : walked.problems) {
    left_out.push_back(problem.source);
  }
  EXPECT_THAT(left_out, ElementsAre("dangling.pdf", "out-folder", "out.pdf", "round.pdf", "sibling"));
}

TEST(WalkTest, LeavesPipesAlone) {
  const LibraryOnDisk disk;
  ASSERT_EQ(mkfifo((disk.root() / "a.pdf").c_str(), 0600), 0);
  ASSERT_EQ(mkfifo((disk.root() / "b").c_str(), 0600), 0);
  std::filesystem::create_symlink("a.pdf", disk.root() / "c.png");
  const WalkedLibrary walked = WalkLibrary(disk.root());
  EXPECT_THAT(walked.files, IsEmpty());
  ASSERT_EQ(walked.problems.size(), 2U);
  EXPECT_EQ(walked.problems[0].source, "a.pdf");
  EXPECT_EQ(walked.problems[0].code, ErrorCode::kUnsupported);
  EXPECT_EQ(walked.problems[1].source, "c.png");
}

TEST(WalkTest, GoesVeryDeep) {
  const LibraryOnDisk disk;
  std::string path;
  for (int i = 0; i < 200; ++i) {
    path += "d/";
  }
  disk.Write(path + "a.pdf", "x");
  EXPECT_EQ(WalkLibrary(disk.root()).files.size(), 1U);
}

}  // namespace
}  // namespace benchleaf
