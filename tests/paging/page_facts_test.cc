#include "benchleaf/paging/page_facts.h"

#include "extract/page_text.h"
#include "extract/rule_tables.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(PageKindNames, GoBothWays) {
  for (int i = 0; i <= static_cast<int>(PageKind::kOther); ++i) {
    const auto kind = static_cast<PageKind>(i);
    EXPECT_EQ(PageKindNamed(Name(kind)), kind);
  }
  EXPECT_EQ(Name(PageKind::kPartsList), "parts list");
  EXPECT_FALSE(PageKindNamed("poster").has_value());
}

TEST(PageKindNames, CoverTheTableOfWords) {
  for (const auto& phrase : ShippedRules().tables().kind_phrases) {
    EXPECT_TRUE(PageKindNamed(phrase.kind).has_value()) << phrase.kind;
  }
}

}  // namespace
}  // namespace benchleaf
