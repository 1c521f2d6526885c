#include "store/schema.h"

#include <gtest/gtest.h>

namespace benchleaf::store {
namespace {

constexpr std::size_t kXapianLimit = 245;

TEST(SchemaTest, ShortTermsStandAsTheyAre) {
  EXPECT_EQ(HeadTerm("MEADOWLARK 5R1", "service"), "H14:MEADOWLARK 5R1service");
  EXPECT_EQ(SetTerm("MEADOWLARK 5R1"), "SMEADOWLARK 5R1");
  EXPECT_EQ(KindTerm(PageKind::kPartsList), "Kparts list");
  EXPECT_EQ(PlaceTerm("a/b.pdf", 12), "P12:a/b.pdf");
  EXPECT_EQ(ExactTerm(TermKind::kTube, "6CB6A"), "ET6CB6A");
  EXPECT_EQ(FormTerm(TermKind::kDesignator, "C12"), "FDC12");
}

TEST(SchemaTest, SetAndManualAreNotMixedUp) { EXPECT_NE(HeadTerm("AB", "C"), HeadTerm("A", "BC")); }

TEST(SchemaTest, KindsOfTermsAreNotMixedUp) {
  for (const TermKind a : kAllTermKinds) {
    for (const TermKind b : kAllTermKinds) {
      if (a != b) {
        EXPECT_NE(ExactTerm(a, "80"), ExactTerm(b, "80"));
      }
    }
  }
}

TEST(SchemaTest, LongTextsAreCutButStayApart) {
  for (const std::size_t size : {220U, 221U, 222U, 245U, 255U, 4096U}) {
    const std::string text(size, 'x');
    EXPECT_LE(SetTerm(text).size(), kXapianLimit) << size;
    EXPECT_LE(ExactTerm(TermKind::kValue, text).size(), kXapianLimit) << size;
    EXPECT_NE(SetTerm(text + 'a'), SetTerm(text + 'b')) << size;
    EXPECT_EQ(SetTerm(text), SetTerm(text)) << size;
  }
}

TEST(SchemaTest, ZeroBytesCountTwice) {
  const std::string term = SetTerm(std::string(200, '\0'));
  EXPECT_LT(term.size(), 200U) << "Xapian writes each zero byte as two";
  EXPECT_EQ(SetTerm(std::string(100, '\0')).size(), 101U);
}

// Test vectors of FNV-1a, 64 bit, from the algorithm's published test suite: "foobar" is 85944171f73967e8. Here the
// text is longer; the digest of 300 times "x" was computed with another program.
TEST(SchemaTest, CutTermsEndInTheDigest) {
  const std::string term = SetTerm(std::string(300, 'x'));
  EXPECT_EQ(term, "S" + std::string(100, 'x') + "..." + "e78ddf9f1ba85555");
}

TEST(SchemaTest, PlacesSortBySetManualFileAndPage) {
  const std::string sorted[] = {
      PlaceValue("A", "m", "f", 1),   PlaceValue("A", "m", "f", 2),  PlaceValue("A", "m", "f", 256),
      PlaceValue("A", "m", "f.2", 1), PlaceValue("A", "m2", "f", 1), PlaceValue("A 2", "m", "f", 1),
      PlaceValue("B", "a", "a", 1),
  };
  for (std::size_t i = 0; i + 1 < std::size(sorted); ++i) EXPECT_LT(sorted[i], sorted[i + 1]) << i;
}

TEST(SchemaTest, ConfidencesAreAtLeastOneUnit) {
  EXPECT_EQ(ConfidenceUnits(0), 1U);
  EXPECT_EQ(ConfidenceUnits(-1), 1U);
  EXPECT_EQ(ConfidenceUnits(0.5), 5000U);
  EXPECT_EQ(ConfidenceUnits(0.99996), 10000U);
  EXPECT_EQ(ConfidenceUnits(2), 10000U);
}

}  // namespace
}  // namespace benchleaf::store
