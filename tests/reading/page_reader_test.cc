// Reads pages that are drawn here, with the letterings of draughtsmen.

#include "benchleaf/reading/page_reader.h"

#include "places/places.h"
#include "scan-maker/made_page.h"
#include "scan-maker/sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

using scanmaker::Lettering;
using scanmaker::MadePage;
using scanmaker::Sheet;
using scanmaker::TermToken;
using scanmaker::TextStyle;
using ::testing::Contains;
using ::testing::IsEmpty;
using ::testing::Not;

class PageReaderTest : public ::testing::Test {
 protected:
  void SetUp() override {
    auto reader = PageReader::Create(SourceFolder() / "config");
    ASSERT_TRUE(reader) << reader.error().ToString();
    reader_ = std::move(*reader);
  }

  PageReading Read(const GreyImage& image) {
    return reader_->Read({image, scanmaker::kMadeDpi, {}}, ReadingMode::kFull).value();
  }

  std::unique_ptr<PageReader> reader_;
};

TextStyle Style() {
  TextStyle style;
  style.lettering = Lettering::kSimplex;
  style.cap_height_px = 28;
  return style;
}

// Designators beside the wires of a schematic, every fifth one turned.
MadePage Drawing() {
  Sheet sheet(1600, 1100);
  int number = 101;
  for (int y = 150; y < 1000; y += 150) {
    sheet.Line(60, y + 30, 1500, y + 30, 4);
    for (int x = 120; x < 1500; x += 220) {
      sheet.Line(x - 25, y - 90, x - 25, y + 30, 4);
      const int turn = number % 5 == 0 ? 270 : 0;
      sheet.Put(turn == 0 ? x : x + 30, y,
                TermToken("designator", (number % 2 == 0 ? "R" : "C") + std::to_string(number)), Style(), turn);
      ++number;
    }
  }
  return sheet.Take("schematic", "");
}

std::vector<std::string> Texts(const PageReading& reading) {
  std::vector<std::string> texts;
  for (const Word& word : reading.words) texts.push_back(word.text);
  return texts;
}

// The share of the page's terms that were read, each in its place.
double ShareRead(const MadePage& page, const PageReading& reading) {
  const auto read = [&](const scanmaker::MadeTerm& term) {
    return std::any_of(reading.words.begin(), reading.words.end(), [&](const Word& word) {
      const FractionBox box = ToScan(reading.frame, word.box);
      const Box seen{static_cast<int>(box.x * page.image.width), static_cast<int>(box.y * page.image.height),
                     static_cast<int>(box.width * page.image.width), static_cast<int>(box.height * page.image.height)};
      return word.text == term.text && OverlapOfSmaller(seen, term.box) > 0.5;
    });
  };
  return static_cast<double>(std::count_if(page.terms.begin(), page.terms.end(), read)) /
         static_cast<double>(page.terms.size());
}

TEST_F(PageReaderTest, ReadsLyingAndStandingLetteringBesideWires) {
  const MadePage page = Drawing();
  EXPECT_GT(ShareRead(page, Read(page.image)), 0.9);
}

TEST_F(PageReaderTest, TurnsAPageThatDoesNotLieUpright) {
  for (const int laid : {90, 180, 270}) {
    const MadePage page = scanmaker::Laid(Drawing(), laid);
    const PageReading reading = Read(page.image);
    EXPECT_EQ(reading.frame.orientation, 360 - laid) << "clockwise, to have it upright";
    EXPECT_GT(ShareRead(page, reading), 0.9) << laid;
  }
}

TEST_F(PageReaderTest, FindsNothingOnABlankPage) {
  GreyImage blank(1600, 1100);
  std::fill(blank.pixels.begin(), blank.pixels.end(), std::uint8_t{250});
  EXPECT_THAT(Read(blank).words, IsEmpty());
}

TEST_F(PageReaderTest, ReadsNoTextIntoTheOutlineOfASymbol) {
  Sheet sheet(1200, 800);
  sheet.Put(300, 300, TermToken("designator", "R12"), Style());
  sheet.Put(300, 500, TermToken("designator", "C47"), Style());
  for (int x = 500; x < 1100; x += 150) {
    sheet.Line(x, 400, x + 60, 400, 5);
    sheet.Line(x + 60, 400, x + 30, 434, 5);
    sheet.Line(x + 30, 434, x, 400, 5);
  }
  const std::vector<std::string> texts = Texts(Read(sheet.Take("schematic", "").image));
  EXPECT_THAT(texts, Contains("R12"));
  EXPECT_THAT(texts, Not(Contains("V7")));
  EXPECT_THAT(texts, Not(Contains("v7")));
}

TEST_F(PageReaderTest, ReadsNumbersOfCalloutsWhicheverWayTheyStand) {
  Sheet sheet(1500, 1100);
  sheet.Put(560, 80, TermToken("text", "PARTS LOCATION"), Style());
  int number = 21;
  for (int y = 220; y < 1000; y += 160) {
    for (int x = 150; x < 1400; x += 240) {
      const bool figure = number % 6 == 0;
      const int turn = number % 3 == 0 ? 90 : number % 4 == 0 ? 270 : 0;
      sheet.Put(x, y, TermToken("item", std::to_string(figure ? number / 6 : number)), Style(), turn);
      ++number;
    }
  }
  const MadePage page = sheet.Take("parts locator", "");
  EXPECT_GT(ShareRead(page, Read(page.image)), 0.85);
}

TEST_F(PageReaderTest, ReadsAColumnOfFiguresAsFigures) {
  Sheet sheet(1700, 1100);
  for (int row = 1; row <= 9; ++row) {
    const int y = 150 + 46 * row;
    sheet.Put(150, y, TermToken("item", std::to_string(row)), Style());
    sheet.Put(320, y, TermToken("text", "CAPACITOR, PAPER, 400 V"), Style());
    sheet.Put(1050, y, TermToken("part-number", "202-47" + std::to_string(60 + 3 * row)), Style());
  }
  MadePage page = sheet.Take("parts list", "");
  std::erase_if(page.terms, [](const scanmaker::MadeTerm& term) { return term.kind != "item"; });
  ASSERT_EQ(page.terms.size(), 9U);
  EXPECT_GT(ShareRead(page, Read(page.image)), 0.85);
}

TEST_F(PageReaderTest, ReadsTheSameTwice) {
  const MadePage page = Drawing();
  EXPECT_EQ(Read(page.image), Read(page.image));
}

TEST_F(PageReaderTest, RefusesAPageWithoutAPicture) {
  const Result<PageReading> reading = reader_->Read({}, ReadingMode::kFull);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.error().code, ErrorCode::kEmpty);
}

}  // namespace
}  // namespace benchleaf
