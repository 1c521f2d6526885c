#include "reading/line_reader.h"

#include "places/places.h"
#include "scan-maker/lettering.h"
#include "scan-maker/sheet.h"

#include "benchleaf/clean/clean_page.h"

#include <gtest/gtest.h>

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kWidth = 160;   // px
constexpr int kHeight = 60;   // px
constexpr double kLeft = 14;  // of the lettering, px
constexpr double kBase = 46;  // its baseline

GreyImage Line(const std::string& text, scanmaker::Lettering lettering) {
  scanmaker::Sheet sheet(kWidth, kHeight);
  scanmaker::TextStyle style;
  style.lettering = lettering;
  style.cap_height_px = kReaderCapPx;
  style.stroke_px = 4;
  sheet.PutWords(kLeft, kBase, text, style);
  return sheet.Take("", "").image;
}

// What a lying string of that many letters looks like.
StringLook Lettered(std::size_t letters) {
  StringLook look;
  look.letters = letters;
  look.length = 0.87 * static_cast<double>(letters);
  look.breadth = 1;
  return look;
}

class LineReading : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    Result<std::unique_ptr<LineReader>> made = LineReader::Create(SourceFolder() / "config");
    ASSERT_TRUE(made) << made.error().ToString();
    reader_ = std::move(*made);
  }
  static void TearDownTestSuite() { reader_.reset(); }

  static std::unique_ptr<LineReader> reader_;
};

std::unique_ptr<LineReader> LineReading::reader_;

TEST_F(LineReading, ReadsDrawingsLetteringSurely) {
  for (const std::string text : {"R12", "C104", "V3"}) {
    const std::vector<Token> tokens = reader_->Read(Line(text, scanmaker::Lettering::kSimplex), Lettered(text.size()));
    ASSERT_FALSE(tokens.empty()) << text;
    EXPECT_EQ(tokens.front().text, text);
    EXPECT_GT(tokens.front().confidence, 0.8) << text;
  }
}

TEST_F(LineReading, TakesNoCommaForAFigure) {
  for (const std::string text : {"1 W, 5", "9 V, 1"}) {
    for (const Token& token : reader_->Read(Line(text, scanmaker::Lettering::kTypewriter), Lettered(4))) {
      EXPECT_TRUE(token.text.size() < 2 || (token.text[0] != 'W' && token.text[0] != 'V') || token.text[1] == ',')
          << text << ": " << token.text;
    }
  }
}

TEST_F(LineReading, LeavesRunningTextToTheGeneralReader) {
  for (const std::string text : {"loop", "four"}) {
    const std::vector<Token> tokens = reader_->Read(Line(text, scanmaker::Lettering::kTypewriter), Lettered(4));
    ASSERT_EQ(tokens.size(), 1U) << text;
    EXPECT_EQ(tokens.front().text, text);
  }
}

TEST_F(LineReading, SeesNoTextInAScrapOfASymbol) {
  scanmaker::Sheet sheet(kWidth, kHeight);
  for (int i = 0; i < 5; ++i) {  // a resistor's zigzag
    sheet.Line(20 + 20 * i, 44, 30 + 20 * i, 16, 4);
    sheet.Line(30 + 20 * i, 16, 40 + 20 * i, 44, 4);
  }
  for (const Token& token : reader_->Read(sheet.Take("", "").image, Lettered(1))) {
    EXPECT_LT(token.confidence, 0.5) << token.text;
  }
}

TEST_F(LineReading, ReadsNothingSurelyOnAnEmptyLine) {
  for (const Token& token : reader_->Read(GreyImage(kWidth, kHeight), Lettered(1))) {
    EXPECT_LT(token.confidence, 0.3) << token.text;
  }
  EXPECT_TRUE(reader_->Read(GreyImage(), StringLook{}).empty());
}

TEST(LineReader, NamesTheModelThatIsMissing) {
  const std::filesystem::path empty = std::filesystem::path(testing::TempDir()) / "no-models";
  std::filesystem::create_directories(empty);
  const Result<std::unique_ptr<LineReader>> made = LineReader::Create(empty);
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, ErrorCode::kMissing);
  EXPECT_NE(made.error().ToString().find("lettering.net"), std::string::npos);
}

}  // namespace
}  // namespace benchleaf
