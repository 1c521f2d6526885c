#include "extract/page_numbering.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

// The confidences after weighing.
std::vector<double> Weighed(const std::vector<std::pair<std::string, double>>& designators) {
  std::vector<PageTerm> terms;
  for (const auto& [text, confidence] : designators) {
    PageTerm term;
    term.term = {TermKind::kDesignator, text, 1};
    term.confidence = confidence;
    terms.push_back(term);
  }
  WeighByNumbering(terms, ShippedRules().tables());
  std::vector<double> confidences;
  for (const PageTerm& term : terms) confidences.push_back(term.confidence);
  return confidences;
}

TEST(WeighByNumbering, NumbersNextToOneSpeakForIt) {
  const auto beside = Weighed({{"R101", 0.95}, {"R102", 0.4}, {"R103", 0.95}, {"R186", 0.4}, {"C102", 0.4}});
  EXPECT_GT(beside[1], 0.5);
  EXPECT_LT(beside[3], 0.4) << "far from all others";
  EXPECT_LT(beside[4], 0.4) << "another class";
}

TEST(WeighByNumbering, TheSurerOfTwoStays) {
  const auto twice = Weighed({{"R15", 0.95}, {"R15", 0.6}, {"R14", 0.95}});
  EXPECT_GT(twice[0], 0.7);
  EXPECT_LT(twice[1], 0.3);
}

TEST(WeighByNumbering, SectionsOfOnePartDoNotSpeakAgainstEachOther) {
  const auto sections = Weighed({{"V1A", 0.9}, {"V1B", 0.9}});
  EXPECT_GT(sections[0], 0.8);
  EXPECT_GT(sections[1], 0.8);
}

TEST(WeighByNumbering, AnotherAssemblysPartIsAnotherPart) {
  const auto parts = Weighed({{"A1R2", 0.9}, {"A2R2", 0.9}});
  EXPECT_GT(parts[0], 0.8);
  EXPECT_GT(parts[1], 0.8);
}

TEST(WeighByNumbering, OtherTermsStay) {
  std::vector<PageTerm> terms(2);
  for (PageTerm& term : terms) {
    term.term = {TermKind::kTube, "6AU6", 1};
    term.confidence = 0.8;
  }
  WeighByNumbering(terms, ShippedRules().tables());
  EXPECT_EQ(terms[0].confidence, 0.8);
}

}  // namespace
}  // namespace benchleaf::extract
