#include "benchleaf/lineup/tube_functions.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/core/table_file.h"
#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kShortWord = 3;

}  // namespace

std::vector<std::string> FunctionWords(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (IsAlnum(c)) {
      words.back() += ToUpper(c);
    } else if (c != '.' && !words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

std::string TubeFunctions::Folded(const std::string& word) const { return FoldLookAlikes(word, *rules_); }

Result<TubeFunctions> TubeFunctions::Load(const std::vector<std::filesystem::path>& files,
                                          std::shared_ptr<const Rules> rules) {
  TubeFunctions functions;
  functions.rules_ = std::move(rules);
  for (const std::filesystem::path& path : files) {
    const auto file = TableFile::Read(path, {"function", "words", "source"});
    if (!file) return tl::unexpected<Error>(file.error());
    for (std::size_t i = 0; i < file->size(); ++i) {
      Row row{FunctionWords(file->Cell(i, "words")), {}, file->Cell(i, "function")};
      if (row.words.empty()) {
        return tl::unexpected<Error>(file->Complaint(i, "words", "write the words in letters and figures"));
      }
      if (row.function.empty()) {
        return tl::unexpected<Error>(file->Complaint(i, "function", "name the function that the words stand for"));
      }
      for (const std::string& word : row.words) row.folded.push_back(functions.Folded(word));
      const auto known = std::find_if(functions.rows_.begin(), functions.rows_.end(),
                                      [&](const Row& other) { return other.words == row.words; });
      if (known == functions.rows_.end()) {
        functions.rows_.push_back(std::move(row));
      } else {
        *known = std::move(row);
      }
    }
  }
  std::stable_sort(functions.rows_.begin(), functions.rows_.end(),
                   [](const Row& a, const Row& b) { return a.words.size() > b.words.size(); });
  return functions;
}

std::vector<FunctionFound> TubeFunctions::Find(const std::vector<std::string>& words) const {
  std::vector<std::string> folded;
  folded.reserve(words.size());
  for (const std::string& word : words) folded.push_back(Folded(word));
  std::vector<FunctionFound> found;
  for (std::size_t at = 0; at < folded.size();) {
    const auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) {
      if (one.words.size() > folded.size() - at) return false;
      // A short word alone must be read as it is: 1F is no I.F.
      const bool strict = one.words.size() == 1 && one.words.front().size() <= kShortWord;
      const std::vector<std::string>& wanted = strict ? one.words : one.folded;
      const std::vector<std::string>& read = strict ? words : folded;
      return std::equal(wanted.begin(), wanted.end(), read.begin() + static_cast<std::ptrdiff_t>(at));
    });
    if (row == rows_.end()) {
      ++at;
    } else {
      found.push_back({row->function, at, row->words.size()});
      at += row->words.size();
    }
  }
  return found;
}

}  // namespace benchleaf
