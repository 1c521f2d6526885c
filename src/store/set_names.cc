#include "store/set_names.h"

#include "store/letters.h"
#include "store/schema.h"
#include "store/stored.h"

#include <algorithm>
#include <cstddef>
#include <set>
#include <utility>

namespace benchleaf::store {

namespace {

std::set<std::string> SetNamesOf(const Xapian::Database& database) {
  std::set<std::string> names;
  for (auto at = database.valuestream_begin(kSetSlot); at != database.valuestream_end(kSetSlot); ++at) {
    names.insert(*at);
  }
  return names;
}

bool HoldsAll(const std::u32string& name, const std::vector<std::u32string>& words) {
  return std::all_of(words.begin(), words.end(),
                     [&name](const std::u32string& word) { return name.find(word) != std::u32string::npos; });
}

// How many letters differ between the words and those of the name that are nearest to them: part of a name counts for
// all of it.
std::size_t WordsApart(const std::vector<std::u32string>& words, const std::vector<std::u32string>& name,
                       std::size_t most) {
  std::size_t apart = 0;
  for (const std::u32string& word : words) {
    std::size_t least = most + 1;
    for (const std::u32string& other : name) least = std::min(least, EditDistance(word, other, most));
    apart += least;
  }
  return apart;
}

// The names with the fewest letters that differ, if these are few enough for a slip: one in three.
std::vector<std::string> Nearest(const std::set<std::string>& names, const std::u32string& text) {
  constexpr std::size_t kMostNames = 5;
  const std::size_t most = std::max<std::size_t>(1, text.size() / 3);
  const std::vector<std::u32string> words = WordsOf(text);
  std::vector<std::pair<std::size_t, std::string>> near;
  for (const std::string& name : names) {
    const std::u32string lowered = Lowered(name);
    const std::size_t distance = std::min(EditDistance(text, lowered, most), WordsApart(words, WordsOf(lowered), most));
    if (distance <= most) near.emplace_back(distance, name);
  }
  std::sort(near.begin(), near.end());
  if (near.size() > kMostNames) near.resize(kMostNames);
  std::vector<std::string> nearest;
  nearest.reserve(near.size());
  for (auto& [distance, name] : near) nearest.push_back(std::move(name));
  return nearest;
}

}  // namespace

std::vector<SetSummary> AllSets(const Xapian::Database& database) {
  std::vector<SetSummary> sets;
  for (StoredManual& stored : AllManuals(database)) {
    if (sets.empty() || sets.back().set != stored.manual.set) {
      sets.push_back({stored.manual.set, stored.manual.maker, stored.manual.model, {}});
    }
    sets.back().manuals.push_back(std::move(stored.summary));
  }
  return sets;
}

IndexReader::SetNames MatchSetNames(const Xapian::Database& database, const std::string& text) {
  const std::set<std::string> names = SetNamesOf(database);
  if (names.count(text) != 0) return {{text}, false};

  const std::u32string lowered = Lowered(text);
  const std::vector<std::u32string> words = WordsOf(lowered);
  if (words.empty()) return {};
  std::vector<std::string> same;
  std::vector<std::string> holding;
  for (const std::string& name : names) {
    const std::u32string lowered_name = Lowered(name);
    if (WordsOf(lowered_name) == words) same.push_back(name);
    if (HoldsAll(lowered_name, words)) holding.push_back(name);
  }
  if (!same.empty()) return {same, false};
  if (!holding.empty()) return {holding, false};
  return {Nearest(names, lowered), true};
}

}  // namespace benchleaf::store
