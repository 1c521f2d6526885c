// How an index lies in its Xapian database. A change of anything on this page, or of a form in record/, needs a new
// kSchemaVersion.
//
// Metadata
//   benchleaf-schema   the version, decimal. A database with documents but without it is not ours.
//   benchleaf-shard    only in a whole shard: its manifest (shard_manifest.cc)
//
// Documents, all of a manual written in one transaction. Their ids follow each other: for each page in reading order
// its reading and then the page, and last the manual. So a manual is read without a search, and no document names the
// id of another: merging gives all new ids, shard after shard.
//   manual    one a manual. Data: the manual's head and links, what `sets` tells of it, and the number of its pages.
//   page      one a page. Data: its place, its record without sightings and reading, then each sighting on its own, so
//             that an answer decodes only the sightings that it names. Sightings and entries are no documents of their
//             own: a page has some hundreds, and a million pages would make 300 million documents; and the best
//             sightings can be told from the page's postings alone (see wdf below).
//   reading   one a page. Data: the page's words. Kept apart because they are larger than all the rest and queries
//             hardly need them.
//
// Terms (capital letter first; words of text are lower-case and have no prefix)
//   Dmanual            every manual document
//   H manual           the manual's own document          manual = decimal length of the set's name ':' set manual
//   N set              the manual documents of a set
//   M manual           every document of the manual, to remove it
//   S set              page: the set, a filter
//   K kind             page: the page kind by its name, a filter
//   P number ':' file  page: its place
//   Q key              page: its content key
//   E kind text        page: a canonical text that is seen on it
//   F kind form        page: another form of such a text ("C12" of "A4C12")
//   L folded           page: such a text or form with its look-alike characters folded; not of items
//   W folded           page: another reading of one of its words, with its look-alike characters folded
//                      (FoldedReadings of extract/misread_words.h). An index without them is whole; terms that were
//                      misread are not found.
//   word               page: a word of the page, split and lower-cased by Xapian::TermGenerator, without stemming
//                      (abbreviations, part numbers and misread words have no stems) and without positions (they would
//                      double the index)
//   In E and F, kind is one letter: D designator, T tube, P part number, S semiconductor, V value, I item.
//   A text that would not fit into Xapian's 245 bytes, counting a zero byte as two, is cut: its first 100 bytes, "...",
//   and 16 hexadecimal digits of a digest of all of it (FNV-1a, 64 bit). What a posting names is therefore compared
//   with the names in the document.
//
// Within-document frequency (wdf) of E, F and L terms: the best confidence among the page's sightings of that term, in
// ten-thousandths, at least 1. So the pages with the best sightings come first straight out of the postings.
//
// Values
//   0   page documents: set, manual, file, page number: the order of equally good answers
//   1   manual documents: the set's name
//   2   documents of pages that name a tube: the page's place, and each tube with its designator (page_tubes.h). Values
//       are not packed, and those of a slot lie together, so that `tube` reads thousands of pages' without opening any.

#ifndef BENCHLEAF_STORE_SCHEMA_H_
#define BENCHLEAF_STORE_SCHEMA_H_

#include "benchleaf/extract/sighting.h"
#include "benchleaf/paging/page_facts.h"

#include <xapian.h>

#include <array>
#include <string>
#include <string_view>

namespace benchleaf::store {

inline constexpr const char* kSchemaKey = "benchleaf-schema";
inline constexpr const char* kShardKey = "benchleaf-shard";
inline constexpr const char* kSchemaVersion = "4";

inline constexpr const char* kManualTerm = "Dmanual";

inline constexpr std::array<TermKind, 6> kAllTermKinds = {TermKind::kDesignator, TermKind::kTube,
                                                          TermKind::kPartNumber, TermKind::kSemiconductor,
                                                          TermKind::kValue,      TermKind::kItem};

inline constexpr Xapian::valueno kPlaceSlot = 0;
inline constexpr Xapian::valueno kSetSlot = 1;
inline constexpr Xapian::valueno kTubesSlot = 2;

std::string HeadTerm(const std::string& set, const std::string& manual);
std::string SetHeadsTerm(const std::string& set);
std::string ManualTerm(const std::string& set, const std::string& manual);
std::string SetTerm(const std::string& set);
std::string KindTerm(PageKind kind);
std::string PlaceTerm(const std::string& file, int page);
std::string KeyTerm(const std::string& content_key);
std::string ExactTerm(TermKind kind, std::string_view text);
std::string FormTerm(TermKind kind, std::string_view form);
std::string FoldedTerm(std::string_view folded);
std::string MisreadTerm(std::string_view folded);

// A value that sorts by set, manual, file and page.
std::string PlaceValue(const std::string& set, const std::string& manual, const std::string& file, int page);

// A confidence as wdf, and for comparing: two that come to the same are equally good.
Xapian::termcount ConfidenceUnits(double confidence);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_SCHEMA_H_
