#include "extract/part_agreement.h"

#include "extract/misreading.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kByAgreement = 0.85;

bool MayBeConfused(char a, char b) { return a == b || (IsDigit(a) && IsDigit(b) && ArePrintedAlike(a, b)); }

// Whether one text may have been read for the other, with at most two figures changed.
bool MayBeRead(std::string_view read, std::string_view wanted) {
  if (read.size() != wanted.size()) {
    return false;
  }
  std::size_t changed = 0;
  for (std::size_t i = 0; i < read.size(); ++i) {
    if (!MayBeConfused(read[i], wanted[i])) {
      return false;
    }
    changed += read[i] == wanted[i] ? 0U : 1U;
  }
  return changed <= 2;
}

// Letters and figures of a description with its class; empty when it is too short to tell one part from another.
std::string PartKey(const ListRow& row, const RowFields& fields) {
  constexpr std::size_t kShortest = 8;
  std::string key;
  for (const char c : Upper(fields.description)) {
    if (IsAlnum(c) || c == '.') {
      key += c;
    }
  }
  return key.size() < kShortest || row.designators.empty() ? std::string()
                                                           : row.designators.front().letters + " " + key;
}

// The figures in front of the first other character.
std::string Prefix(const std::string& number) { return number.substr(0, number.find_first_not_of("0123456789")); }

// How often texts were counted, and which is the most common of them; of several that first in order.
class Counts {
 public:
  void Add(const std::string& text) {
    ++all_;
    ++counts_[text];
  }
  std::size_t all() const { return all_; }
  std::size_t Of(const std::string& text) const {
    const auto found = counts_.find(text);
    return found == counts_.end() ? 0 : found->second;
  }
  // Empty and 0 when nothing was counted. Found once: to be asked when all are counted.
  const std::pair<std::string, std::size_t>& MostCommon() {
    if (!most_common_) {
      const auto most = std::max_element(counts_.begin(), counts_.end(),
                                         [](const auto& a, const auto& b) { return a.second < b.second; });
      most_common_.emplace();
      if (most != counts_.end()) {
        *most_common_ = {most->first, most->second};
      }
    }
    return *most_common_;
  }

 private:
  std::size_t all_ = 0;
  std::map<std::string, std::size_t> counts_;
  std::optional<std::pair<std::string, std::size_t>> most_common_;
};

void PutRight(RowFields& fields, std::string number) {
  fields.part_number = std::move(number);
  fields.part_confidence *= kByAgreement;
}

void AgreeByDescription(const std::vector<ListRow>& rows, std::vector<RowFields>& fields) {
  std::map<std::string, Counts> numbers;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!fields[i].part_number.empty()) {
      numbers[PartKey(rows[i], fields[i])].Add(fields[i].part_number);
    }
  }
  numbers.erase("");
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto known = numbers.find(PartKey(rows[i], fields[i]));
    if (known == numbers.end() || fields[i].part_number.empty()) {
      continue;
    }
    const auto& [number, count] = known->second.MostCommon();
    const std::size_t own = known->second.Of(fields[i].part_number);
    if (count >= 2 && own * 2 <= count && MayBeRead(fields[i].part_number, number)) {
      PutRight(fields[i], number);
    }
  }
}

void AgreeByClass(const std::vector<ListRow>& rows, std::vector<RowFields>& fields) {
  constexpr std::size_t kFewest = 8;
  std::map<std::string, Counts> prefixes;
  const auto letters = [&](std::size_t i) {
    return rows[i].designators.empty() ? std::string() : rows[i].designators.front().letters;
  };
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!fields[i].part_number.empty()) {
      prefixes[letters(i)].Add(Prefix(fields[i].part_number));
    }
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    Counts& counts = prefixes[letters(i)];
    const auto& [prefix, count] = counts.MostCommon();
    const std::size_t all = counts.all();
    const std::string own = Prefix(fields[i].part_number);
    // A whole number of figures alone has no prefix.
    if (all >= kFewest && count * 10 >= all * 8 && own != prefix && !own.empty() && own != fields[i].part_number &&
        MayBeRead(own, prefix)) {
      PutRight(fields[i], prefix + fields[i].part_number.substr(own.size()));
    }
  }
}

}  // namespace

void AgreeOnParts(const std::vector<ListRow>& rows, std::vector<RowFields>& fields) {
  AgreeByClass(rows, fields);
  AgreeByDescription(rows, fields);
}

}  // namespace benchleaf::extract
