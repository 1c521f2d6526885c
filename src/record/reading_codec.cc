#include "record/cbor_reader.h"
#include "record/cbor_writer.h"
#include "record/reading_items.h"

#include "benchleaf/record/codec.h"

#include <utility>

namespace benchleaf {

namespace {

void WriteFrame(const PageFrame& frame, CborWriter& writer) {
  writer.Array(8);
  writer.Integer(frame.scan_width);
  writer.Integer(frame.scan_height);
  writer.Real(frame.dpi);
  writer.Integer(frame.orientation);
  writer.Real(frame.scale);
  writer.Real(frame.skew_degrees);
  writer.Integer(frame.level_width);
  writer.Integer(frame.level_height);
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

void WriteMeasures(const PageMeasures& measures, CborWriter& writer) {
  writer.Array(7);
  writer.Real(measures.cap_height_px);
  writer.Integer(measures.glyphs);
  writer.Integer(measures.long_lines);
  writer.Real(measures.line_ink);
  writer.Real(measures.text_row_share);
  writer.Real(measures.long_row_share);
  writer.Real(measures.dark_share);
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

constexpr std::size_t kFixedOfWord = 8;

// [text, x, y, width, height, turn, confidence, origin, then text and confidence of each alternative].
void WriteWord(const Word& word, CborWriter& writer) {
  writer.Array(kFixedOfWord + 2 * word.alternatives.size());
  writer.Text(word.text);
  for (const int number : {word.box.x, word.box.y, word.box.width, word.box.height, word.turn}) writer.Integer(number);
  writer.Confidence(word.confidence);
  writer.Integer(static_cast<int>(word.origin));
  for (const Alternative& alternative : word.alternatives) {
    writer.Text(alternative.text);
    writer.Confidence(alternative.confidence);
  }
}

Word ReadWord(CborReader& reader) {
  const std::size_t length = reader.Array();
  if (length < kFixedOfWord || length % 2 != 0) reader.Refuse();
  Word word;
  word.text = reader.Text();
  word.box.x = reader.Int();
  word.box.y = reader.Int();
  word.box.width = reader.Int();
  word.box.height = reader.Int();
  word.turn = reader.Int(0, 359);
  word.confidence = reader.Confidence();
  word.origin = static_cast<WordOrigin>(reader.Int(0, static_cast<int>(WordOrigin::kLayer)));
  for (std::size_t i = kFixedOfWord; i < length && reader.ok(); i += 2) {
    Alternative alternative;
    alternative.text = reader.Text();
    alternative.confidence = reader.Confidence();
    word.alternatives.push_back(std::move(alternative));
  }
  return word;
}

}  // namespace

void WriteReading(const PageReading& reading, CborWriter& writer) {
  writer.Array(3);
  WriteFrame(reading.frame, writer);
  WriteMeasures(reading.measures, writer);
  writer.Array(reading.words.size());
  for (const Word& word : reading.words) WriteWord(word, writer);
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

std::string EncodeReading(const PageReading& reading) {
  CborWriter writer;
  WriteReading(reading, writer);
  return writer.Take();
}

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
