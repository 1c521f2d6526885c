#include "extract/lone_numbers.h"

#include "extract/assembly_prefix.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <map>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kFewest = 8;  // numbers of a class, to tell anything

struct Numbered {
  std::string letters;
  int number = 0;
};

Numbered Split(const std::string& designator) {
  const std::string own = designator.substr(AssemblyLength(designator));
  const std::size_t from = std::min(own.find_first_of("0123456789"), own.size());
  Numbered split{own.substr(0, from), 0};
  std::from_chars(own.data() + from, own.data() + own.size(), split.number);
  return split;
}

}  // namespace

std::set<std::string> LoneNumbers(const std::vector<LexiconPage>& pages) {
  std::map<std::string, std::map<int, std::set<std::string>>> classes;  // letters, number, designators
  for (const LexiconPage& page : pages) {
    for (const Sighting& sighting : *page.sightings) {
      if (sighting.kind == TermKind::kDesignator && page.part != LexiconPart::kNone) {
        const Numbered split = Split(sighting.text);
        classes[split.letters][split.number].insert(sighting.text);
      }
    }
  }
  std::set<std::string> lone;
  for (const auto& [letters, numbers] : classes) {
    if (numbers.size() < kFewest) {
      continue;
    }
    std::map<int, int> in_hundred;
    for (const auto& [number, names] : numbers) {
      ++in_hundred[number / 100];
    }
    int below = 0;
    for (const auto& [number, names] : numbers) {
      if (number >= 100 && in_hundred[number / 100] == 1 && number > 2 * below) {
        lone.insert(names.begin(), names.end());
      } else {
        below = number;
      }
    }
  }
  return lone;
}

}  // namespace benchleaf::extract
