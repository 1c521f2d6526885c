#include "benchleaf/extract/rules.h"

#include "extract/look_alikes.h"
#include "extract/part_number.h"
#include "extract/plain_text.h"
#include "extract/rule_tables.h"
#include "extract/tube_form.h"

#include "benchleaf/core/table_file.h"
#include "benchleaf/core/utf8.h"
#include "benchleaf/extract/own_rules.h"

#include <algorithm>
#include <array>
#include <set>
#include <sstream>
#include <string_view>
#include <system_error>
#include <utility>

namespace benchleaf {
namespace {

using extract::ListRole;

using Done = Result<bool>;

constexpr std::array<std::pair<std::string_view, ListRole>, 20> kRoles = {{
    {"assembly", ListRole::kAssembly},
    {"unit", ListRole::kUnit},
    {"range", ListRole::kRange},
    {"and", ListRole::kAnd},
    {"same", ListRole::kSame},
    {"ditto", ListRole::kDitto},
    {"unused", ListRole::kUnused},
    {"head-designator", ListRole::kHeadDesignator},
    {"head-part", ListRole::kHeadPart},
    {"head-description", ListRole::kHeadDescription},
    {"head-quantity", ListRole::kHeadQuantity},
    {"head-item", ListRole::kHeadItem},
    {"title", ListRole::kTitle},
    {"tube", ListRole::kTube},
    {"part-of", ListRole::kPartOf},
    {"drawing", ListRole::kDrawing},
    {"figure", ListRole::kFigure},
    {"preposition", ListRole::kPreposition},
    {"model", ListRole::kModel},
    {"elsewhere", ListRole::kElsewhere},
}};

// The names of page kinds, as paging has them; paging stands above this folder and cannot be asked.
constexpr std::array<std::string_view, 13> kKinds = {
    "schematic", "parts list",    "parts locator", "text",        "cover",           "contents", "specifications",
    "alignment", "block diagram", "waveforms",     "tube layout", "troubleshooting", "other",
};

tl::unexpected<Error> Wrong(const TableFile& file, std::size_t row, std::string_view column, const std::string& what) {
  return tl::unexpected<Error>(file.Complaint(row, column, what));
}

Done ReadClasses(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"letters", "meaning", "sure", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    const std::string& letters = file->Cell(row, "letters");
    if (letters.empty() || letters.size() > 4 || !std::all_of(letters.begin(), letters.end(), extract::IsUpper)) {
      return Wrong(*file, row, "letters", "write one to four capital letters");
    }
    const auto sure = file->Number(row, "sure", 1);
    if (!sure) {
      return tl::unexpected<Error>(sure.error());
    }
    if (*sure > 0) {
      tables.designator_classes[letters] = *sure;
    } else {
      tables.designator_classes.erase(letters);
    }
  }
  return true;
}

// One character, or '-' for none; 0 for none, and an error for anything longer.
Result<char> OneCharacter(const TableFile& file, std::size_t row, std::string_view column) {
  const std::string& cell = file.Cell(row, column);
  if (cell.size() != 1) {
    return Wrong(file, row, column, "write one character, or '-' for none");
  }
  return cell == "-" ? '\0' : cell.front();
}

Done ReadLookAlikes(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"text", "fold", "digit", "letter", "sure", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    const std::string& text = file->Cell(row, "text");
    if (Characters(text).size() != 1) {
      return Wrong(*file, row, "text", "write one character");
    }
    const auto fold = OneCharacter(*file, row, "fold");
    const auto digit = OneCharacter(*file, row, "digit");
    const auto letter = OneCharacter(*file, row, "letter");
    const auto sure = file->Truth(row, "sure");
    for (const auto* field : {&fold, &digit, &letter}) {
      if (!*field) {
        return tl::unexpected<Error>(field->error());
      }
    }
    if (!sure) {
      return tl::unexpected<Error>(sure.error());
    }
    tables.look_alikes.Set(text, {*fold, *digit, *letter, *sure});
  }
  return true;
}

Done ReadPartPatterns(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"name", "pattern", "where", "sure", "example", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    extract::PartPattern part;
    part.name = file->Cell(row, "name");
    const std::string& where = file->Cell(row, "where");
    if (where != "any" && where != "list") {
      return Wrong(*file, row, "where", "write 'any' or 'list'");
    }
    part.anywhere = where == "any";
    const auto sure = file->Number(row, "sure", 1);
    if (!sure) {
      return tl::unexpected<Error>(sure.error());
    }
    part.sure = *sure;
    std::erase_if(tables.part_patterns, [&](const auto& known) { return known.name == part.name; });
    if (part.sure == 0) {
      continue;
    }
    try {
      part.pattern = std::regex(file->Cell(row, "pattern"), std::regex::ECMAScript | std::regex::optimize);
    } catch (const std::regex_error& problem) {
      return Wrong(*file, row, "pattern", std::string("it is no regular expression: ") + problem.what());
    }
    part.figures = extract::LeastFigures(file->Cell(row, "pattern"));
    if (!std::regex_match(file->Cell(row, "example"), part.pattern)) {
      return Wrong(*file, row, "example", "the pattern of this row does not fit it");
    }
    tables.part_patterns.push_back(std::move(part));
  }
  std::stable_sort(tables.part_patterns.begin(), tables.part_patterns.end(),
                   [](const auto& a, const auto& b) { return a.sure > b.sure; });
  return true;
}

Done ReadTubeTypes(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"type", "family", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    const std::string& type = file->Cell(row, "type");
    if (type.empty() || extract::Upper(type) != type) {
      return Wrong(*file, row, "type", "write the type in capitals");
    }
    const std::string& family = file->Cell(row, "family");
    tables.tube_types.erase(type);
    tables.number_tubes.erase(type);
    if (family == "number") {
      tables.number_tubes.insert(type);
    } else if (family != "none") {
      tables.tube_types.insert(type);
    }
  }
  return true;
}

