#include "record/cbor_writer.h"

#include "record/cbor_reader.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <limits>

namespace benchleaf {
namespace {

using namespace std::string_literals;

TEST(CborWriterTest, WritesWholeNumbersInTheirShortestForm) {
  struct Case {
    std::int64_t number;
    std::string bytes;
  };
  // RFC 8949, appendix A.
  const Case cases[] = {
      {0, "\x00"s},
      {23, "\x17"s},
      {24, "\x18\x18"s},
      {100, "\x18\x64"s},
      {255, "\x18\xFF"s},
      {256, "\x19\x01\x00"s},
      {1000, "\x19\x03\xE8"s},
      {65535, "\x19\xFF\xFF"s},
      {1000000, "\x1A\x00\x0F\x42\x40"s},
      {4294967296, "\x1B\x00\x00\x00\x01\x00\x00\x00\x00"s},
      {1000000000000, "\x1B\x00\x00\x00\xE8\xD4\xA5\x10\x00"s},
      {std::numeric_limits<std::int64_t>::max(), "\x1B\x7F\xFF\xFF\xFF\xFF\xFF\xFF\xFF"s},
      {-1, "\x20"s},
      {-10, "\x29"s},
      {-100, "\x38\x63"s},
      {-1000, "\x39\x03\xE7"s},
      {std::numeric_limits<std::int64_t>::min(), "\x3B\x7F\xFF\xFF\xFF\xFF\xFF\xFF\xFF"s},
  };
  for (const Case& c : cases) {
    CborWriter writer;
    writer.Integer(c.number);
    EXPECT_EQ(writer.Take(), c.bytes) << c.number;
  }
}

TEST(CborWriterTest, WritesRealNumbersInHalfTheBytesWhereTheseHoldThem) {
  struct Case {
    double value;
    std::string bytes;
    const char* reason;
  };
  const Case cases[] = {
      {100000.0, "\xFA\x47\xC3\x50\x00"s, "RFC 8949, appendix A"},
      {3.4028234663852886e+38, "\xFA\x7F\x7F\xFF\xFF"s, "the same; the largest of single precision"},
      {1.1, "\xFB\x3F\xF1\x99\x99\x99\x99\x99\x9A"s, "the same; not exact in single precision"},
      {1.0e+300, "\xFB\x7E\x37\xE4\x3C\x88\x00\x75\x9C"s, "the same; too large for single precision"},
      {-4.1, "\xFB\xC0\x10\x66\x66\x66\x66\x66\x66"s, "the same; negative"},
      {0.0, "\xFA\x00\x00\x00\x00"s, "nothing"},
      {std::nan(""), "\xFA\x00\x00\x00\x00"s, "no number is kept as 0"},
      {std::numeric_limits<double>::infinity(), "\xFA\x00\x00\x00\x00"s, "nor is what is not finite"},
  };
  for (const Case& c : cases) {
    CborWriter writer;
    writer.Real(c.value);
    EXPECT_EQ(writer.Take(), c.bytes) << c.reason;
  }
}

TEST(CborWriterTest, CutsConfidencesToTheirRange) {
  CborWriter writer;
  for (const double confidence : {-0.5, 0.12346, 7.0, std::nan("")}) writer.Confidence(confidence);
  EXPECT_EQ(writer.Take(), "\x00\x19\x04\xD3\x19\x27\x10\x00"s) << "0, 1235 ten-thousandths, all of them, 0";
}

TEST(CborWriterTest, MendsTextsAndKeepsNames) {
  CborWriter writer;
  writer.Text("a\xFFz");
  writer.Name("a\xFFz");
  writer.Name("\xC3\xBC");
  EXPECT_EQ(writer.Take(), "\x65\x61\xEF\xBF\xBD\x7A\x43\x61\xFF\x7A\x62\xC3\xBC"s)
      << "a text with U+FFFD, a byte string, a text";
}

TEST(CborWriterTest, WritesWhatTheReaderReads) {
  const FractionBox box{0.25, 0.5, 0.125, 1};
  const std::optional<Error> failure = Error{ErrorCode::kDamaged, "cut short", "a/b.pdf", 3};
  CborWriter writer;
  writer.Array(8);
  writer.Integer(-500);
  writer.Real(1.1);
  writer.Bool(true);
  writer.Null();
  writer.Text(std::string(300, 'x'));
  writer.Box(box);
  writer.Failure(failure);
  writer.Failure(std::nullopt);

  const std::string bytes = writer.Take();
  CborReader reader(bytes);
  reader.Array(8);
  EXPECT_EQ(reader.Int(), -500);
  EXPECT_EQ(reader.Real(), 1.1);
  EXPECT_TRUE(reader.Bool());
  EXPECT_TRUE(reader.Null());
  EXPECT_EQ(reader.Text(), std::string(300, 'x'));
  EXPECT_EQ(reader.Box(), box);
  EXPECT_EQ(reader.Failure(), failure);
  EXPECT_EQ(reader.Failure(), std::nullopt);
  EXPECT_TRUE(reader.Done());
}

}  // namespace
}  // namespace benchleaf
