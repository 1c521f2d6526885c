#include "cli/made_library.h"

#include <gmock/gmock.h>

#include <chrono>
#include <fstream>
#include <sstream>

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

TEST_F(BinderCommand, DrawsOnlyWhatHasChanged) {
  const std::vector<std::string> write = {"binder", Out(), "--in", "BRACKENFORD", "--json"};
  const fs::path picture = fs::path(Out()) / "sets" / "0001-brackenford-t7" / "pictures" / "0001.jpg";
  const auto content = [&] {
    std::ostringstream bytes;
    bytes << std::ifstream(picture, std::ios::binary).rdbuf();
    return bytes.str();
  };
  EXPECT_THAT(Ask(write).out, HasSubstr("\"pictures_kept\":0"));
  const std::string first = content();
  EXPECT_GT(first.size(), 100U);
  const RunResult again = Ask(write);
  EXPECT_EQ(again.code, ExitCode::kOk);
  EXPECT_THAT(again.out, HasSubstr("\"pictures_kept\":1"));
  EXPECT_THAT(again.err, HasSubstr("1 picture as before"));
  EXPECT_EQ(content(), first);

  // Somebody drew into the binder's picture: it is made anew.
  std::ofstream(picture) << "scribbled";
  EXPECT_THAT(Ask(write).out, HasSubstr("\"pictures_kept\":0"));
  EXPECT_EQ(content(), first);

  // The scan is another one since.
  fs::last_write_time(library_ / "t7.png", fs::file_time_type::clock::now() + std::chrono::hours(1));
  EXPECT_THAT(Ask(write).out, HasSubstr("\"pictures_kept\":0"));
  EXPECT_THAT(Ask(write).out, HasSubstr("\"pictures_kept\":1"));

  // A scan that is gone gives no picture, whatever the old binder has.
  fs::remove(library_ / "t7.png");
  const RunResult gone = Ask(write);
  EXPECT_EQ(gone.code, ExitCode::kPartly);
  EXPECT_THAT(gone.err, HasSubstr("is not in the library folder"));
  EXPECT_FALSE(fs::exists(picture));
}

TEST_F(BinderCommand, RefusesAnUnknownSet) {
  EXPECT_EQ(Ask({"binder", Out(), "--in", "nobody"}).code, ExitCode::kNothingFound);
  EXPECT_FALSE(fs::exists(Out()));
}

}  // namespace
}  // namespace benchleaf
