#include "reading/trust.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace benchleaf {
namespace {

// Printed by fit-trust.
constexpr std::array<double, kTrustFeatures> kWeights = {
    -3.874, 0.479,  -2.516, 1.046, 2.445, 0.627, 0.436, -0.117,
    0.159,  -1.848, -0.242, 0.462, 1.547, 0.530, 0.234, -0.655,
};

// Readers say 0 and 1 of what they are only fairly sure of.
double LogOdds(double confidence) {
  const double p = std::clamp(confidence, 0.02, 0.99);
  return std::log(p / (1 - p));
}

}  // namespace

std::array<double, kTrustFeatures> TrustFeatures(const Evidence& evidence) {
  const double own = LogOdds(evidence.confidence);
  const double other = LogOdds(evidence.other_confidence);
  const bool general = evidence.reader == ReaderKind::kGeneral;
  const auto when = [](bool condition, double value) { return condition ? value : 0.0; };
  const bool same = evidence.other == OtherReading::kSame;
  const bool different = evidence.other == OtherReading::kDifferent;
  const bool scrap = evidence.other == OtherReading::kScrap;
  const bool alone = evidence.other == OtherReading::kNothing;
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
      when(evidence.broken, 1),
      when(evidence.a_letter_each, 1),
      when(evidence.a_letter_each && same, 1),
  };
}

double Trust(const Evidence& evidence) {
  const std::array<double, kTrustFeatures> features = TrustFeatures(evidence);
  return 1 / (1 + std::exp(-std::inner_product(features.begin(), features.end(), kWeights.begin(), 0.0)));
}

}  // namespace benchleaf
