#include "reading/trust.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

Evidence Designator(ReaderKind reader, double confidence, OtherReading other, double other_confidence) {
  Evidence evidence;
  evidence.reader = reader;
  evidence.confidence = confidence;
  evidence.other = other;
  evidence.other_confidence = other_confidence;
  evidence.designator_form = true;
  evidence.characters = 3;
  evidence.whole = true;
  evidence.look = {.broken = false, .standing = false, .letters = 3, .length = 2.25, .breadth = 1};
  return evidence;
}

TEST(Trust, IsAChance) {
  for (const double confidence : {0.0, 0.5, 1.0}) {
    const double trust = Trust(Designator(ReaderKind::kGeneral, confidence, OtherReading::kNothing, 0));
    EXPECT_GT(trust, 0);
    EXPECT_LT(trust, 1);
  }
}

TEST(Trust, GrowsWithTheReadersConfidence) {
  for (const ReaderKind reader : {ReaderKind::kGeneral, ReaderKind::kLettering}) {
    EXPECT_LT(Trust(Designator(reader, 0.4, OtherReading::kDifferent, 0.4)),
              Trust(Designator(reader, 0.9, OtherReading::kDifferent, 0.4)));
  }
}

TEST(Trust, IsHighestWhereBothAgreeAndLowestWhereTheOtherSeesNoText) {
  const double agreed = Trust(Designator(ReaderKind::kGeneral, 0.9, OtherReading::kSame, 0.85));
  const double alone = Trust(Designator(ReaderKind::kGeneral, 0.9, OtherReading::kNothing, 0));
  const double scrap = Trust(Designator(ReaderKind::kGeneral, 0.9, OtherReading::kScrap, 0.85));
  EXPECT_GT(agreed, 0.85) << "two readers that err differently, and neither sure by itself";
  EXPECT_LT(alone, agreed);
  EXPECT_LT(scrap, alone);
}

TEST(Trust, FollowsTheReaderForDrawingsWhereTheyDisagree) {
  EXPECT_GT(Trust(Designator(ReaderKind::kLettering, 0.88, OtherReading::kDifferent, 0.88)),
            Trust(Designator(ReaderKind::kGeneral, 0.88, OtherReading::kDifferent, 0.88)));
}

TEST(Trust, IsHigherForTextsOfADesignatorsForm) {
  Evidence evidence = Designator(ReaderKind::kLettering, 0.8, OtherReading::kDifferent, 0.5);
  const double designator = Trust(evidence);
  evidence.designator_form = false;
  EXPECT_GT(designator, Trust(evidence)) << "chance seldom makes a designator";
}

TEST(Trust, IsLowWhereTheStringHasNotTheShapeOfItsText) {
  Evidence evidence = Designator(ReaderKind::kLettering, 0.8, OtherReading::kDifferent, 0.3);
  const double fitting = Trust(evidence);
  evidence.look.length = 4.5;
  EXPECT_LT(Trust(evidence), 0.5 * fitting) << "three characters are not so long: a part of a symbol, or of two lines";
  evidence.look.length = 4.5;
  evidence.look.breadth = 2;
  EXPECT_LT(Trust(evidence), fitting) << "twice the page's lettering";
}

}  // namespace
}  // namespace benchleaf
