#include "store/near_texts.h"

#include "places/places.h"
#include "store/schema.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/misread_words.h"
#include "benchleaf/extract/rules.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::store {
namespace {

const Rules& Shipped() {
  static const auto rules = Rules::Load(SourceFolder() / "config").value();
  return *rules;
}

// The term spoiled at up to three places, as scans spoil it and worse.
std::string Spoiled(std::string text, std::mt19937& dice) {
  static const std::vector<std::string> kCharacters = {"0", "1", "2", "3", "5", "7", "8", "9",      "A",     "B",
                                                       "C", "K", "R", "Z", "-", ".", "/", "\u00e9", "\u2192"};
  for (auto changes = dice() % 4; changes > 0 && text.size() > 2; --changes) {
    const std::size_t at = 2 + dice() % (text.size() - 1);
    const std::string& other = kCharacters[dice() % kCharacters.size()];
    switch (dice() % 3) {
      case 0:
        text.insert(std::min(at, text.size()), other);
        break;
      case 1:
        text.erase(std::min(at, text.size() - 1), 1);
        break;
      default:
        text.replace(std::min(at, text.size() - 1), 1, other);
    }
  }
  return text;
}

// Every text with the first two characters, one by one.
std::vector<std::string> NearAmong(const std::set<std::string>& texts, const std::string& folded, std::size_t most) {
  std::vector<std::pair<double, std::string>> near;
  for (const std::string& text : texts) {
    const double likeness = text == folded ? 1 : LikenessOf(text, folded, Shipped());
    if (text.starts_with(folded.substr(0, 2)) && likeness > 0) near.emplace_back(-likeness, text);
  }
  std::sort(near.begin(), near.end());
  if (near.size() > most) near.resize(most);
  std::vector<std::string> found;
  for (auto& [likeness, text] : near) found.push_back(std::move(text));
  return found;
}

TEST(NearTexts, AreThoseThatLookingAtEveryTextFinds) {
  std::mt19937 dice(5);
  for (const char* term : {"22-7546-4", "6BQ6GT", "1N3401", "A4C1125", "970142-3", "C12345678"}) {
    const std::string folded = FoldLookAlikes(term, Shipped());
    Xapian::WritableDatabase database("", Xapian::DB_BACKEND_INMEMORY);
    std::set<std::string> texts;
    for (int i = 0; i < 3000; ++i) {
      Word word;
      word.text = Spoiled(folded, dice);
      word.confidence = 1;
      for (const std::string& text : FoldedReadings(word, Shipped())) {
        Xapian::Document document;
        document.add_boolean_term(MisreadTerm(text));
        database.add_document(document);
        texts.insert(text);
      }
    }
    EXPECT_EQ(NearTexts(database, Shipped(), folded, 40), NearAmong(texts, folded, 40)) << term;
    EXPECT_EQ(NearTexts(database, Shipped(), folded, 100000), NearAmong(texts, folded, 100000)) << term;
  }
}

}  // namespace
}  // namespace benchleaf::store
