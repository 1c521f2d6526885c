#include "reading/layer_words.h"

#include <gmock/gmock.h>

#include <string>

namespace benchleaf {
namespace {

// Twelve surely read words in a column, 1000 x 1000 px, the last one read badly.
PageReading Column() {
  PageReading reading;
  reading.frame.scan_width = reading.frame.level_width = 1000;
  reading.frame.scan_height = reading.frame.level_height = 1000;
  for (int i = 0; i < 12; ++i) {
    reading.words.push_back(
        {"R" + std::to_string(i), {100, 50 * i, 60, 24}, 0, i == 11 ? 0.3 : 0.95, WordOrigin::kString, {}});
  }
  return reading;
}

std::vector<LayerWord> LayerOf(const PageReading& reading) {
  std::vector<LayerWord> layer;
  for (const Word& word : reading.words) {
    layer.push_back({word.text, ToScan(reading.frame, word.box), 0});
  }
  return layer;
}

TEST(LayerWords, ALayerThatAgreesMendsWhatWasReadBadlyAndAddsWhatWasMissed) {
  PageReading reading = Column();
  std::vector<LayerWord> layer = LayerOf(reading);
  layer.back().text = "R711";
  layer.push_back({"C40", {0.5, 0.5, 0.06, 0.024}, 0});
  EXPECT_DOUBLE_EQ(LayerAgreement(layer, reading), 1);
  AddLayerWords(layer, reading);
  ASSERT_EQ(reading.words.size(), 13U);
  EXPECT_EQ(reading.words[11].text, "R711");
  EXPECT_EQ(reading.words[11].origin, WordOrigin::kLayer);
  EXPECT_EQ(reading.words[11].alternatives[0].text, "R11");
  EXPECT_EQ(reading.words[12].text, "C40");
  EXPECT_EQ(reading.words[12].box, (Box{500, 500, 60, 24}));
}

TEST(LayerWords, SurelyReadWordsStayAsRead) {
  PageReading reading = Column();
  std::vector<LayerWord> layer = LayerOf(reading);
  layer[3].text = "R8";
  AddLayerWords(layer, reading);
  EXPECT_EQ(reading.words[3].text, "R3");
}

TEST(LayerWords, ALayerThatDisagreesIsLeftOut) {
  PageReading reading = Column();
  std::vector<LayerWord> layer = LayerOf(reading);
  for (std::size_t i = 0; i < 5; ++i) {
    layer[i].text = "x";
  }
  layer.push_back({"C40", {0.5, 0.5, 0.06, 0.024}, 0});
  AddLayerWords(layer, reading);
  EXPECT_EQ(reading, Column());
}

TEST(LayerWords, TooFewWordsProveNothing) {
  PageReading reading = Column();
  std::vector<LayerWord> layer = LayerOf(reading);
  layer.resize(4);
  EXPECT_EQ(LayerAgreement(layer, reading), 0);
}

TEST(LayerWords, NoLayerChangesNothing) {
  PageReading reading = Column();
  AddLayerWords({}, reading);
  EXPECT_EQ(reading, Column());
}

}  // namespace
}  // namespace benchleaf
