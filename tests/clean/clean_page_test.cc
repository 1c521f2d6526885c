#include "benchleaf/clean/clean_page.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace benchleaf {
namespace {

void Fill(GreyImage& image, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) {
    std::fill(image.row(y) + box.x, image.row(y) + box.right(), std::uint8_t{20});
  }
}

// A letter of 16 x 24 px, an open box with a stem, so that it has a letter's fill.
void PutLetter(GreyImage& image, int x, int y) {
  Fill(image, {x, y, 3, 24});
  Fill(image, {x, y, 16, 3});
  Fill(image, {x, y + 11, 14, 3});
}

// Four letters with the gaps of lettering, 22 px from one to the next.
void PutWord(GreyImage& image, int x, int y) {
  for (int i = 0; i < 4; ++i) {
    PutLetter(image, x + 22 * i, y);
  }
}

void PutWordUp(GreyImage& image, int x, int y) {
  GreyImage word(90, 30);
  PutWord(word, 1, 3);
  const GreyImage turned = Turned(word, 270);
  for (int row = 0; row < turned.height; ++row) {
    std::copy(turned.row(row), turned.row(row) + turned.width, image.row(y + row) + x);
  }
}

GreyImage Drawing() {
  GreyImage image(1500, 1200, 250);
  for (int row = 0; row < 5; ++row) {
    PutWord(image, 200, 100 + 200 * row);
    PutWord(image, 900, 100 + 200 * row);
  }
  PutWordUp(image, 600, 500);
  Fill(image, {100, 300, 1300, 3});
  Fill(image, {700, 60, 3, 1000});
  return image;
}

TEST(CleanPage, BringsLetteringToTheReadersHeight) {
  const CleanPage page = MakeCleanPage(Drawing(), 300, 0);
  EXPECT_NEAR(page.measures.cap_height_px, 24, 1.5);
  EXPECT_EQ(page.frame.scale, 1);
  EXPECT_EQ(page.measures.long_lines, 2);
}

// A scan that claims 72 dpi because its page box counts pixels as points is judged by its lettering.
TEST(CleanPage, DoesNotBelieveAWrongResolution) {
  for (const double claimed : {0.0, 72.0, 600.0, 1200.0}) {
    const CleanPage page = MakeCleanPage(Drawing(), claimed, 0);
    EXPECT_NEAR(page.measures.cap_height_px, 24, 3) << claimed;
  }
}

TEST(CleanPage, FindsLyingAndStandingStrings) {
  const CleanPage page = MakeCleanPage(Drawing(), 300, 0);
  int lying = 0;
  int standing = 0;
  for (const TextString& string : FindStrings(page, {})) {
    if (string.members.size() == 4) {
      (string.standing ? standing : lying) += 1;
    }
  }
  EXPECT_EQ(lying, 10);
  EXPECT_EQ(standing, 1);
}

// The darkest pixel in the first columns of the crop of the word at the foot, beside which a stub of wire stands.
int DarkestAtTheStub(const GreyImage& image, const PageSteps& steps) {
  const CleanPage page = MakeCleanPage(image, 300, 0, steps);
  const std::vector<TextString> strings = FindStrings(page, {});
  const auto word = std::find_if(strings.begin(), strings.end(), [](const TextString& string) {
    return !string.standing && string.members.size() == 4 && string.box.y > 1040;
  });
  if (word == strings.end()) {
    ADD_FAILURE() << "the word is not found";
    return 0;
  }
  const StringCrop crop = CutString(page, *word, 0);
  EXPECT_NEAR(crop.image.height - 2 * crop.border, (24 + 12) * crop.scale, 5);
  int darkest = 255;
  for (int y = 0; y < crop.image.height; ++y) {
    for (int x = crop.border; x < crop.border + 5; ++x) darkest = std::min<int>(darkest, crop.image.row(y)[x]);
  }
  return darkest;
}

GreyImage DrawingWithAStub() {
  GreyImage image = Drawing();
  Fill(image, {165, 1050, 2, 100});
  PutWord(image, 170, 1080);
  return image;
}

TEST(CleanPage, CropsShowOnlyTheStringsOwnInk) { EXPECT_EQ(DarkestAtTheStub(DrawingWithAStub(), {}), 255); }

TEST(CleanPage, LeavesOutTheStepsItIsToldTo) {
  const GreyImage image = DrawingWithAStub();
  PageSteps steps;
  steps.own_ink = false;
  EXPECT_LT(DarkestAtTheStub(image, steps), 128) << "foreign ink stays in the crop";
  steps = {};
  steps.lines = false;
  const CleanPage with_lines = MakeCleanPage(image, 300, 0, steps);
  const CleanPage without = MakeCleanPage(image, 300, 0);
  const auto longest = [](const CleanPage& of) {
    int length = 0;
    for (const Component& component : of.components.items) length = std::max(length, component.box.width);
    return length;
  };
  EXPECT_GT(longest(with_lines), longest(without));
}

TEST(CleanPage, BoxesOfCropsComeBackToTheirPlace) {
  const CleanPage page = MakeCleanPage(Drawing(), 300, 0);
  for (const TextString& string : FindStrings(page, {})) {
    if (string.members.size() != 4) {
      continue;
    }
    for (const int turn : {0, 90, 180, 270}) {
      if ((turn % 180 == 0) == string.standing) {
        continue;
      }
      const StringCrop crop = CutString(page, string, turn);
      const Box whole{crop.border, crop.border, crop.image.width - 2 * crop.border,
                      crop.image.height - 2 * crop.border};
      EXPECT_GT(OverlapOfSmaller(ToLevel(crop, whole), string.box), 0.99);
      // The first third of the text lies where the text begins.
      const Box first{crop.border, crop.border, whole.width / 3, whole.height};
      const Box there = ToLevel(crop, first);
      if (turn == 0) {
        EXPECT_LT(there.center_x(), string.box.center_x());
      } else if (turn == 180) {
        EXPECT_GT(there.center_x(), string.box.center_x());
      } else if (turn == 90) {
        EXPECT_LT(there.center_y(), string.box.center_y());
      } else {
        EXPECT_GT(there.center_y(), string.box.center_y());
      }
    }
  }
}

TEST(CleanPage, TinyAndBlankPagesGiveNothingAndDoNotFail) {
  for (const auto& [width, height] : {std::pair(1, 1), std::pair(3, 500), std::pair(64, 64), std::pair(900, 700)}) {
    const CleanPage page = MakeCleanPage(GreyImage(width, height, 255), 0, 0);
    EXPECT_TRUE(FindStrings(page, {}).empty()) << width << " x " << height;
    EXPECT_TRUE(FindBrokenStrings(page).empty()) << width << " x " << height;
  }
}

TEST(CleanPage, JoinsFragmentsOfBrokenLetters) {
  GreyImage image = Drawing();
  // Letters of which only dots remain.
  for (int letter = 0; letter < 3; ++letter) {
    for (int dot = 0; dot < 6; ++dot) {
      Fill(image, {1200 + 20 * letter + 8 * (dot % 2), 1090 + 8 * (dot / 2), 4, 4});
    }
  }
  const CleanPage page = MakeCleanPage(image, 300, 0);
  const std::vector<TextString> broken = FindBrokenStrings(page);
  EXPECT_TRUE(std::any_of(broken.begin(), broken.end(), [](const TextString& string) {
    return OverlapOfSmaller(string.box, {1200, 1090, 52, 20}) > 0.9 && string.members.size() == 18;
  }));
}

}  // namespace
}  // namespace benchleaf
