#include "cli/made_library.h"

#include "benchleaf/library/library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::HasSubstr;

namespace fs = std::filesystem;

class FilesCommand : public MadeLibrary {
 protected:
  void SetUp() override {
    MadeLibrary::SetUp();
    fs::copy_file(library_ / "t7.png", library_ / "quillhaven" / "list.png");
    fs::copy_file(library_ / "t7.png", library_ / "=odd, \"name\".png");
  }
};

// Sets and manuals, told in a line each.
std::string Told(const fs::path& library) {
  std::string text;
  const auto scanned = ScanLibrary(library);
  if (!scanned) return scanned.error().ToString();
  for (const ScannedSet& set : scanned->sets) {
    for (const ScannedManual& manual : set.manuals) {
      text += set.name + " | " + manual.name;
      for (const ScanFile& file : manual.files) text += " | " + file.path + " " + std::to_string(file.volume);
      text += "\n";
    }
  }
  return text;
}

TEST_F(FilesCommand, ListsFilesAndFoldersOfPages) {
  const RunResult result = RunProgram({"files", library_.string()});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, testing::StartsWith("file,maker,model,volume,title\r\n"));
  EXPECT_THAT(result.out, HasSubstr("\r\nquillhaven,,quillhaven,,\r\n"));
  EXPECT_THAT(result.out, HasSubstr("\r\nt7.png,,t7,,\r\n"));
  EXPECT_THAT(RunProgram({"files", library_.string(), "--json"}).out,
              HasSubstr("{\"type\":\"file\",\"file\":\"t7.png\",\"maker\":\"\",\"model\":\"t7\""));
}

TEST_F(FilesCommand, WrittenSaysWhatIsSoWithoutIt) {
  const std::string before = Told(library_);
  ASSERT_EQ(RunProgram({"files", library_.string(), "--write"}).code, ExitCode::kOk);
  EXPECT_EQ(Told(library_), before);
}

TEST_F(FilesCommand, NeverWritesOverATable) {
  std::ofstream(library_ / "library.csv") << "file,maker\nt7.png,BRACKENFORD\n";
  const auto size = fs::file_size(library_ / "library.csv");
  const RunResult refused = RunProgram({"files", library_.string(), "--write"});
  EXPECT_EQ(refused.code, ExitCode::kCannotRun);
  EXPECT_THAT(refused.err, HasSubstr("left alone"));
  EXPECT_EQ(fs::file_size(library_ / "library.csv"), size);
  EXPECT_THAT(RunProgram({"files", library_.string()}).out, HasSubstr("t7.png,BRACKENFORD,"));
}

TEST_F(FilesCommand, OfNoFolderSaysSo) {
  EXPECT_EQ(RunProgram({"files", (folder_ / "nowhere").string()}).code, ExitCode::kCannotRun);
}

}  // namespace
}  // namespace benchleaf
