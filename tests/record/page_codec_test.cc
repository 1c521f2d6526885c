#include "record/damaged_bytes.h"
#include "record/sample_manual.h"

#include "benchleaf/record/codec.h"

#include <gtest/gtest.h>

#include <random>

namespace benchleaf {
namespace {

TEST(PageCodecTest, ComesBackAsItWas) {
  for (const PageRecord& page : MakeManual().pages) {
    const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kAll));
    ASSERT_TRUE(decoded) << decoded.error().message;
    EXPECT_EQ(*decoded, page);
  }
}

TEST(PageCodecTest, LeavesTheReadingOutOnDemand) {
  PageRecord page = MakeManual().pages[0];
  const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kWithoutReading));
  ASSERT_TRUE(decoded);
  page.reading = PageReading();
  EXPECT_EQ(*decoded, page);
}

TEST(PageCodecTest, LeavesSightingsOutOnDemandToo) {
  PageRecord page = MakeManual().pages[0];
  ASSERT_FALSE(page.sightings.empty());
  const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kRecord));
  ASSERT_TRUE(decoded);
  page.sightings.clear();
  page.reading = PageReading();
  EXPECT_EQ(*decoded, page);
}

TEST(PageCodecTest, KeepsEveryKind) {
  for (int kind = 0; kind <= static_cast<int>(PageKind::kOther); ++kind) {
    const PageRecord page = MakePage("a.pdf", 1, static_cast<PageKind>(kind));
    const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kWithoutReading));
    ASSERT_TRUE(decoded) << kind;
    EXPECT_EQ(decoded->facts.kind, page.facts.kind);
  }
}

TEST(PageCodecTest, FileNamesComeBackByteForByte) {
  PageRecord page = MakePage("set/caf\xE9.pdf", 1, PageKind::kText);  // Latin-1, as an old disk may have it
  page.failure = Error{ErrorCode::kDamaged, "cut \xFF short", page.file, 1};
  const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kAll));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->file, page.file);
  EXPECT_EQ(decoded->content_key, page.content_key);
  EXPECT_EQ(decoded->failure->source, page.file);
  EXPECT_EQ(decoded->failure->message, "cut \xEF\xBF\xBD short");
}

TEST(PageCodecTest, KeepsBoxesToAMillionth) {
  PageRecord page = MakePage("a.pdf", 1, PageKind::kSchematic);
  page.sightings = {MakeSighting(TermKind::kValue, "10K")};
  page.sightings[0].box = {1.0 / 3, 2.0, -1.0, 1e-9};
  const Result<PageRecord> decoded = DecodePage(EncodePage(page, PageParts::kWithoutReading));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->sightings[0].box, (FractionBox{0.333333, 1, 0, 0}));
}

TEST(PageCodecTest, ASightingAloneComesBack) {
  const PageRecord page = MakeManual().pages[0];
  for (const Sighting& sighting : page.sightings) {
    const Result<Sighting> decoded = DecodeSighting(EncodeSighting(sighting));
    ASSERT_TRUE(decoded);
    EXPECT_EQ(*decoded, sighting);
  }
  EXPECT_FALSE(DecodeSighting(""));
  EXPECT_FALSE(DecodeSighting(EncodeReading(PageReading()))) << "another record";
}

TEST(PageCodecTest, TakesAnyBytes) {
  const ManualRecord manual = MakeManual();
  std::mt19937 random(3);
  for (const PageRecord& page : manual.pages) {
    const std::string bytes = EncodePage(page, PageParts::kAll);
    for (int i = 0; i < 10000; ++i) {
      const Result<PageRecord> decoded = DecodePage(Damaged(bytes, random));
      if (decoded) {
        EXPECT_EQ(DecodePage(EncodePage(*decoded, PageParts::kAll)), decoded);
      }
    }
  }
}

}  // namespace
}  // namespace benchleaf
