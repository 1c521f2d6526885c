#include "cli/made_library.h"

#include "benchleaf/raster/page_source.h"

#include <gmock/gmock.h>

#include <fstream>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;

namespace fs = std::filesystem;

class PictureCommand : public MadeLibrary {
 protected:
  std::string Target(const std::string& name) const { return (folder_ / name).string(); }
};

int HeightOf(const fs::path& path) {
  const auto source = OpenScan(path, path.filename().string());
  const auto image = source ? (*source)->LoadColor(1, 20000) : tl::unexpected(source.error());
  return image ? image->height : 0;
}

// The smallest box round the ring's pixels in a picture on disk.
Box RingIn(const fs::path& path) {
  const auto source = OpenScan(path, path.filename().string());
  if (!source) return {};
  const auto image = (*source)->LoadColor(1, 20000);
  if (!image) return {};
  Box ring;
  for (int y = 0; y < image->height; ++y) {
    for (int x = 0; x < image->width; ++x) {
      const std::size_t at =
          (static_cast<std::size_t>(y) * static_cast<std::size_t>(image->width) + static_cast<std::size_t>(x)) * 3;
      // The band is magenta; the scan is grey.
      if (image->pixels[at] - image->pixels[at + 1] > 80) {
        ring = Union(ring, {x, y, 1, 1});
      }
    }
  }
  return ring;
}

TEST_F(PictureCommand, WritesTheSpotAndItsPageRinged) {
  const RunResult result = Ask({"picture", "C112", "--hit", "1", "-o", Target("spot.png")});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("spot.png"), HasSubstr("spot-page.png"),
                                HasSubstr("C112 in QUILLHAVEN 12, quillhaven/chassis.png, page 1 (printed 8-17), upper "
                                          "left, 24 % across, 14 % down")));
  EXPECT_FALSE(RingIn(Target("spot.png")).empty());
  const Box ring = RingIn(Target("spot-page.png"));
  // The scan has 850 x 1100 px, so its page is not made smaller.
  EXPECT_NEAR(ring.center_x(), 850 * 0.235, 2);
  EXPECT_NEAR(ring.center_y(), 1100 * 0.135, 2);
}

TEST_F(PictureCommand, NumbersTheFilesOfSeveralPlaces) {
  const RunResult result = Ask({"picture", "6CB6", "--in", "BRACKENFORD", "-o", Target("one.png")});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_TRUE(fs::exists(Target("one.png")));

  // C112 is also on list.png, of which no scan is left: the other place is pictured all the same.
  const RunResult both = Ask({"picture", "C112", "-o", Target("both.png")});
  EXPECT_EQ(both.code, ExitCode::kPartly);
  EXPECT_TRUE(fs::exists(Target("both-1.png")));
  EXPECT_FALSE(fs::exists(Target("both-2.png")));
  EXPECT_THAT(both.err, AllOf(HasSubstr("quillhaven/list.png"), HasSubstr("the scan is not in the library folder")));
}

TEST_F(PictureCommand, NeverWritesOverAFileUnlessToldTo) {
  std::ofstream(Target("spot-page.png")) << "mine";
  const RunResult refused = Ask({"picture", "R7", "-o", Target("spot.png")});
  EXPECT_EQ(refused.code, ExitCode::kCannotRun);
  EXPECT_THAT(refused.err, AllOf(HasSubstr("spot-page.png"), HasSubstr("--force")));
  EXPECT_FALSE(fs::exists(Target("spot.png")));
  EXPECT_EQ(fs::file_size(Target("spot-page.png")), 4U);
  EXPECT_EQ(Ask({"picture", "R7", "-o", Target("spot.png"), "--force"}).code, ExitCode::kOk);
  EXPECT_GT(fs::file_size(Target("spot-page.png")), 4U);
}

TEST_F(PictureCommand, ShowsANamedPage) {
  const RunResult plain = Ask({"picture", "--file", "t7.png", "--page", "1", "-o", Target("page.png")});
  EXPECT_EQ(plain.code, ExitCode::kOk) << plain.err;
  EXPECT_TRUE(RingIn(Target("page.png")).empty());
  EXPECT_FALSE(fs::exists(Target("page-page.png")));
  const RunResult ringed =
      Ask({"picture", "--file", "t7.png", "--page", "1", "--box", "0.5,0.5,0.1,0.02", "-o", Target("box.png")});
  EXPECT_EQ(ringed.code, ExitCode::kOk) << ringed.err;
  EXPECT_FALSE(RingIn(Target("box.png")).empty());
}

TEST_F(PictureCommand, TakesANumberOfWhatWasFoundLast) {
  state_folder_ = folder_ / "state";
  ASSERT_EQ(Ask({"find", "C112", "--in", "QUILLHAVEN"}).code, ExitCode::kOk);
  const RunResult first = Ask({"picture", "-n", "1", "-o", Target("first.png")});
  EXPECT_EQ(first.code, ExitCode::kOk) << first.err;
  EXPECT_THAT(first.out, HasSubstr("C112 in QUILLHAVEN 12, quillhaven/chassis.png"));
  EXPECT_THAT(Ask({"picture", "-n", "9"}).err, HasSubstr("C112: it has only 2 places"));
  // Another index, and an index that answers otherwise now.
  const RunResult elsewhere = Ask({"picture", "-n", "1", "--db", Target("other")});
  EXPECT_EQ(elsewhere.code, ExitCode::kCannotRun) << "there is no such index";
  Forget("QUILLHAVEN 12", "chassis");
  const RunResult changed = Ask({"picture", "-n", "1", "-o", Target("changed.png")});
  EXPECT_EQ(changed.code, ExitCode::kNothingFound);
  EXPECT_THAT(changed.err, HasSubstr("has changed"));
}

