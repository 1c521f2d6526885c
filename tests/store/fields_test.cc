#include "store/fields.h"

#include <gtest/gtest.h>
#include <xapian.h>

#include <limits>
#include <string>

namespace benchleaf::store {
namespace {

TEST(FieldsTest, ComeBackInOrder) {
  FieldWriter writer;
  const std::uint64_t numbers[] = {0, 1, 127, 128, 300, std::numeric_limits<std::uint64_t>::max()};
  for (const std::uint64_t number : numbers) writer.Number(number);
  writer.Text("");
  writer.Text(std::string(1000, '\0'));
  const std::string data = writer.Take();

  FieldReader reader(data);
  for (const std::uint64_t number : numbers) EXPECT_EQ(reader.Number(), number);
  EXPECT_EQ(reader.Text(), "");
  EXPECT_EQ(reader.Text(), std::string(1000, '\0'));
}

TEST(FieldsTest, RefuseWhatIsNotThere) {
  EXPECT_THROW(FieldReader("").Number(), Xapian::DatabaseCorruptError);
  EXPECT_THROW(FieldReader("\x80").Number(), Xapian::DatabaseCorruptError) << "a number that is cut";
  EXPECT_THROW(FieldReader(std::string(20, '\xFF')).Number(), Xapian::DatabaseCorruptError) << "a number too long";
  EXPECT_THROW(FieldReader("\x05"
                           "abc")
                   .Text(),
               Xapian::DatabaseCorruptError)
      << "a text longer than the data";
  EXPECT_THROW(FieldReader("\x05").Number(4), Xapian::DatabaseCorruptError) << "over the most";
  EXPECT_THROW(FieldReader("\x7F"
                           "ab")
                   .Count(),
               Xapian::DatabaseCorruptError)
      << "more things than bytes";
}

}  // namespace
}  // namespace benchleaf::store
