// What the index holds at the start of a run, without the readings: small enough to be kept for a whole library.

#ifndef BENCHLEAF_SRC_WORK_INDEX_OUTLINE_H_
#define BENCHLEAF_SRC_WORK_INDEX_OUTLINE_H_

#include "benchleaf/core/result.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_writer.h"

#include <atomic>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace benchleaf {

struct OutlinePage {
  std::string file;
  int page = 1;
  int volume = 1;
  std::string content_key;
  std::optional<Error> failure;
};

struct ManualOutline {
  ManualRecord head;  // with its files, without pages and links
  std::vector<OutlinePage> pages;
};

// Set and manual.
using ManualName = std::pair<std::string, std::string>;

class IndexOutline {
 public:
  IndexOutline() = default;
  IndexOutline(IndexOutline&&) = default;
  IndexOutline& operator=(IndexOutline&&) = default;

  // Fails as the writer does, and with kCancelled.
  static Result<IndexOutline> Read(IndexWriter& writer, const std::atomic<bool>& cancel);

  void Add(const ManualRecord& manual);

  const std::map<ManualName, ManualOutline>& manuals() const { return manuals_; }
  // Null when the index has no such manual.
  const ManualOutline* Find(const ManualName& name) const;
  // The manual that has this file; null when none has.
  const ManualOutline* ManualOf(const std::string& path) const;
  // How many pages a file of this content has; nothing when no manual has such a file or it could not be opened.
  std::optional<int> PageCount(const std::string& file_hash) const;
  // Whether the page of this key need not be read: some manual has its reading, or knows that it cannot be read.
  bool IsSettled(const std::string& content_key) const;
  // Why the page of this key cannot be read; null when it can, or is not known.
  const Error* Failure(const std::string& content_key) const;
  int PageTotal() const;

 private:
  std::map<ManualName, ManualOutline> manuals_;
  std::unordered_map<std::string, const ManualOutline*> by_file_;   // into manuals_
  std::unordered_map<std::string, int> page_counts_;                // by file hash
  std::unordered_map<std::string, std::optional<Error>> outcomes_;  // by content key: the failure, or a reading
};

// Whether trying again can only give the same failure, since it lies in the page or file itself; not so for a disk that
// could not be read.
bool IsLasting(ErrorCode code);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_INDEX_OUTLINE_H_
