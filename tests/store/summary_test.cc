#include "store/summary.h"

#include "record/sample_manual.h"

#include <gtest/gtest.h>
#include <xapian.h>

namespace benchleaf::store {
namespace {

void ExpectSample(const SetSummary::ManualSummary& summary) {
  EXPECT_EQ(summary.manual, "service");
  EXPECT_EQ(summary.title, "Service manual");
  EXPECT_EQ(summary.volumes, 2) << "the file that could not be opened is the second";
  EXPECT_EQ(summary.pages, 3);
  EXPECT_EQ(summary.failed, 1);
  EXPECT_EQ(summary.entries, 2);
  EXPECT_EQ(summary.linked_entries, 1);
  EXPECT_EQ(summary.kinds,
            (std::vector<std::pair<PageKind, int>>{{PageKind::kSchematic, 1}, {PageKind::kPartsList, 1}}))
      << "a page that failed has no kind";
  ASSERT_EQ(summary.failures.size(), 2U);
  EXPECT_EQ(summary.failures[0].code, ErrorCode::kDamaged);
  EXPECT_EQ(summary.failures[1],
            (Error{ErrorCode::kTimeout, "reading took more than 120 s", "MEADOWLARK 5R1/service.pdf", 3}));
}

TEST(SummaryTest, CountsPagesEntriesLinksAndFailures) { ExpectSample(Summarize(MakeManual())); }

TEST(SummaryTest, AnEntryDrawnTwiceCountsOnce) {
  ManualRecord manual = MakeManual();
  manual.links.push_back(manual.links[0]);
  EXPECT_EQ(Summarize(manual).linked_entries, 1);
}

TEST(SummaryTest, ComesBackAsItWas) { ExpectSample(DecodeSummary(EncodeSummary(Summarize(MakeManual())))); }

TEST(SummaryTest, RefusesCutBytes) {
  const std::string bytes = EncodeSummary(Summarize(MakeManual()));
  for (std::size_t size = 0; size < bytes.size(); ++size) {
    EXPECT_THROW(DecodeSummary(std::string_view(bytes).substr(0, size)), Xapian::DatabaseCorruptError) << size;
  }
}

}  // namespace
}  // namespace benchleaf::store
