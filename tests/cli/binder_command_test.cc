#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::HasSubstr;

namespace fs = std::filesystem;

class BinderCommand : public MadeLibrary {
 protected:
  std::string Out() const { return (folder_ / "binder").string(); }
};

TEST_F(BinderCommand, LeavesAForeignFolderAlone) {
  fs::create_directories(Out());
  std::ofstream(fs::path(Out()) / "letters.txt") << "mine";
  const RunResult refused = Ask({"binder", Out()});
  EXPECT_EQ(refused.code, ExitCode::kCannotRun);
  EXPECT_THAT(refused.err, HasSubstr("holds something else and is left alone"));
  EXPECT_EQ(fs::file_size(fs::path(Out()) / "letters.txt"), 4U);
}

TEST_F(BinderCommand, RefusesAPlaceInTheLibrary) {
  const RunResult refused = Ask({"binder", (library_ / "binder").string()});
  EXPECT_EQ(refused.code, ExitCode::kUsage);
  EXPECT_THAT(refused.err, HasSubstr("would be read as scans"));
  EXPECT_FALSE(fs::exists(library_ / "binder"));
}

TEST_F(BinderCommand, RefusesAnUnknownSet) {
  EXPECT_EQ(Ask({"binder", Out(), "--in", "nobody"}).code, ExitCode::kNothingFound);
  EXPECT_FALSE(fs::exists(Out()));
}

}  // namespace
}  // namespace benchleaf
