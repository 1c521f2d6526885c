#include "record/cbor_reader.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

using namespace std::string_literals;
using namespace std::string_view_literals;

TEST(CborReaderTest, ReadsItemsInOrder) {
  // RFC 8949, appendix A: [1, "a", h'ff', null, true, -500, 1.1, 100000.0]
  CborReader reader(
      "\x88\x01\x61\x61\x41\xFF\xF6\xF5\x39\x01\xF3\xFB\x3F\xF1\x99\x99\x99\x99\x99\x9A\xFA\x47\xC3\x50\x00"sv);
  reader.Array(8);
  EXPECT_EQ(reader.Int(), 1);
  EXPECT_EQ(reader.Text(), "a");
  EXPECT_EQ(reader.Name(), "\xFF");
  EXPECT_TRUE(reader.Null());
  EXPECT_TRUE(reader.Bool());
  EXPECT_EQ(reader.Int(), -500);
  EXPECT_EQ(reader.Real(), 1.1);
  EXPECT_EQ(reader.Real(), 100000.0);
  EXPECT_TRUE(reader.Done());
}

TEST(CborReaderTest, StaysRefusedAfterAWrongItem) {
  CborReader reader("\x82\x01\x02"sv);
  reader.Array(2);
  EXPECT_EQ(reader.Text(), "");
  EXPECT_FALSE(reader.ok());
  EXPECT_EQ(reader.Int(), 0) << "nothing is read any more";
  EXPECT_FALSE(reader.Done());
}

TEST(CborReaderTest, IsNotDoneWhenSomethingIsLeft) {
  CborReader reader("\x82\x01\x02"sv);
  reader.Array(2);
  reader.Int();
  EXPECT_TRUE(reader.ok());
  EXPECT_FALSE(reader.Done());
}

TEST(CborReaderTest, RefusesArraysThatCannotBe) {
  struct Case {
    std::string bytes;
    const char* reason;
  };
  const Case cases[] = {
      {""s, "nothing"},
      {"\xA1\x61\x61\x01"s, "a map"},
      {"\x9F\x01\xFF"s, "an array of unknown length"},
      {"\x9B\x0F\xFF\xFF\xFF\xFF\xFF\xFF\xFF"s, "an array longer than the bytes"},
      {"\x9B\x0F\xFF"s, "a length that is cut"},
      {"\x9C\x01"s, "a length without meaning"},
      {std::string(1'000'000, '\xC1'), "a million tags"},
      {std::string(1'000'000, '\x5F'), "a million byte strings of unknown length"},
  };
  for (const Case& c : cases) {
    CborReader reader(c.bytes);
    EXPECT_EQ(reader.Array(), 0U) << c.reason;
    EXPECT_FALSE(reader.ok()) << c.reason;
  }
}

TEST(CborReaderTest, RefusesWhatIsOutOfBounds) {
  EXPECT_EQ(CborReader("\x05"sv).Int(0, 5), 5);
  struct Case {
    std::string_view bytes;
    void (*read)(CborReader& reader);
    const char* reason;
  };
  const Case cases[] = {
      {"\x06"sv, [](CborReader& reader) { EXPECT_EQ(reader.Int(0, 5), 0); }, "over the most"},
      {"\x20"sv, [](CborReader& reader) { EXPECT_EQ(reader.Int(0, 5), 0); }, "-1 is under the least"},
      {"\x1B\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF"sv, [](CborReader& reader) { EXPECT_EQ(reader.Int(), 0); },
       "over 63 bits"},
      {"\x3B\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF"sv, [](CborReader& reader) { EXPECT_EQ(reader.Int(), 0); }, "under it"},
      {"\xFA\x7F\x80\x00\x00"sv, [](CborReader& reader) { EXPECT_EQ(reader.Real(), 0); }, "infinity"},
      {"\x61\xFF"sv, [](CborReader& reader) { EXPECT_EQ(reader.Text(), ""); }, "text that is not UTF-8"},
      {"\x7B\x7F\xFF\xFF\xFF\xFF\xFF\xFF\xFF\x61"sv, [](CborReader& reader) { EXPECT_EQ(reader.Text(), ""); },
       "text longer than the bytes"},
      {"\x41\x61"sv, [](CborReader& reader) { EXPECT_EQ(reader.Text(), ""); }, "bytes are no text"},
      {"\x01"sv, [](CborReader& reader) { EXPECT_FALSE(reader.Bool()); }, "a number is no truth"},
  };
  for (const Case& c : cases) {
    CborReader reader(c.bytes);
    c.read(reader);
    EXPECT_FALSE(reader.ok()) << c.reason;
  }
}

}  // namespace
}  // namespace benchleaf
