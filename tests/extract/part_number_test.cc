#include "extract/part_number.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <cstddef>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

TEST(SureOfPartNumber, KnowsFormsThatCanBeNothingElse) {
  // NATO stock number: ACodP-1. MIL-R-11, MIL-R-10509, MIL-C-5 for the coded ones. The dashed one: common practice.
  for (const char* text : {"5905-00-104-8350", "RC20GF102J", "RN60D1002F", "CM05F101J03", "210-0043-00"}) {
    EXPECT_GT(SureOfPartNumber(text, Tables(), PartPlace::kAnywhere), 0.5) << text;
  }
}

TEST(SureOfPartNumber, BelievesLooserFormsOnlyInLists) {
  for (const char* text : {"74-1032", "A-12345", "970142", "21C1032", "R-1234"}) {
    EXPECT_EQ(SureOfPartNumber(text, Tables(), PartPlace::kAnywhere), 0) << text;
    EXPECT_GT(SureOfPartNumber(text, Tables(), PartPlace::kList), 0.5) << text;
  }
}

TEST(SureOfPartNumber, RefusesOthers) {
  for (const char* text : {"R12", "8-17", "12AX7", "470K", "KNOB", "", "600", "1-2-3"}) {
    EXPECT_EQ(SureOfPartNumber(text, Tables(), PartPlace::kList), 0) << text;
  }
}

TEST(FittedToShape, PutsRightWhatOthersOfTheColumnShow) {
  const struct {
    const char* read;
    const char* shape;
    const char* right;
    const char* reason;
  } kCases[] = {
      {"74-1O32-5", "99-9999-9", "74-1032-5", "a ring for a nought"},
      {"74-I032-5", "99-9999-9", "74-1032-5", "a stroke for a one"},
      {"741032-5", "99-9999-9", "74-1032-5", "a lost dash"},
      {"74-1032--5", "99-9999-9", "74-1032-5", "a doubled dash"},
      {"174-1032-5", "99-9999-9", "74-1032-5", "a ruled line read as a one"},
      {"2CA7689", "99A9999", "", "a letter that is no look-alike of a figure"},
      {"20A76B9", "99A9999", "20A7689", "a B for an 8"},
      {"8-12345", "A-99999", "B-12345", "an 8 for a B"},
      {"KNOB", "99-9999", "", "a word"},
      {"", "99", "", "empty"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(FittedToShape(one.read, one.shape, Tables()), one.right) << one.read << ": " << one.reason;
  }
}

TEST(WithNoughts, TakesNoRingBesideAFigureForALetter) {
  EXPECT_EQ(WithNoughts("2OA0522"), "20A0522");
  EXPECT_EQ(WithNoughts("KMO1-744"), "KM01-744");
  EXPECT_EQ(WithNoughts("1OO2"), "1002");
  EXPECT_EQ(WithNoughts("CO-1234"), "CO-1234");
  EXPECT_EQ(WithNoughts(""), "");
}

TEST(ShapeOf, KeepsSigns) { EXPECT_EQ(ShapeOf("RC20-4/b"), "AA99-9/A"); }

TEST(LeastFigures, AreNeverTooMany) {
  struct Case {
    const char* pattern;
    std::size_t figures;
    const char* reason;
  };
  const Case cases[] = {
      {"[0-9]{4}-[0-9]{2}", 6, "counted"},
      {"[0-9]{2,5}-[0-9]", 3, "the fewest"},
      {"[A-Z]{1,3}-[0-9]{3}(-[0-9]{1,4})?[A-Z]?", 3, "brackets may be left out"},
      {"[0-9]?[0-9]*[0-9]+", 1, "only the last must be there"},
      {"[0-9]{3}|[A-Z]+", 0, "one or the other"},
      {"RC[0-9R]{3}", 0, "not only figures"},
      {"\\[0-9]", 0, "a bracket that stands for itself"},
      {"[(][0-9]", 1, "a bracket within a class opens none"},
      {"[A-", 0, "not whole"},
  };
  for (const Case& c : cases) {
    EXPECT_EQ(LeastFigures(c.pattern), c.figures) << c.pattern << ": " << c.reason;
  }
}

}  // namespace
}  // namespace benchleaf::extract
