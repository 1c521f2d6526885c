#include "record/damaged_bytes.h"
#include "record/sample_manual.h"

#include "benchleaf/record/codec.h"

#include <gtest/gtest.h>

#include <random>

namespace benchleaf {
namespace {

TEST(ManualCodecTest, TheHeadComesBackWithoutPagesAndLinks) {
  ManualRecord manual = MakeManual("CAF\xC3\x89 \xFF", "vol\xE9");
  const Result<ManualRecord> decoded = DecodeManualHead(EncodeManualHead(manual));
  ASSERT_TRUE(decoded) << decoded.error().message;
  manual.pages.clear();
  manual.links.clear();
  EXPECT_EQ(*decoded, manual);
}

TEST(ManualCodecTest, LinksComeBack) {
  const std::vector<Link> links = {{1, 0, 0, 2, 0.5, "only candidate"}, {400, 99, 12, 1000, 1, ""}};
  const Result<std::vector<Link>> decoded = DecodeLinks(EncodeLinks(links));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(*decoded, links);
  ASSERT_TRUE(DecodeLinks(EncodeLinks({})));
  EXPECT_TRUE(DecodeLinks(EncodeLinks({}))->empty());
}

TEST(ManualCodecTest, TakesAnyBytes) {
  const ManualRecord manual = MakeManual();
  const std::string head = EncodeManualHead(manual);
  const std::string links = EncodeLinks(manual.links);
  std::mt19937 random(4);
  for (int i = 0; i < 20000; ++i) {
    const Result<ManualRecord> decoded_head = DecodeManualHead(Damaged(head, random));
    if (decoded_head) {
      EXPECT_EQ(DecodeManualHead(EncodeManualHead(*decoded_head)), decoded_head);
    }
    const Result<std::vector<Link>> decoded_links = DecodeLinks(Damaged(links, random));
    if (decoded_links) {
      EXPECT_EQ(DecodeLinks(EncodeLinks(*decoded_links)), decoded_links);
    }
  }
}

}  // namespace
}  // namespace benchleaf
