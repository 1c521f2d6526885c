// Writes the index: one Xapian database, one writer.

#ifndef BENCHLEAF_STORE_INDEX_WRITER_H_
#define BENCHLEAF_STORE_INDEX_WRITER_H_

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/manual_parts.h"
#include "benchleaf/store/prepared_manual.h"
#include "benchleaf/store/shard_manifest.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

class IndexWriter {
 public:
  // Opens the database in `folder`, making it when the folder is missing or empty. Fails with kBusy when another
  // process writes it (the message says which, when it can be told), with kForeign when the folder holds something
  // else or another schema version, which is left untouched, and with kIo.
  static Result<std::unique_ptr<IndexWriter>> Open(const std::filesystem::path& folder,
                                                   std::shared_ptr<const Rules> rules);
  ~IndexWriter();
  IndexWriter(const IndexWriter&) = delete;
  IndexWriter& operator=(const IndexWriter&) = delete;

  // The reading kept under that key, by whichever manual; nothing when there is none.
  Result<std::optional<PageRecord>> StoredPage(const std::string& content_key);

  // The (set, manual) pairs in the index, sorted.
  Result<std::vector<std::pair<std::string, std::string>>> Manuals();

  // The manual as stored; nothing when it is not there.
  Result<std::optional<ManualRecord>> StoredManual(const std::string& set, const std::string& manual,
                                                   ManualParts parts = ManualParts::kAll);

  // When a change is on the disk: before the call returns, or with the next one that is, with Commit(), or after a
  // thousand pages. A commit takes as long as dozens of pages.
  enum class Durable { kNow, kSoon };

  // Replaces everything known of that set's manual. All of it is in the index afterwards, or nothing: on failure the
  // index is as it was at the last commit.
  Result<void> ReplaceManual(const ManualRecord& manual, Durable durable = Durable::kNow);
  // The same in less time. The rules are those of this writer.
  Result<void> ReplaceManual(PreparedManual manual, Durable durable = Durable::kNow);

  // Commits what was to be committed soon. What is not when the writer goes is lost.
  Result<void> Commit();

  // Says that the index is a whole shard, or, with nothing, that it is none, and commits.
  Result<void> SetManifest(const std::optional<ShardManifest>& manifest);

  // Removes a manual that is no longer in the library, and commits.
  Result<void> RemoveManual(const std::string& set, const std::string& manual);

 private:
  class Impl;
  // `change` puts the manual's documents into the database.
  template <class Change>
  Result<void> Put(const ManualRecord& manual, Durable durable, const Change& change);
  explicit IndexWriter(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_INDEX_WRITER_H_
