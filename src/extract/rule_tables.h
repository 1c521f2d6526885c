// The project's data in the form that extraction and paging work with.

#ifndef BENCHLEAF_SRC_EXTRACT_RULE_TABLES_H_
#define BENCHLEAF_SRC_EXTRACT_RULE_TABLES_H_

#include "extract/memo.h"
#include "extract/term.h"
#include "extract/text_hash.h"

#include "benchleaf/extract/rules.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <regex>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace benchleaf {
namespace extract {

// What a character that scans confuse may have been. 0 stands for "none".
struct LookAlike {
  char fold = 0;      // one for the whole class
  char digit = 0;     // where a figure must stand
  char letter = 0;    // where a capital must stand
  bool sure = false;  // may be put right without a second sign
};

// By the UTF-8 character. Most that are asked for are single bytes, and these are asked for thousands of times a page.
class LookAlikes {
 public:
  void Set(const std::string& character, const LookAlike& alike) {
    if (IsByte(character)) {
      bytes_.at(static_cast<unsigned char>(character.front())) = alike;
    } else {
      others_[character] = alike;
    }
  }

  // All zero for a character of which the tables say nothing.
  LookAlike Of(std::string_view character) const {
    if (IsByte(character)) {
      return bytes_[static_cast<unsigned char>(character.front())];
    }
    const auto found = others_.find(std::string(character));
    return found == others_.end() ? LookAlike{} : found->second;
  }

 private:
  static bool IsByte(std::string_view character) {
    return character.size() == 1 && static_cast<unsigned char>(character.front()) < 128;
  }

  std::array<LookAlike, 128> bytes_{};
  std::unordered_map<std::string, LookAlike> others_;
};

struct PartPattern {
  std::string name;
  std::regex pattern;       // of a whole word in capitals
  std::size_t figures = 0;  // that every word of the pattern has at least: told at a glance, the pattern takes long
  bool anywhere = false;    // also outside parts lists
  double sure = 0;          // 0 to 1
};

// What a word does in a parts list; see config/list-words.tsv.
enum class ListRole {
  kAssembly,
  kUnit,
  kRange,
  kAnd,
  kSame,
  kDitto,
  kUnused,
  kHeadDesignator,
  kHeadPart,
  kHeadDescription,
  kHeadQuantity,
  kHeadItem,
  kTitle,
  kTube,
  kPartOf,
  kDrawing,
  kFigure,
  kPreposition,
  kModel,
  kElsewhere,
};

// The roles of one word.
class Roles {
 public:
  void Add(ListRole role) { bits_ |= Bit(role); }
  bool Has(ListRole role) const { return (bits_ & Bit(role)) != 0; }

 private:
  static std::uint32_t Bit(ListRole role) { return std::uint32_t{1} << static_cast<unsigned>(role); }

  std::uint32_t bits_ = 0;
};

// A phrase that speaks for a kind of page.
struct KindPhrase {
  std::string kind;                // as benchleaf::Name(PageKind) has it
  std::vector<std::string> words;  // in capitals
  double weight = 0;
};

}  // namespace extract

struct Rules::Tables {
  extract::ByText<double> designator_classes;  // letters to how surely they are a designator
  extract::LookAlikes look_alikes;
  std::vector<extract::PartPattern> part_patterns;  // surest first
  std::unordered_set<std::string> tube_types;       // canonical; bare numbers are apart
  std::unordered_set<std::string> tube_bases;       // the same without suffix (6SN7)
  std::unordered_set<std::string> number_tubes;     // types that are bare numbers: 80, 01A, 5725
  bool tubes_have_figures = false;                  // every type and base, besides a nought in front that may be an O
  // Types and their bases by how they read with look-alikes folded.
  std::unordered_map<std::string, std::vector<std::string>> folded_tubes;
  std::map<extract::ListRole, std::vector<std::string>> list_words;         // phrases in capitals, by role
  extract::ByText<extract::Roles> word_roles;                               // the same by phrase
  std::map<std::string, std::vector<std::string>, std::less<>> part_words;  // a word to letters of designators
  std::vector<extract::KindPhrase> kind_phrases;

  // What these tables said before: of a word and its surroundings (terms.cc), of a text in lists (part_number.cc), of a
  // word that may be a misread one of part_words, null for none (part_words.cc), or of a role (list_words.cc).
  extract::Memo<std::vector<extract::Term>> terms_known;
  extract::Memo<double> list_numbers_known;
  extract::Memo<const std::vector<std::string>*> misread_part_words_known;
  extract::Memo<bool> misread_roles_known;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_EXTRACT_RULE_TABLES_H_
