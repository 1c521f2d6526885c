// From the documents of the index back to records. Everything here throws Xapian::Error, DatabaseCorruptError among
// them when a document is not as schema.h says.

#ifndef BENCHLEAF_STORE_STORED_H_
#define BENCHLEAF_STORE_STORED_H_

#include "store/fields.h"

#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::store {

// Texts in a page document, not yet told apart.
struct StoredForms {
  std::uint64_t count = 0;
  std::string_view fields;

  template <class Test>
  bool Any(const Test& test) const {
    FieldReader reader(fields);
    for (std::uint64_t left = count; left > 0; --left) {
      if (test(reader.Text())) return true;
    }
    return false;
  }
};

// A sighting in a page document, not yet decoded. The texts are views into the document's data.
struct StoredSighting {
  TermKind kind = TermKind::kDesignator;
  std::string_view text;  // canonical
  StoredForms forms;      // besides the text
  std::string_view bytes;
  std::string_view fields;  // all of it, as it stands in the data

  Sighting Decode() const;
};

StoredSighting ParseSighting(FieldReader& fields);

struct StoredPage {
  std::string set;
  std::string manual;
  PageRecord page;  // without sightings and reading; entries as was asked
  std::vector<StoredSighting> sightings;

  PagePlace Place() const;
};

// `data` must outlive what is returned. Most questions need no entries, which take longest to decode.
enum class WithEntries { kNo, kYes };
StoredPage ParsePage(std::string_view data, WithEntries entries = WithEntries::kNo);

struct StoredManual {
  ManualRecord manual;  // without pages and links
  SetSummary::ManualSummary summary;
  std::string links;                 // encoded: lists of manuals do not need them
  std::vector<Xapian::docid> pages;  // in reading order
};

// How far apart the ids of a manual's documents lie: those of several databases that are asked as one go round them.
Xapian::docid Stride(const Xapian::Database& database);

// `id` is that of the document.
StoredManual ParseManual(std::string_view data, Xapian::docid id, Xapian::docid stride);

std::vector<Link> LinksOf(const StoredManual& stored);
// The words of the page of that id.
PageReading LoadReading(const Xapian::Database& database, Xapian::docid page);
// With sightings and reading.
PageRecord LoadPage(const Xapian::Database& database, Xapian::docid page);

// The manuals of a set, by name.
std::vector<StoredManual> ManualsOfSet(const Xapian::Database& database, const std::string& set);
// All manuals, by set and name.
std::vector<StoredManual> AllManuals(const Xapian::Database& database);
// Their names alone: set and manual.
std::vector<std::pair<std::string, std::string>> ManualNames(const Xapian::Database& database);
// The manual with all its pages; nothing when the index does not know it.
std::optional<ManualRecord> LoadManual(const Xapian::Database& database, const std::string& set,
                                       const std::string& manual, ManualParts parts = ManualParts::kAll);

// The page of that term whose record is the one meant; nothing when there is none.
template <class Meant>
std::optional<PageRecord> FindPage(const Xapian::Database& database, const std::string& term, const Meant& meant) {
  for (auto at = database.postlist_begin(term); at != database.postlist_end(term); ++at) {
    const std::string data = database.get_document(*at).get_data();
    if (meant(ParsePage(data).page)) return LoadPage(database, *at);
  }
  return std::nullopt;
}

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_STORED_H_
