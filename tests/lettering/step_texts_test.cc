#include "benchleaf/lettering/step_texts.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// Steps as rows of chances: the blank, then A, then B.
StepChances Chances(const std::vector<std::vector<double>>& rows) {
  StepChances chances;
  chances.steps = rows.size();
  chances.symbols = rows.empty() ? 3 : rows.front().size();
  for (const std::vector<double>& row : rows) {
    for (const double chance : row) chances.log_chances.push_back(static_cast<float>(std::log(chance)));
  }
  return chances;
}

std::string Spelt(const StepText& text) {
  std::string spelt;
  for (const std::size_t symbol : text.symbols) spelt += static_cast<char>('A' + symbol - 1);
  return spelt;
}

constexpr double kNot = 1e-9;

TEST(StepTexts, ReadsOneCharacterThatGoesOnOnce) {
  const auto texts = LikeliestTexts(Chances({{kNot, 1, kNot}, {kNot, 1, kNot}, {kNot, kNot, 1}}), 1);
  ASSERT_EQ(texts.size(), 1U);
  EXPECT_EQ(Spelt(texts[0]), "AB");
  EXPECT_NEAR(texts[0].log_chance, 0, 1e-3);
  EXPECT_EQ(texts[0].steps, (std::vector<std::size_t>{0, 2}));
}

TEST(StepTexts, ReadsACharacterTwiceWhereABlankStandsBetween) {
  EXPECT_EQ(Spelt(LikeliestTexts(Chances({{kNot, 1, kNot}, {1, kNot, kNot}, {kNot, 1, kNot}}), 1)[0]), "AA");
}

// The example that shows why the likeliest steps need not spell the likeliest text: blank twice is .36, A in any of
// three ways .64. (Graves, Supervised Sequence Labelling with Recurrent Neural Networks, 2012, figure 7.3; from
// memory.)
TEST(StepTexts, SumsOverAllWaysToSpellAText) {
  const auto texts = LikeliestTexts(Chances({{.6, .4, kNot}, {.6, .4, kNot}}), 2);
  ASSERT_EQ(texts.size(), 2U);
  EXPECT_EQ(Spelt(texts[0]), "A");
  EXPECT_NEAR(std::exp(texts[0].log_chance), .64, 1e-3);
  EXPECT_EQ(Spelt(texts[1]), "");
  EXPECT_NEAR(std::exp(texts[1].log_chance), .36, 1e-3);
}

// Every text of three steps, by trying all 27 ways.
TEST(StepTexts, AgreesWithTryingAllWays) {
  const std::vector<std::vector<double>> rows = {{.5, .3, .2}, {.2, .5, .3}, {.3, .3, .4}};
  std::vector<std::pair<std::string, double>> all;
  for (std::size_t way = 0; way < 27; ++way) {
    const std::size_t path[] = {way % 3, way / 3 % 3, way / 9};
    std::string text;
    double chance = 1;
    std::size_t before = 0;
    for (std::size_t step = 0; step < 3; ++step) {
      chance *= rows[step][path[step]];
      if (path[step] != 0 && path[step] != before) {
        text += static_cast<char>('A' + path[step] - 1);
      }
      before = path[step];
    }
    bool known = false;
    for (auto& [other, sum] : all) {
      if (other == text) {
        sum += chance;
        known = true;
      }
    }
    if (!known) {
      all.emplace_back(text, chance);
    }
  }
  const auto texts = LikeliestTexts(Chances(rows), 4);
  ASSERT_EQ(texts.size(), 4U);
  for (const StepText& text : texts) {
    bool known = false;
    for (const auto& [other, sum] : all) {
      if (other == Spelt(text)) {
        EXPECT_NEAR(std::exp(text.log_chance), sum, 1e-4) << other;
        known = true;
      }
    }
    EXPECT_TRUE(known) << Spelt(text);
  }
}

TEST(StepTexts, ReadsNothingWhereNoStepIs) {
  const auto texts = LikeliestTexts(Chances({}), 3);
  ASSERT_EQ(texts.size(), 1U);
  EXPECT_TRUE(texts[0].symbols.empty());
}

}  // namespace
}  // namespace benchleaf