// Notes the bases of the types, and how types and bases read with look-alikes folded.
void FoldTubes(Rules::Tables& tables) {
  for (const std::string& type : tables.tube_types) {
    tables.tube_bases.insert(extract::TubeBase(type));
  }
  std::set<std::string> names(tables.tube_types.begin(), tables.tube_types.end());
  names.insert(tables.tube_bases.begin(), tables.tube_bases.end());
  tables.tubes_have_figures = std::all_of(names.begin(), names.end(), [](const std::string& name) {
    return std::any_of(name.begin() + (name.starts_with('0') ? 1 : 0), name.end(), extract::IsDigit);
  });
  for (const std::string& name : names) {
    tables.folded_tubes[extract::Folded(name, tables)].push_back(name);
  }
}

Done ReadListWords(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"role", "words", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    const std::string& name = file->Cell(row, "role");
    if (name == "none") {
      for (auto& [known, words] : tables.list_words) {
        std::erase(words, file->Cell(row, "words"));
      }
      continue;
    }
    const auto* role = std::find_if(kRoles.begin(), kRoles.end(), [&](const auto& pair) { return pair.first == name; });
    if (role == kRoles.end()) {
      return Wrong(*file, row, "role", "write one of the roles that the table's first lines explain, or none");
    }
    if (file->Cell(row, "words").empty()) {
      return Wrong(*file, row, "words", "write the words in capitals");
    }
    tables.list_words[role->second].push_back(file->Cell(row, "words"));
  }
  return true;
}

void NoteWordRoles(Rules::Tables& tables) {
  for (const auto& [role, words] : tables.list_words) {
    for (const std::string& word : words) {
      tables.word_roles[word].Add(role);
    }
  }
}

Done ReadPartWords(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"words", "classes", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  std::set<std::string> written;
  for (std::size_t row = 0; row < file->size(); ++row) {
    const std::string& word = file->Cell(row, "words");
    if (word.empty() || extract::Upper(word) != word) {
      return Wrong(*file, row, "words", "write the word in capitals");
    }
    if (file->Cell(row, "classes") == "-") {
      tables.part_words.erase(word);
      continue;
    }
    if (written.insert(word).second) {
      tables.part_words[word].clear();  // of a table before this one
    }
    std::istringstream classes(file->Cell(row, "classes"));
    for (std::string letters; classes >> letters;) {
      tables.part_words[word].push_back(letters);
    }
    if (tables.part_words[word].empty()) {
      return Wrong(*file, row, "classes", "write the letters of the designators of such parts");
    }
  }
  return true;
}

Done ReadKindPhrases(const std::filesystem::path& path, Rules::Tables& tables) {
  const auto file = TableFile::Read(path, {"kind", "words", "weight", "source"});
  if (!file) {
    return tl::unexpected<Error>(file.error());
  }
  for (std::size_t row = 0; row < file->size(); ++row) {
    extract::KindPhrase phrase;
    phrase.kind = file->Cell(row, "kind");
    if (std::find(kKinds.begin(), kKinds.end(), phrase.kind) == kKinds.end()) {
      return Wrong(*file, row, "kind", "write a kind of page, as 'schematic' or 'parts list'");
    }
    std::istringstream words(file->Cell(row, "words"));
    for (std::string word; words >> word;) {
      phrase.words.push_back(word);
    }
    if (phrase.words.empty()) {
      return Wrong(*file, row, "words", "write the words in capitals");
    }
    const auto weight = file->Number(row, "weight", 10);
    if (!weight) {
      return tl::unexpected<Error>(weight.error());
    }
    phrase.weight = *weight;
    std::erase_if(tables.kind_phrases,
                  [&](const auto& known) { return known.kind == phrase.kind && known.words == phrase.words; });
    if (phrase.weight > 0) {
      tables.kind_phrases.push_back(std::move(phrase));
    }
  }
  return true;
}

struct TableReader {
  const char* name;
  Done (*read)(const std::filesystem::path&, Rules::Tables&);
};

constexpr std::array<TableReader, 7> kReaders = {{
    {"designator-classes.tsv", ReadClasses},
    {"look-alikes.tsv", ReadLookAlikes},
    {"part-numbers.tsv", ReadPartPatterns},
    {"tube-types.tsv", ReadTubeTypes},
    {"list-words.tsv", ReadListWords},
    {"part-words.tsv", ReadPartWords},
    {"page-kinds.tsv", ReadKindPhrases},
}};

}  // namespace

Result<std::shared_ptr<const Rules>> Rules::Load(const std::filesystem::path& config) { return LoadRules(config, {}); }

Result<std::shared_ptr<const Rules>> LoadRules(const std::filesystem::path& config, const std::filesystem::path& own) {
  auto tables = std::make_shared<Rules::Tables>();
  for (const auto& [name, read] : kReaders) {
    if (const Done done = read(config / name, *tables); !done) {
      return tl::unexpected<Error>(done.error());
    }
    std::error_code ignored;
    if (own.empty() || !std::filesystem::exists(own / name, ignored)) {
      continue;
    }
    if (const Done done = read(own / name, *tables); !done) {
      return tl::unexpected<Error>(done.error());
    }
  }
  FoldTubes(*tables);
  NoteWordRoles(*tables);
  return std::make_shared<const Rules>(std::move(tables));
}

std::vector<std::string> RuleTableNames() {
  std::vector<std::string> names;
  names.reserve(std::size(kReaders));
  for (const TableReader& reader : kReaders) {
    names.emplace_back(reader.name);
  }
  return names;
}

}  // namespace benchleaf
