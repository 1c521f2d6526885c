#include "extract/part_words.h"

#include "extract/list_words.h"
#include "extract/misreading.h"

#include <cstddef>

namespace benchleaf::extract {
namespace {

// Those of the word that this one is likeliest a misreading of; null for none.
const std::vector<std::string>* ClassesOfMisread(const std::string& text, const Rules::Tables& tables) {
  constexpr std::size_t kShortestMisread = 5;  // shorter words have too many neighbours
  constexpr double kCostOfALetter = 0.35;
  const std::vector<std::string>* best = nullptr;
  double least = kCostOfALetter;
  for (const auto& [name, classes] : tables.part_words) {
    if (name.size() < kShortestMisread || text.size() + 2 < name.size() || text.size() > name.size() + 2) {
      continue;
    }
    const auto size = static_cast<double>(name.size());
    constexpr double kRounding = 1e-9;
    const double cost = MisreadingCost(text, name, tables, least * size + kRounding) / size;
    if (cost < least) {
      least = cost;
      best = &classes;
    }
  }
  return best;
}

}  // namespace

std::vector<std::string> ClassesOfWord(std::string_view word, const Rules::Tables& tables) {
  constexpr std::size_t kShortest = 3;
  std::string text = ListWord(word);
  if (text.size() > kShortest && text.back() == 'S' && tables.part_words.count(text) == 0) {
    text.pop_back();
  }
  if (text.size() < kShortest) {
    return {};
  }
  if (const auto known = tables.part_words.find(text); known != tables.part_words.end()) {
    return known->second;
  }
  const std::vector<std::string>* classes =
      tables.misread_part_words_known.Of(text, [&] { return ClassesOfMisread(text, tables); });
  return classes == nullptr ? std::vector<std::string>() : *classes;
}

}  // namespace benchleaf::extract
