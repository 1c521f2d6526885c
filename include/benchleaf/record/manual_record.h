// Everything known of one manual: what the index stores in one transaction, and what export writes.

#ifndef BENCHLEAF_RECORD_MANUAL_RECORD_H_
#define BENCHLEAF_RECORD_MANUAL_RECORD_H_

#include "benchleaf/core/result.h"
#include "benchleaf/extract/sighting.h"
#include "benchleaf/linking/link.h"
#include "benchleaf/paging/page_facts.h"
#include "benchleaf/reading/page_reading.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

// One page of a manual: read, or failed with its reason.
struct PageRecord {
  std::string file;  // relative to the library
  int page = 1;      // in that file, counts from 1
  int volume = 1;
  // What the reading is kept under: the file's content hash, the page's number in it, the reading fingerprint.
  std::string content_key;
  std::optional<Error> failure;  // set when the page could not be read; then the rest is empty
  bool plain_mode = false;       // read in the plainer mode after a first try failed
  PageReading reading;
  PageFacts facts;
  std::vector<Sighting> sightings;
  std::vector<Entry> entries;

  friend bool operator==(const PageRecord&, const PageRecord&) = default;
};

struct FileRecord {
  std::string path;  // relative to the library
  std::string hash;  // SHA-256 of the content
  std::uint64_t size_bytes = 0;
  int volume = 1;
  int page_count = 0;
  std::optional<Error> failure;  // set when the file could not be opened at all

  friend bool operator==(const FileRecord&, const FileRecord&) = default;
};

struct ManualRecord {
  std::string set;  // the set's name
  std::string maker;
  std::string model;
  std::string manual;  // unique within the set
  std::string title;
  std::vector<FileRecord> files;
  std::vector<PageRecord> pages;  // in reading order, over all volumes
  std::vector<Link> links;        // positions are those of `pages` and of their entries and sightings
  // Names the rules by which the pages were searched; a manual searched by other rules is searched again, without
  // reading its pages again.
  std::string rules;

  friend bool operator==(const ManualRecord&, const ManualRecord&) = default;
};

// Whether every link points at an entry and a sighting of the manual.
bool LinksFit(const ManualRecord& manual);

// "HASH:PAGE:FINGERPRINT".
std::string ContentKey(const std::string& file_hash, int page, const std::string& fingerprint);

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_MANUAL_RECORD_H_
