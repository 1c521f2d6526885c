// The project's data files, read once, that extraction works by.

#ifndef BENCHLEAF_EXTRACT_RULES_H_
#define BENCHLEAF_EXTRACT_RULES_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <memory>

namespace benchleaf {

// Designator classes, part-number patterns, words that tell a page's kind and look-alike characters, from config/.
// Immutable once read; safe to share.
class Rules {
 public:
  // Reads every table in the folder. Fails with kMissing or kUsage; the message names file, line and column.
  static Result<std::shared_ptr<const Rules>> Load(const std::filesystem::path& config);

  struct Tables;  // private to extract/ and paging/: src/extract/rule_tables.h
  const Tables& tables() const { return *tables_; }

  explicit Rules(std::shared_ptr<const Tables> tables) : tables_(std::move(tables)) {}

 private:
  std::shared_ptr<const Tables> tables_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_RULES_H_