TEST_F(PictureCommand, RingsAllPlacesOfAPageTogether) {
  const RunResult result =
      Ask({"picture", "C112", "V3", "--kind", "schematic", "-t", "-o", Target("all.png"), "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("\"places\":[{"), HasSubstr("\"text\":\"V3\""), HasSubstr("\"places\":2}")));
  const Box rings = RingIn(Target("all-page.png"));
  EXPECT_LT(rings.x, 850 * 0.23);
  EXPECT_GT(rings.right(), 850 * 0.53);
  EXPECT_GT(rings.bottom(), 1100 * 0.5);
}

TEST_F(PictureCommand, PutsATubeOfEverySetOnASheet) {
  const RunResult result = Ask({"picture", "6CB6", "--sheet", "-o", Target("sheet.png"), "--json"});
  EXPECT_EQ(result.code, ExitCode::kOk) << result.err;
  EXPECT_THAT(result.out, AllOf(HasSubstr("\"type\":\"sheet\""), HasSubstr("BRACKENFORD T7"),
                                HasSubstr("QUILLHAVEN 12"), HasSubstr("\"designator\":\"V3\"")));
  EXPECT_FALSE(RingIn(Target("sheet.png")).empty());
}

TEST_F(PictureCommand, WritesOnlyTheViewAskedForInTheSizeAskedFor) {
  EXPECT_EQ(Ask({"picture", "R7", "--view", "page", "--size", "600", "-o", Target("page.png")}).code, ExitCode::kOk);
  EXPECT_FALSE(fs::exists(Target("page-page.png")));
  EXPECT_EQ(HeightOf(Target("page.png")), 600);
  EXPECT_EQ(Ask({"picture", "R7", "--view", "spot", "--size", "1200", "-o", Target("spot.png")}).code, ExitCode::kOk);
  EXPECT_FALSE(fs::exists(Target("spot-page.png")));
}

TEST_F(PictureCommand, ShowsTheScanOrThePrintedPageThatIsNamed) {
  const RunResult scan = Ask({"picture", "t7.png", "-o", Target("scan.png")});
  EXPECT_EQ(scan.code, ExitCode::kOk) << scan.err;
  const RunResult printed = Ask({"picture", "--in", "quill", "-p", "8-17", "-o", Target("printed.png")});
  EXPECT_EQ(printed.code, ExitCode::kOk) << printed.err;
  EXPECT_THAT(printed.out, HasSubstr("quillhaven/chassis.png, page 1 (printed 8-17)"));
}

TEST_F(PictureCommand, WarnsThatAPictureInTheLibraryWouldBecomeAScan) {
  const std::string inside = (library_ / "R7.png").string();
  EXPECT_THAT(Ask({"picture", "R7", "-o", inside}).err, HasSubstr("lies in the library"));
  EXPECT_EQ(Ask({"picture", "R7", "-o", Target("R7.png")}).err, "");
  EXPECT_EQ(Ask({"picture", "R7", "-o", inside, "--force", "--quiet"}).err, "");
}

TEST_F(PictureCommand, RefusesWhatItCannotPicture) {
  struct Case {
    const char* why;
    std::vector<std::string> arguments;
    ExitCode code;
    const char* said;
  };
  const std::vector<Case> cases = {
      {"neither term nor file", {"picture"}, ExitCode::kUsage, "say what to show"},
      {"a term and a page", {"picture", "C112", "--file", "t7.png"}, ExitCode::kUsage, "by itself"},
      {"a sheet and one picture", {"picture", "C112", "--sheet", "-t"}, ExitCode::kUsage, "--together"},
      {"a page number of no set", {"picture", "--page", "8-17"}, ExitCode::kUsage, "--in SET"},
      {"a page number that no page bears",
       {"picture", "--in", "QUILL", "--page", "9-1"},
       ExitCode::kNothingFound,
       "no page bears the number 9-1"},
      {"a number without a find", {"picture", "--hit", "1"}, ExitCode::kCannotRun, "benchleaf find"},
      {"a size beyond bounds", {"picture", "R7", "--size", "9000"}, ExitCode::kUsage, "--size"},
      {"no such view", {"picture", "R7", "--view", "moon"}, ExitCode::kUsage, "--view"},
      {"another format", {"picture", "R7", "-o", "spot.jpg"}, ExitCode::kUsage, "ends in .png"},
      {"a box off the page",
       {"picture", "--file", "t7.png", "--page", "1", "--box", "0.9,0.9,0.5,0.5"},
       ExitCode::kUsage,
       "fractions of the page"},
      {"a box without its page",
       {"picture", "--file", "t7.png", "--box", "0.9,0.9,0.05,0.05"},
       ExitCode::kUsage,
       "--page"},
      {"three numbers",
       {"picture", "--file", "t7.png", "--page", "1", "--box", "0.9,0.9,0.5"},
       ExitCode::kUsage,
       "--box"},
      {"a page beyond the last", {"picture", "--file", "t7.png", "--page", "9"}, ExitCode::kCannotRun, "page 9"},
      {"a file that is not there", {"picture", "--file", "no.png"}, ExitCode::kCannotRun, "no.png"},
      {"a number beyond the last", {"picture", "R7", "--hit", "5"}, ExitCode::kNothingFound, "only 1 place"},
      {"an unknown term", {"picture", "X999"}, ExitCode::kNothingFound, "nothing found"},
  };
  for (const Case& c : cases) {
    const RunResult result = Ask(c.arguments);
    EXPECT_EQ(result.code, c.code) << c.why << ": " << result.err;
    EXPECT_THAT(result.err, HasSubstr(c.said)) << c.why;
    EXPECT_EQ(result.out, "") << c.why;
  }
}

}  // namespace
}  // namespace benchleaf
