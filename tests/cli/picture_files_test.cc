#include "cli/picture_files.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(NamePictures, MakesNamesThatAnyFileSystemTakes) {
  struct Case {
    const char* why;
    std::string out;
    std::string subject;
    std::string spot;
    std::string page;
  };
  const std::vector<Case> cases = {
      {"after the term", "", "C112", "C112.png", "C112-page.png"},
      {"a slash would be a folder", "", "12AX7A/ECC83", "12AX7A-ECC83.png", "12AX7A-ECC83-page.png"},
      {"a way out of the folder", "", "../../x", "x.png", "x-page.png"},
      {"a leading hyphen would be an option, a dot would hide", "", "-.5V", "5V.png", "5V-page.png"},
      {"words and letters beyond ASCII", "", "1 k\u03A9", "1-k--.png", "1-k---page.png"},
      {"nothing left", "", "//", "picture.png", "picture-page.png"},
      {"as said", "shots/a.b.png", "C112", "shots/a.b.png", "shots/a.b-page.png"},
  };
  for (const Case& c : cases) {
    const auto files = NamePictures(c.out, c.subject, 1);
    ASSERT_TRUE(files) << c.why;
    ASSERT_EQ(files->size(), 1U);
    EXPECT_EQ(files->front().spot, c.spot) << c.why;
    EXPECT_EQ(files->front().page, c.page) << c.why;
  }
}

TEST(NamePictures, NumbersSeveral) {
  const auto files = NamePictures("", "C1", 2);
  ASSERT_TRUE(files);
  EXPECT_EQ((*files)[0].spot, "C1-1.png");
  EXPECT_EQ((*files)[1].page, "C1-2-page.png");
}

TEST(NamePictures, RefusesOtherFormats) {
  for (const char* name : {"spot.jpg", "spot", ".png", "folder/"}) {
    const auto files = NamePictures(name, "C1", 1);
    ASSERT_FALSE(files) << name;
    EXPECT_EQ(files.error().code, ErrorCode::kUsage) << name;
  }
}

}  // namespace
}  // namespace benchleaf
