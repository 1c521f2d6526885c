#include "record/damaged_bytes.h"
#include "record/sample_manual.h"

#include "benchleaf/record/codec.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace benchleaf {
namespace {

TEST(ReadingCodecTest, ComesBackAsItWas) {
  const PageReading reading = MakeManual().pages[0].reading;
  const Result<PageReading> decoded = DecodeReading(EncodeReading(reading));
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(*decoded, reading);
}

TEST(ReadingCodecTest, AnEmptyReadingComesBack) {
  const Result<PageReading> decoded = DecodeReading(EncodeReading(PageReading()));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(*decoded, PageReading());
}

TEST(ReadingCodecTest, MendsWordsThatAreNotUtf8) {
  PageReading reading;
  reading.words = {
      MakeWord("C\xFF"
               "12")};
  const Result<PageReading> decoded = DecodeReading(EncodeReading(reading));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->words[0].text,
            "C\xEF\xBF\xBD"
            "12");
}

TEST(ReadingCodecTest, CutsConfidencesAndDropsWhatIsNotFinite) {
  PageReading reading;
  reading.frame.dpi = std::numeric_limits<double>::quiet_NaN();
  reading.measures.line_ink = std::numeric_limits<double>::infinity();
  reading.words = {MakeWord("A"), MakeWord("B"), MakeWord("C")};
  reading.words[0].confidence = 1.5;
  reading.words[1].confidence = std::numeric_limits<double>::quiet_NaN();
  reading.words[2].confidence = 0.123456;
  const Result<PageReading> decoded = DecodeReading(EncodeReading(reading));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->frame.dpi, 0);
  EXPECT_EQ(decoded->measures.line_ink, 0);
  EXPECT_EQ(decoded->words[0].confidence, 1);
  EXPECT_EQ(decoded->words[1].confidence, 0);
  EXPECT_EQ(decoded->words[2].confidence, 0.1235);
}

TEST(ReadingCodecTest, EveryCutIsDamaged) {
  const std::string bytes = EncodeReading(MakeManual().pages[0].reading);
  for (std::size_t length = 0; length < bytes.size(); ++length) {
    const Result<PageReading> decoded = DecodeReading(std::string_view(bytes).substr(0, length));
    ASSERT_FALSE(decoded) << length;
    EXPECT_EQ(decoded.error().code, ErrorCode::kDamaged);
  }
}

TEST(ReadingCodecTest, GivesTheFrameAlone) {
  const PageReading reading = MakeManual().pages[0].reading;
  const std::string bytes = EncodeReading(reading);
  EXPECT_EQ(DecodeReadingFrame(bytes), reading.frame);
  EXPECT_EQ(DecodeReadingFrame(std::string_view(bytes).substr(0, 4)).error().code, ErrorCode::kDamaged);
  EXPECT_EQ(DecodeReadingFrame("").error().code, ErrorCode::kDamaged);
}

TEST(ReadingCodecTest, TakesAnyBytes) {
  const std::string bytes = EncodeReading(MakeManual().pages[0].reading);
  std::mt19937 random(2);
  for (int i = 0; i < 20000; ++i) {
    const Result<PageReading> decoded = DecodeReading(Damaged(bytes, random));
    // What is taken for a reading must be one: it survives being written again.
    if (decoded) {
      EXPECT_EQ(DecodeReading(EncodeReading(*decoded)), decoded);
    }
  }
}

}  // namespace
}  // namespace benchleaf
