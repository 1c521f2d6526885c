#include "extract/list_heading.h"

#include "extract/designator.h"
#include "extract/list_words.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <set>
#include <string_view>

namespace benchleaf::extract {
namespace {

// Longer lines are sentences.
constexpr std::size_t kMostWords = 9;

// "A4" or "A4A1"; nothing for other designators.
std::optional<std::string> AssemblyDesignator(const std::string& word, const Rules::Tables& tables) {
  const auto designator = ParseDesignator(word, tables);
  if (!designator || designator->letters != "A" || !designator->suffix.empty() || designator->number.size() > 2 ||
      designator->number.front() == '0') {
    return std::nullopt;
  }
  return designator->Text();
}

// The same behind a word that announces it, where a stroke for the figure is put right: ASSEMBLY AL is assembly A1.
std::optional<std::string> AnnouncedAssembly(const std::string& word, const Rules::Tables& tables) {
  if (word.size() < 2 || word.size() > 3 || word[0] != 'A') {
    return AssemblyDesignator(word, tables);
  }
  std::string right = "A";
  for (std::size_t i = 1; i < word.size(); ++i) {
    const char figure = IsDigit(word[i]) ? word[i] : LookAlikeOf(std::string(1, word[i]), tables).digit;
    if (figure == 0) {
      return AssemblyDesignator(word, tables);
    }
    right += figure;
  }
  return AssemblyDesignator(right, tables);
}

bool IsShortNumber(const std::string& word) {
  return !word.empty() && word.size() <= 2 && std::all_of(word.begin(), word.end(), IsDigit);
}

// The number of a unit behind a word that announces it, where a stroke or a Z for the figure is put right: UNIT I is
// UNIT 1. Empty for other words.
std::string AnnouncedNumber(const std::string& word) {
  if (IsShortNumber(word)) {
    return word;
  }
  if (word == "I" || word == "L" || word == "|") {
    return "1";
  }
  return word == "Z" ? "2" : "";
}

// What a word of role unit and the word behind it name together: ASSEMBLY A4, UNIT 2.
std::optional<std::string> AnnouncedUnit(const std::string& announcing, const std::string& word,
                                         const Rules::Tables& tables) {
  if (auto assembly = AnnouncedAssembly(word, tables)) {
    return assembly;
  }
  const std::string number = AnnouncedNumber(word);
  return number.empty() ? std::nullopt : std::optional(announcing + " " + number);
}

bool AnyHasRole(const std::vector<std::string>& words, ListRole role, const Rules::Tables& tables) {
  return std::any_of(words.begin(), words.end(), [&](const std::string& word) { return HasRole(word, role, tables); });
}

// "ASKMBLY A1 CHASSIS UNIT", "ASSEMBIYA1 CHASSIS UNIT": an underline that touches the letters spoils them, and closes
// gaps.
std::optional<std::string> SpoiledHeading(const std::vector<std::string>& words, const Rules::Tables& tables) {
  constexpr std::size_t kShortest = 6;  // letters of a word that can hardly be another
  const std::size_t joint = words[0].find_last_not_of("0123456789");
  if (joint != std::string::npos && joint >= kShortest && joint + 1 < words[0].size() && words[0][joint] == 'A' &&
      MayHaveRole(words[0].substr(0, joint), ListRole::kUnit, tables)) {
    return AssemblyDesignator(words[0].substr(joint), tables);
  }
  if (words.size() < 2 || !MayHaveRole(words[0], ListRole::kUnit, tables)) {
    return std::nullopt;
  }
  return words[0].size() >= kShortest ? AnnouncedAssembly(words[1], tables) : AssemblyDesignator(words[1], tables);
}

// What a speck between two words is read as.
bool IsJoint(char c) { return c == '-' || c == '.' || c == ',' || c == '_' || c == '~'; }

}  // namespace

std::vector<std::string> WordsOf(const std::vector<Piece>& pieces) {
  constexpr std::size_t kShortest = 3;  // letters of a word behind a joint; a number's parts are not parted
  std::vector<std::string> words;
  words.reserve(pieces.size());
  const auto add = [&words](std::string_view text) {
    std::string word = ListWord(text);
    if (!word.empty()) {
      words.push_back(std::move(word));
    }
  };
  for (const Piece& piece : pieces) {
    // A speck between two words joins them: "A1-CHASSIS UNIT".
    const auto joint =
        static_cast<std::size_t>(std::find_if(piece.text.begin(), piece.text.end(), IsJoint) - piece.text.begin());
    const std::size_t behind = joint + 1;
    const bool joined = joint != 0 && behind < piece.text.size() && piece.text.size() - behind >= kShortest &&
                        std::all_of(piece.text.begin() + static_cast<std::ptrdiff_t>(behind),
                                    piece.text.begin() + static_cast<std::ptrdiff_t>(behind + kShortest), IsLetter);
    const std::string_view text = piece.text;
    add(joined ? text.substr(0, joint) : text);
    if (joined) {
      add(text.substr(behind));
    }
  }
  return words;
}

std::optional<std::string> AssemblyHeading(const std::vector<std::string>& words, const Rules::Tables& tables) {
  if (words.empty() || words.size() > kMostWords || AnyHasRole(words, ListRole::kPreposition, tables)) {
    return std::nullopt;
  }
  // UNIT 2, ASSEMBLY A4, ASSY NO. A4
  if (HasRole(words[0], ListRole::kUnit, tables) && words.size() > 1) {
    const std::size_t at = words[1] == "NO" && words.size() > 2 ? 2 : 1;
    if (auto unit = AnnouncedUnit(words[0], words[at], tables)) {
      return unit;
    }
  }
  if (auto spoiled = SpoiledHeading(words, tables)) {
    return spoiled;
  }
  if (!AnyHasRole(words, ListRole::kAssembly, tables)) {
    return std::nullopt;
  }
  if (auto first = AssemblyDesignator(words.front(), tables)) {
    return first;
  }
  // "Az CHASSIS UNIT": nothing else begins like that.
  constexpr std::string_view kStrokes = "0123456789IZ|";
  if (words.front().size() == 2 && words.front()[0] == 'A' &&
      kStrokes.find(words.front()[1]) != std::string_view::npos && words.size() <= 5) {
    return AnnouncedAssembly(words.front(), tables);
  }
  return words.size() > 1 ? AssemblyDesignator(words.back(), tables) : std::nullopt;
}

std::optional<std::string> AssemblyHeading(const Line& line, const std::vector<std::string>& words,
                                           const Rules::Tables& tables) {
  if (auto heading = AssemblyHeading(words, tables)) {
    return heading;
  }
  constexpr std::size_t kNear = 3;  // pieces from the start among which the assembly's own may hide
  if (words.empty() || words.size() > kMostWords || !HasRole(words[0], ListRole::kUnit, tables)) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < std::min(kNear, line.pieces.size()); ++i) {
    for (const Alternative& alternative : line.pieces[i].alternatives) {
      const std::string start = alternative.text.substr(0, alternative.text.find('_'));
      if (auto assembly = AnnouncedAssembly(ListWord(start), tables)) {
        return assembly;
      }
    }
  }
  return std::nullopt;
}

