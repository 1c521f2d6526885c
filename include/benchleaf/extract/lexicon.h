// What one manual says of itself: the terms that its lists, texts and drawings name help to read its drawings.

#ifndef BENCHLEAF_EXTRACT_LEXICON_H_
#define BENCHLEAF_EXTRACT_LEXICON_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/extract/sighting.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// What a page is to the lexicon of its manual.
enum class LexiconPart {
  kNone,     // neither tells nor is ranked
  kSource,   // parts lists and running text: their terms make the lexicon
  kDrawing,  // schematics and locators: their words are ranked by the lexicon, and what is surely read tells of others
  kAlignment,  // its A1, A2, A3 are points that drawings show, and no assemblies
};

// One page of a manual, as it was searched by itself. Borrows what it points at.
struct LexiconPage {
  LexiconPart part = LexiconPart::kNone;
  const PageReading* reading = nullptr;
  const std::vector<Sighting>* sightings = nullptr;
  const std::vector<Entry>* entries = nullptr;
};

// The sightings of each page anew; those of drawings ranked by what the other pages of the manual name:
// - a reading that another page names gains confidence; one that a complete list does not name loses some, and so do a
//   lone number far beyond those of its class (R9186 among R101 to R186) and an alignment point;
// - a word that was read as no term, or badly, becomes the one term of the lexicon that one of its readings is or looks
//   like. Where two terms are as likely it stays as it is. Sure readings are never replaced, and nothing is found where
//   nothing was read.
// REQUIRES: no pointer is null.
std::vector<std::vector<Sighting>> RankByLexicon(const std::vector<LexiconPage>& pages, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_LEXICON_H_
