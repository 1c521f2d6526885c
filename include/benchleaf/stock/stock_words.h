// The words by which a table of tubes on hand is understood: config/stock-words.tsv, and a restorer's own rows.

#ifndef BENCHLEAF_STOCK_STOCK_WORDS_H_
#define BENCHLEAF_STOCK_STOCK_WORDS_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class StockColumn { kType, kCount, kGlass, kBox, kCondition, kTester, kPlace };

// What a word says of a tube's condition.
enum class ConditionWord { kGood, kTestedGood, kUsed, kUntested, kBad, kNothing };

// Immutable once read; safe to share.
class StockWords {
 public:
  // Reads the files in their order; a row of a later one replaces that of the same words before it. Fails with kMissing
  // or kUsage; the message names file, line and column.
  static Result<StockWords> Load(const std::vector<std::filesystem::path>& files);

  // The column that a title names, whatever its case and punctuation.
  std::optional<StockColumn> Column(std::string_view title) const;

  // What the words of a text say, from left to right; of several that fit at one place the longest.
  std::vector<ConditionWord> Conditions(std::string_view text) const;

  // Whether a marking says that nothing can be read: "illegible", "?", or no letter or figure at all.
  bool IsUnmarked(std::string_view marking) const;

 private:
  std::map<std::string, std::string, std::less<>> columns_;     // words to role
  std::map<std::string, std::string, std::less<>> conditions_;  // words to role
  std::map<std::string, std::string, std::less<>> unmarked_;    // words to role
};

}  // namespace benchleaf

#endif  // BENCHLEAF_STOCK_STOCK_WORDS_H_
