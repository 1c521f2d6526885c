// A manual with the documents that it will be in the index. To make them needs no index, so threads can make those of
// several manuals while one writes.

#ifndef BENCHLEAF_STORE_PREPARED_MANUAL_H_
#define BENCHLEAF_STORE_PREPARED_MANUAL_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"

#include <memory>

namespace benchleaf {

class PreparedManual {
 public:
  // Of a very long manual the documents of its first pages only: they lie in memory until they are written.
  PreparedManual(ManualRecord manual, const Rules& rules);
  ~PreparedManual();
  PreparedManual(PreparedManual&& other) noexcept;
  PreparedManual& operator=(PreparedManual&& other) noexcept;

  const ManualRecord& record() const { return record_; }

 private:
  friend class IndexWriter;
  struct Documents;
  ManualRecord record_;
  std::unique_ptr<Documents> documents_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_PREPARED_MANUAL_H_
