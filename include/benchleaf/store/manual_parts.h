// How much of a manual is taken out of the index.

#ifndef BENCHLEAF_STORE_MANUAL_PARTS_H_
#define BENCHLEAF_STORE_MANUAL_PARTS_H_

namespace benchleaf {

enum class ManualParts {
  kAll,
  // What tells of its tubes: entries; tubes and designators of the pages that name a tube, with the frames of these
  // pages. No words, no links, no other terms: a library is read many times as quickly.
  kTubes,
  // What pages it has and under which keys, and which of them failed. No words, no terms, no entries, no links.
  kOutline,
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_MANUAL_PARTS_H_
