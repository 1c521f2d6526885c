// How likely a reader's text is right, told by both readers' confidence and by what the string looks like. Pure.
// Private to reading/.

#ifndef BENCHLEAF_SRC_READING_TRUST_H_
#define BENCHLEAF_SRC_READING_TRUST_H_

#include <array>
#include <cstddef>

namespace benchleaf {

enum class ReaderKind { kGeneral, kLettering };

// What the other reader has in a text's place.
enum class OtherReading { kNothing, kSame, kDifferent, kScrap };

// What a string looks like, whatever stands in it.
struct StringLook {
  bool broken = false;      // made of fragments that only closeness joins
  bool standing = false;    // runs up or down the page
  std::size_t letters = 0;  // components; what touches counts as one; 0 when broken
  double length = 0;        // along the text, in the page's capital heights
  double breadth = 0;       // across it, likewise
};

// What is known of a text that a reader gave for a string.
struct Evidence {
  ReaderKind reader = ReaderKind::kGeneral;
  double confidence = 0;  // the reader's own, 0 to 1
  OtherReading other = OtherReading::kNothing;
  double other_confidence = 0;   // 0 to 1
  bool designator_form = false;  // the text has it
  std::size_t characters = 0;    // of the text
  bool whole = false;            // the reader took the string for one word
  StringLook look;
};

inline constexpr std::size_t kTrustFeatures = 24;

// What the chance is told by: each feature counts by its weight. For Trust(), and for finding the weights.
std::array<double, kTrustFeatures> TrustFeatures(const Evidence& evidence);

// The chance that the text is right, 0 to 1: a logistic regression over TrustFeatures, fitted on the sheets for
// development and practice (tests/reader-training/fit_trust_main.cc).
double Trust(const Evidence& evidence);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_TRUST_H_
