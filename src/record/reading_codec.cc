#include "record/cbor_items.h"
#include "record/cbor_reader.h"
#include "record/reading_items.h"

#include "benchleaf/record/codec.h"

#include <utility>

namespace benchleaf {

using nlohmann::json;

namespace {

json FrameItem(const PageFrame& frame) {
  return json::array({frame.scan_width, frame.scan_height, RealItem(frame.dpi), frame.orientation,
                      RealItem(frame.scale), RealItem(frame.skew_degrees), frame.level_width, frame.level_height});
}

PageFrame ReadFrame(CborReader& reader) {
  reader.Array(8);
  PageFrame frame;
  frame.scan_width = reader.Int(0);
  frame.scan_height = reader.Int(0);
  frame.dpi = reader.Real();
  frame.orientation = reader.Int(0, 270);
  frame.scale = reader.Real();
  frame.skew_degrees = reader.Real();
  frame.level_width = reader.Int(0);
  frame.level_height = reader.Int(0);
  return frame;
}

json MeasuresItem(const PageMeasures& measures) {
  return json::array({RealItem(measures.cap_height_px), measures.glyphs, measures.long_lines,
                      RealItem(measures.line_ink), RealItem(measures.text_row_share), RealItem(measures.long_row_share),
                      RealItem(measures.dark_share)});
}

PageMeasures ReadMeasures(CborReader& reader) {
  reader.Array(7);
  PageMeasures measures;
  measures.cap_height_px = reader.Real();
  measures.glyphs = reader.Int();
  measures.long_lines = reader.Int();
  measures.line_ink = reader.Real();
  measures.text_row_share = reader.Real();
  measures.long_row_share = reader.Real();
  measures.dark_share = reader.Real();
  return measures;
}

// [text, x, y, width, height, turn, confidence, origin, then text and confidence of each alternative].
json WordItem(const Word& word) {
  json::array_t item;
  item.reserve(8 + 2 * word.alternatives.size());
  item.push_back(TextItem(word.text));
  for (const int number : {word.box.x, word.box.y, word.box.width, word.box.height, word.turn}) {
    item.emplace_back(number);
  }
  item.push_back(ConfidenceItem(word.confidence));
  item.emplace_back(static_cast<int>(word.origin));
  for (const Alternative& alternative : word.alternatives) {
    item.push_back(TextItem(alternative.text));
    item.push_back(ConfidenceItem(alternative.confidence));
  }
  return item;
}

Word ReadWord(CborReader& reader) {
  constexpr std::size_t kFixed = 8;
  const std::size_t length = reader.Array();
  if (length < kFixed || length % 2 != 0) reader.Refuse();
  Word word;
  word.text = reader.Text();
  word.box.x = reader.Int();
  word.box.y = reader.Int();
  word.box.width = reader.Int();
  word.box.height = reader.Int();
  word.turn = reader.Int(0, 359);
  word.confidence = reader.Confidence();
  word.origin = static_cast<WordOrigin>(reader.Int(0, static_cast<int>(WordOrigin::kLayer)));
  for (std::size_t i = kFixed; i < length && reader.ok(); i += 2) {
    Alternative alternative;
    alternative.text = reader.Text();
    alternative.confidence = reader.Confidence();
    word.alternatives.push_back(std::move(alternative));
  }
  return word;
}

}  // namespace

json ReadingItem(const PageReading& reading) {
  json::array_t words;
  words.reserve(reading.words.size());
  for (const Word& word : reading.words) words.push_back(WordItem(word));
  return json::array({FrameItem(reading.frame), MeasuresItem(reading.measures), std::move(words)});
}

PageReading ReadReading(CborReader& reader) {
  reader.Array(3);
  PageReading reading;
  reading.frame = ReadFrame(reader);
  reading.measures = ReadMeasures(reader);
  const std::size_t words = reader.Array();
  for (std::size_t i = 0; i < words && reader.ok(); ++i) reading.words.push_back(ReadWord(reader));
  return reading;
}

std::string EncodeReading(const PageReading& reading) { return CborBytes(ReadingItem(reading)); }

Result<PageReading> DecodeReading(std::string_view bytes) {
  CborReader reader(bytes);
  PageReading reading = ReadReading(reader);
  return Decoded(reader, std::move(reading), "reading");
}

Result<PageFrame> DecodeReadingFrame(std::string_view bytes) {
  CborReader reader(bytes);
  reader.Array(3);
  const PageFrame frame = ReadFrame(reader);
  if (!reader.ok()) return Fail(ErrorCode::kDamaged, "the stored reading is damaged");
  return frame;
}

}  // namespace benchleaf
