// What kind of part a row of a parts list is: config/replace-words.tsv, and a restorer's own rows.

#ifndef BENCHLEAF_ORDERS_PART_KINDS_H_
#define BENCHLEAF_ORDERS_PART_KINDS_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class PartKind {
  kElectrolytic,
  kPaper,  // in wax, oil or plastic
  kSelenium,
  kCarbon,  // composition resistor
  kWirewound,
  kMica,
  kCeramic,
  kFilm,
  kVariable,  // variable and trimmer capacitors, controls: never replaced by a value
};

// "electrolytic", "paper", "selenium", "carbon", "wirewound", "mica", "ceramic", "film", "variable".
std::string_view Name(PartKind kind);
std::optional<PartKind> PartKindNamed(std::string_view name);
// The kinds that can be ordered: all but variable.
std::vector<std::string> OrderableKindNames();
// The same in words: "electrolytic, paper".
std::string OrderableKinds();

// What a capacitor's description says of the line.
enum class LinePlace {
  kAcross,     // from one side of the line to the other
  kToChassis,  // from a side of the line to chassis or ground
  kUnsaid,     // at the line, and not said how
};

// Immutable once read; safe to share.
class PartWords {
 public:
  // Reads the files in their order; a row of a later one replaces that of the same words before it. Fails with kMissing
  // or kUsage; the message names file, line and column.
  static Result<PartWords> Load(const std::vector<std::filesystem::path>& files);

  // The kind that the words of a description tell. A word of seven letters and more may be read with one letter wrong,
  // of ten and more with two.
  std::optional<PartKind> KindIn(std::string_view description) const;

  // Nothing when no word speaks of the line.
  std::optional<LinePlace> LineIn(std::string_view description) const;

  // The same for a part's class letters (SR: selenium rectifier); nothing for C, R and all others.
  std::optional<PartKind> KindOfClass(std::string_view letters) const;

 private:
  std::map<std::string, std::string, std::less<>> words_;    // words to role
  std::map<std::string, std::string, std::less<>> letters_;  // class letters to role
};

}  // namespace benchleaf

#endif  // BENCHLEAF_ORDERS_PART_KINDS_H_
