// Asks the index. Many readers may ask while one writer writes; each answer comes from one whole state.

#ifndef BENCHLEAF_STORE_INDEX_READER_H_
#define BENCHLEAF_STORE_INDEX_READER_H_

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/manual_parts.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {

// A page as answers name it.
struct PagePlace {
  std::string set;
  std::string manual;
  std::string file;  // relative to the library
  int page = 1;
  PageKind kind = PageKind::kOther;
  std::string printed_number;
};

// How an answer fits the question; better ones come first.
enum class Match { kExact, kForm, kLookAlike, kText };
// "exact", "form" (6CB6A for 6CB6, A4C12 for C12), "look-alike", "text".
std::string_view Name(Match match);

struct FoundSighting {
  PagePlace place;
  Sighting sighting;  // of a word of text: the word as read, in capitals as `text`, and no kind that means anything
  Match match = Match::kExact;

  // Nothing for a word of text, which is no term.
  std::optional<TermKind> kind() const {
    return match == Match::kText ? std::nullopt : std::optional<TermKind>(sighting.kind);
  }
};

struct FoundTube {
  FoundSighting found;
  std::string designator;  // that the tube belongs to, with its assembly; empty when none stands beside it
};

struct FindQuery {
  std::string term;              // a term, or words of text; `*` at a word's end stands for any ending
  std::string set;               // only in this set (exact name); empty: in all
  std::optional<PageKind> kind;  // only on pages of this kind
  int limit = 200;               // answers at most
};

struct FoundEntry {
  PagePlace place;
  Entry entry;
  // Where its part is drawn, best first.
  struct Seen {
    PagePlace place;
    Sighting sighting;
    double confidence = 0;
    std::string reason;
  };
  std::vector<Seen> seen;
};

struct SetSummary {
  std::string set;
  std::string maker;
  std::string model;
  struct ManualSummary {
    std::string manual;
    std::string title;
    int volumes = 0;
    int pages = 0;
    int failed = 0;  // pages that could not be read
    int entries = 0;
    int linked_entries = 0;                       // entries with at least one link
    std::vector<std::pair<PageKind, int>> kinds;  // pages of each kind, in the order of PageKind
    std::vector<Error> failures;                  // files and pages that could not be read
  };
  std::vector<ManualSummary> manuals;
};

class IndexReader {
 public:
  // Asks the indexes in all of the folders as one: shards of a library, or indexes of several libraries; the answers
  // are those that one merged index would give. Instead of a folder, "remote:HOST:PORT" names an index that
  // xapian-tcpsrv serves. Fails with kMissing when there is no index (the message says how to make one), with kForeign
  // and with kIo. REQUIRES: a folder at least
  static Result<std::unique_ptr<IndexReader>> Open(const std::vector<std::filesystem::path>& folders,
                                                   std::shared_ptr<const Rules> rules);
  static Result<std::unique_ptr<IndexReader>> Open(const std::filesystem::path& folder,
                                                   std::shared_ptr<const Rules> rules) {
    return Open(std::vector<std::filesystem::path>{folder}, std::move(rules));
  }
  ~IndexReader();
  IndexReader(const IndexReader&) = delete;
  IndexReader& operator=(const IndexReader&) = delete;

  // Sightings of the term, best match first, then by confidence (to four decimals), set, manual, file and page; each
  // sighting once, as its best match. Spaces and cases of the term do not matter. An answer may be a form of the term
  // (6CB6A for 6CB6) or the term a form of the answer (6CB6 for 6CB6A); C12 answers for A4C12 only where no other
  // assembly is known. Then pages whose text holds every word of the term and that have no answer yet: one answer a
  // page, the page with the most mentions first, with the box of the word where the most of the words stand together.
  Result<std::vector<FoundSighting>> Find(const FindQuery& query);

  // The parts index of a set's manuals, in the order of their pages. Fails with kMissing for an unknown set.
  Result<std::vector<FoundEntry>> Parts(const std::string& set);

  // Every sighting of the tube type or of a form of it, by set, then best match, then confidence.
  Result<std::vector<FoundTube>> Tube(const std::string& type);

  // All sets, by name.
  Result<std::vector<SetSummary>> Sets();

  // The names of sets that `text` may mean: an exact name (any case) alone; else every set whose name holds all words
  // of it; else the nearest names by edit distance, at most five, with `near` true.
  struct SetNames {
    std::vector<std::string> names;
    bool near = false;
  };
  Result<SetNames> MatchSets(const std::string& text);

  // Terms of the index, then words of text in lower case, that are near `term` by spelling, nearest first, at most
  // `limit`; characters that look alike do not count as different. The first character must be right or look alike.
  Result<std::vector<std::string>> Suggest(const std::string& term, int limit = 5);

  // The page with everything on it; nothing when it is not in the index.
  Result<std::optional<PageRecord>> Page(const std::string& file, int page);

  // The set's manuals with everything on their pages, by name, each from one whole state of the index. Fails with
  // kMissing for an unknown set.
  Result<std::vector<ManualRecord>> Manuals(const std::string& set);

  // Calls `each` with every manual, by set and name, one at a time in memory. Stops when it returns false. Each manual
  // comes from one whole state of the index; one that is removed meanwhile is left out.
  Result<void> ForEachManual(const std::function<bool(const ManualRecord&)>& each,
                             ManualParts parts = ManualParts::kAll);

 private:
  class Impl;
  explicit IndexReader(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_INDEX_READER_H_
