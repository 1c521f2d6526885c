#include "library/file_names.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

TEST(ReadableNameTest, TurnsFileNamesIntoWords) {
  const struct {
    const char* name;
    const char* readable;
    const char* reason;
  } kCases[] = {
      {"fernwell_210", "fernwell 210", "underscores are spaces"},
      {"fernwell-receiver", "fernwell receiver", "a hyphen between words"},
      {"fernwell-210", "fernwell 210", "a maker's name is no part of a model number"},
      {"fernwell-HR-210", "fernwell HR-210", "a short word and a number are a model number"},
      {"210-B", "210-B", "so are a number and a short word"},
      {"1975-06-30", "1975-06-30", "numbers stay joined"},
      {"fernwell--210", "fernwell 210", "a run of hyphens"},
      {"fernwell - 210", "fernwell 210", "a hyphen that stands free"},
      {"-fernwell_", "fernwell", "at the ends"},
      {"a\tb\x7F\n", "a b", "control characters are no text"},
      {"___", "___", "nothing else is left"},
      {"\xE9l\xE9ment_5", "\xE9l\xE9ment 5", "bytes that are no UTF-8 stay"},
      {"", "", "nothing"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    EXPECT_EQ(ReadableName(c.name), c.readable);
  }
}

TEST(SplitVolumeTest, FindsTheVolumesNumber) {
  const struct {
    const char* name;
    const char* base;
    int number;
    const char* reason;
  } kCases[] = {
      {"fernwell 210 vol 1", "fernwell 210", 1, "words"},
      {"fernwell_210_vol-2", "fernwell_210", 2, "underscores and hyphens"},
      {"fernwell 210 Volume 3", "fernwell 210", 3, "capitals"},
      {"fernwell vol.4", "fernwell", 4, "a point"},
      {"fernwell part 1", "fernwell", 1, "part"},
      {"fernwell bk1", "fernwell", 1, "book, short"},
      {"fernwell-v2", "fernwell", 2, "one letter and the number in one word"},
      {"fernwell (vol 2)", "fernwell", 2, "brackets go with it"},
      {"fernwell (rev 3, vol 2)", "fernwell_(rev 3)", 2, "brackets with more in them stay"},
      {"fernwell-1 of 3", "fernwell", 1, "counted"},
      {"fernwell_2of3", "fernwell", 2, "counted in one word"},
      {"fernwell vol 2 of 3 service", "fernwell_service", 2, "in the middle, and how many there are"},
      {"fernwell volume II", "fernwell", 2, "roman numerals"},
      {"fernwell part x", "fernwell", 10, "the highest roman numeral taken"},
      {"vol 1", "", 1, "nothing else"},
      {"fernwell vol 07", "fernwell", 7, "leading zeros"},
      {"vol 1 part 2", "vol 1", 2, "the last one counts"},
      {"fernwell 210", "fernwell 210", 0, "a model number is no volume"},
      {"fernwell-2", "fernwell-2", 0, "a bare number neither"},
      {"fernwell volt 5", "fernwell volt 5", 0, "another word"},
      {"fernwell 12 V 60 supply", "fernwell 12 V 60 supply", 0, "volts"},
      {"fernwell v2.1", "fernwell v2.1", 0, "a version"},
      {"fernwell part 2104", "fernwell part 2104", 0, "a part's number"},
      {"fernwell vol 0", "fernwell vol 0", 0, "volumes count from 1"},
      {"fernwell bk ii", "fernwell bk ii", 0, "no roman numerals behind short words"},
      {"parts of the set", "parts of the set", 0, "no number at all"},
      {"", "", 0, "nothing"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    const NumberedName split = SplitVolume(c.name);
    EXPECT_EQ(split.number, c.number);
    if (split.number > 0) {
      EXPECT_EQ(ReadableName(split.base), ReadableName(c.base));
    } else {
      EXPECT_EQ(split.base, c.base);
    }
  }
}

TEST(SplitPageTest, FindsThePagesNumber) {
  EXPECT_EQ(SplitPage("fernwell page 12"), (NumberedName{"fernwell", 12}));
  EXPECT_EQ(SplitPage("page-1"), (NumberedName{"", 1}));
  EXPECT_EQ(SplitPage("fernwell_p3"), (NumberedName{"fernwell", 3}));
  EXPECT_EQ(SplitPage("fernwell pages"), (NumberedName{"fernwell pages", 0}));
  EXPECT_EQ(SplitPage("fernwell p 3"), (NumberedName{"fernwell p 3", 0}));
}

TEST(SplitTrailingNumberTest, TakesWhatEndsTheName) {
  EXPECT_EQ(SplitTrailingNumber("scan0012").base, "scan");
  EXPECT_EQ(SplitTrailingNumber("scan-12").base, "scan");
  EXPECT_EQ(SplitTrailingNumber("12").base, "");
  EXPECT_TRUE(SplitTrailingNumber("12").counted);
  EXPECT_FALSE(SplitTrailingNumber("12a").counted);
  EXPECT_FALSE(SplitTrailingNumber("").counted);
}

}  // namespace
}  // namespace benchleaf