std::optional<std::string> TitledAssembly(const std::vector<std::string>& words, const Rules::Tables& tables) {
  if (words.size() < 2 || !AnyHasRole(words, ListRole::kDrawing, tables)) {
    return std::nullopt;
  }
  // "FIG. 5-1 SCHEMATIC DIAGRAM, ASSEMBLY A1 VERTICAL AMPLIFIER"
  for (std::size_t at = 0; at + 1 < words.size(); ++at) {
    if (HasRole(words[at], ListRole::kUnit, tables)) {
      if (auto unit = AnnouncedUnit(words[at], words[at + 1], tables)) {
        return unit;
      }
    }
  }
  return words.size() <= kMostWords ? AssemblyDesignator(words.front(), tables) : std::nullopt;
}

std::optional<std::string> DrawnAssembly(const std::vector<std::string>& words, const Rules::Tables& tables) {
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::size_t length = PhraseAt(words, at, ListRole::kPartOf, tables);
    if (length != 0 && at + length < words.size()) {
      if (auto assembly = AssemblyDesignator(words[at + length], tables)) {
        return assembly;
      }
    }
  }
  return AssemblyHeading(words, tables);
}

bool IsColumnTitles(const std::vector<std::string>& words, const Rules::Tables& tables) {
  constexpr ListRole kHeads[] = {ListRole::kHeadDesignator, ListRole::kHeadPart, ListRole::kHeadDescription,
                                 ListRole::kHeadQuantity, ListRole::kHeadItem};
  std::size_t titles = 0;
  std::set<ListRole> roles;
  for (const std::string& word : words) {
    const Roles of_word = RolesOf(word, tables);
    for (const ListRole role : kHeads) {
      if (of_word.Has(role)) {
        ++titles;
        roles.insert(role);
        break;
      }
    }
  }
  return !words.empty() && (titles == words.size() || (roles.size() >= 2 && titles * 2 >= words.size()));
}

bool IsGroupTitle(const std::vector<std::string>& words, const Rules::Tables& tables) {
  return !words.empty() && words.size() <= 6 && std::all_of(words.begin(), words.end(), [&](const std::string& word) {
    return HasRole(word, ListRole::kTitle, tables) || IsShortNumber(word);
  });
}

}  // namespace benchleaf::extract
