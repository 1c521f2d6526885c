#include "benchleaf/library/library.h"

#include "library/library_on_disk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <string>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> Sources(const std::vector<Error>& problems) {
  std::vector<std::string> sources;
  sources.reserve(problems.size());
  for (const Error& problem : problems) {
    sources.push_back(problem.source);
  }
  return sources;
}

TEST(ScanLibraryTest, GivesSetsManualsAndFiles) {
  const LibraryOnDisk disk;
  disk.WriteScan("fernwell-210/service vol 1.pdf");
  disk.WriteScan("fernwell-210/service vol 2.pdf");
  disk.WriteScan("scan0001.tif");
  disk.WriteScan(".benchleaf/page.png");
  disk.Write("library.csv", "file,maker,model\nscan0001.tif,Orrin,52\n");
  const auto library = ScanLibrary(disk.root());
  ASSERT_TRUE(library.has_value()) << library.error().ToString();
  EXPECT_EQ(library->root, disk.root());
  EXPECT_THAT(library->problems, IsEmpty());
  ASSERT_EQ(library->sets.size(), 2U);
  EXPECT_EQ(library->sets[0].name, "Orrin 52");
  EXPECT_EQ(library->sets[0].maker, "Orrin");
  EXPECT_EQ(library->sets[0].model, "52");
  EXPECT_EQ(library->sets[1].name, "fernwell 210");
  ASSERT_EQ(library->sets[1].manuals.size(), 1U);
  const ScannedManual& manual = library->sets[1].manuals[0];
  ASSERT_EQ(manual.files.size(), 2U);
  EXPECT_EQ(manual.files[1].path, "fernwell-210/service vol 2.pdf");
  EXPECT_EQ(manual.files[1].volume, 2);
  EXPECT_EQ(manual.files[1].hash.size(), 64U);
  EXPECT_NE(manual.files[0].hash, manual.files[1].hash);
}

TEST(ScanLibraryTest, TellsWhatItLeavesOutAndGoesOn) {
  const LibraryOnDisk disk;
  disk.WriteScan("good.pdf");
  disk.Write("empty.pdf", "");
  disk.Write("letter.pdf", "Dear Sir");
  disk.Write("notes.txt", "no scan, and none promised");
  disk.Write("library.csv", "file,maker\ngood.pdf,Orrin\nempty.pdf,Orrin\nlost.pdf,Orrin\n");
  ASSERT_EQ(mkfifo((disk.root() / "pipe.pdf").c_str(), 0600), 0);
  const auto library = ScanLibrary(disk.root());
  ASSERT_TRUE(library.has_value()) << library.error().ToString();
  ASSERT_EQ(library->sets.size(), 1U);
  EXPECT_EQ(library->sets[0].name, "Orrin");
  EXPECT_THAT(Sources(library->problems), ElementsAre("pipe.pdf", "empty.pdf", "letter.pdf", "library.csv"));
  EXPECT_THAT(library->problems.back().message, HasSubstr("line 4, column 1 (file)"));
}

// The superuser may read every file: for as long as this lives, the process is nobody in particular.
class AsAnOrdinaryUser {
 public:
  AsAnOrdinaryUser() {
    constexpr uid_t kNobody = 65534;
    changed_ = geteuid() == 0 && seteuid(kNobody) == 0;
  }
  ~AsAnOrdinaryUser() {
    if (changed_ && seteuid(0) != 0) {
      ADD_FAILURE() << "the rights of the superuser did not come back";
    }
  }
  AsAnOrdinaryUser(const AsAnOrdinaryUser&) = delete;
  AsAnOrdinaryUser& operator=(const AsAnOrdinaryUser&) = delete;

 private:
  bool changed_ = false;
};

TEST(ScanLibraryTest, AFileThatMayNotBeReadIsLeftOut) {
  const LibraryOnDisk disk;
  std::filesystem::permissions(disk.root().parent_path(), std::filesystem::perms(0755));
  disk.WriteScan("good.pdf");
  disk.WriteScan("closed.pdf");
  disk.WriteScan("closed/a.pdf");
  std::filesystem::permissions(disk.root() / "closed.pdf", std::filesystem::perms::none);
  std::filesystem::permissions(disk.root() / "closed", std::filesystem::perms::none);
  const auto library = [&] {
    const AsAnOrdinaryUser ordinary;
    return ScanLibrary(disk.root());
  }();
  std::filesystem::permissions(disk.root() / "closed", std::filesystem::perms::owner_all);
  ASSERT_TRUE(library.has_value()) << library.error().ToString();
  EXPECT_THAT(Sources(library->problems), ElementsAre("closed", "closed.pdf"));
}

TEST(ScanLibraryTest, ATableThatIsNoFileIsAProblem) {
  const LibraryOnDisk disk;
  disk.WriteScan("good.pdf");
  disk.Write("library.csv/readme", "a folder of that name");
  const auto library = ScanLibrary(disk.root());
  ASSERT_TRUE(library.has_value()) << library.error().ToString();
  EXPECT_THAT(Sources(library->problems), ElementsAre("library.csv"));
}

TEST(ScanLibraryTest, FailsWithoutAFolder) {
  const LibraryOnDisk disk;
  disk.WriteScan("a.pdf");
  for (const char* name : {"none", "a.pdf"}) {
    const auto library = ScanLibrary(disk.root() / name);
    ASSERT_FALSE(library.has_value());
    EXPECT_EQ(library.error().code, ErrorCode::kMissing);
    EXPECT_THAT(library.error().source, HasSubstr(name));
  }
}

TEST(ScanLibraryTest, SaysWhatItLookedForInAFolderWithoutScans) {
  const LibraryOnDisk disk;
  disk.Write("letter.pdf", "Dear Sir");
  const auto library = ScanLibrary(disk.root());
  ASSERT_FALSE(library.has_value());
  EXPECT_EQ(library.error().code, ErrorCode::kEmpty);
  EXPECT_THAT(library.error().message, HasSubstr(".pdf, .tif"));
  EXPECT_THAT(library.error().message, HasSubstr("letter.pdf: is no PDF"));
}

}  // namespace
}  // namespace benchleaf
