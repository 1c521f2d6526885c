// The words by which the function of a tube is known: config/tube-functions.tsv, and a restorer's own rows.

#ifndef BENCHLEAF_LINEUP_TUBE_FUNCTIONS_H_
#define BENCHLEAF_LINEUP_TUBE_FUNCTIONS_H_

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// A function found in a row of words.
struct FunctionFound {
  std::string function;   // as answers name it: "i.f. amplifier"
  std::size_t first = 0;  // position of its first word
  std::size_t count = 0;  // of its words

  friend bool operator==(const FunctionFound&, const FunctionFound&) = default;
};

// Immutable once read; safe to share.
class TubeFunctions {
 public:
  // Reads the files in their order. A row of a later one replaces that of the same words before it. Fails with kMissing
  // or kUsage; the message names file, line and column.
  static Result<TubeFunctions> Load(const std::vector<std::filesystem::path>& files,
                                    std::shared_ptr<const Rules> rules);

  // The functions that the words name, from left to right; where several rows fit, the one of the most words. Letters
  // that look alike in print do not count as different (PIX LF. is PIX I.F.), but in a short word that stands alone.
  std::vector<FunctionFound> Find(const std::vector<std::string>& words) const;

 private:
  struct Row {
    std::vector<std::string> words;
    std::vector<std::string> folded;
    std::string function;
  };
  std::string Folded(const std::string& word) const;

  std::vector<Row> rows_;  // those of more words first
  std::shared_ptr<const Rules> rules_;
};

// The words of a text as Find takes them: capitals and figures, parted by everything else but dots: "Det.-1st I.F." is
// DET, 1ST and IF.
std::vector<std::string> FunctionWords(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_TUBE_FUNCTIONS_H_
