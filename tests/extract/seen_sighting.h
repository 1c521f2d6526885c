// A sighting for tests of what is made of sightings.

#ifndef BENCHLEAF_TESTS_EXTRACT_SEEN_SIGHTING_H_
#define BENCHLEAF_TESTS_EXTRACT_SEEN_SIGHTING_H_

#include "benchleaf/extract/sighting.h"

#include <string>

namespace benchleaf {

// Read as it is meant.
inline Sighting Seen(TermKind kind, const std::string& text, const FractionBox& box, double confidence = 0.9) {
  Sighting sighting;
  sighting.kind = kind;
  sighting.text = text;
  sighting.read = text;
  sighting.box = box;
  sighting.confidence = confidence;
  return sighting;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_EXTRACT_SEEN_SIGHTING_H_
