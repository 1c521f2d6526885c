#include "reading/trust.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace benchleaf {
namespace {

// Printed by fit-trust.
constexpr std::array<double, kTrustFeatures> kWeights = {
    -2.836, 0.679,  -1.447, 0.644, 1.718,  0.447, -0.108, -0.067, -0.087, -1.915, -0.155, 0.034,
    1.671,  -0.202, -0.540, 0.172, -0.593, 0.528, -0.661, 0.362,  -2.930, -1.253, 1.859,  -0.683,
};

// Readers say 0 and 1 of what they are only fairly sure of, the general one more often.
double LogOdds(double confidence, ReaderKind reader) {
  const double p = std::clamp(confidence, 0.02, reader == ReaderKind::kGeneral ? 0.99 : 0.998);
  return std::log(p / (1 - p));
}

// How far the space that a character has lies from the usual, as a logarithm.
double OddPitch(const Evidence& evidence) {
  constexpr double kUsual = 0.75;  // of the letters' height
  if (evidence.look.length <= 0 || evidence.look.breadth <= 0 || evidence.characters == 0) {
    return 0;
  }
  const double pitch = evidence.look.length / evidence.look.breadth / static_cast<double>(evidence.characters);
  return std::abs(std::log(pitch / kUsual));
}

double OddBreadth(const StringLook& look) { return look.breadth > 0 ? std::abs(std::log(look.breadth)) : 0; }

}  // namespace

std::array<double, kTrustFeatures> TrustFeatures(const Evidence& evidence) {
  const bool general = evidence.reader == ReaderKind::kGeneral;
  const double own = LogOdds(evidence.confidence, evidence.reader);
  const double other = LogOdds(evidence.other_confidence, general ? ReaderKind::kLettering : ReaderKind::kGeneral);
  const auto when = [](bool condition, double value) { return condition ? value : 0.0; };
  const bool same = evidence.other == OtherReading::kSame;
  const bool different = evidence.other == OtherReading::kDifferent;
  const bool scrap = evidence.other == OtherReading::kScrap;
  const bool alone = evidence.other == OtherReading::kNothing;
  const StringLook& look = evidence.look;
  const bool a_letter_each = evidence.whole && !look.broken && look.letters == evidence.characters;
  // Two characters are what scraps of symbols and the ends of longer texts are taken for.
  const bool short_designator = evidence.designator_form && evidence.characters == 2;
  return {
      when(general, 1),
      when(general, own),
      when(!general, 1),
      when(!general, own),
      when(same, 1),
      when(same, other),
      when(different && general, 1),
      when(different && general, other),
      when(different && !general, other),
      when(scrap, 1),
      when(scrap, other),
      when(alone && !general, 1),
      when(evidence.designator_form, 1),
      when(look.broken, 1),
      when(a_letter_each, 1),
      when(a_letter_each && same, 1),
      when(look.standing, 1),
      when(short_designator, 1),
      when(short_designator && !general && !same, 1),
      when(different && !general, 1),
      when(evidence.whole && evidence.designator_form, OddPitch(evidence)),
      OddBreadth(look),
      when(!evidence.whole && general, 1),
      when(!evidence.whole && !general, 1),
  };
}

double Trust(const Evidence& evidence) {
  const std::array<double, kTrustFeatures> features = TrustFeatures(evidence);
  return 1 / (1 + std::exp(-std::inner_product(features.begin(), features.end(), kWeights.begin(), 0.0)));
}

}  // namespace benchleaf
