#include "benchleaf/record/json.h"

#include <gtest/gtest.h>

#include <limits>

namespace benchleaf {
namespace {

TEST(JsonTest, WritesEveryKindOnOneLine) {
  struct Case {
    Json value;
    const char* written;
    const char* reason;
  };
  const Case cases[] = {
      {Json(), "null", "nothing"},
      {Json(true), "true", "a bool is no number"},
      {Json(-7), "-7", "integers are plain"},
      {Json(std::int64_t{9'007'199'254'740'993}), "9007199254740993", "not by way of a double"},
      {Json(0.5), "0.5", "no zeros at the end"},
      {Json(3.0), "3", "no point without decimals"},
      {Json(0.12345678), "0.1235", "rounded to four decimals"},
      {Json(-0.00001), "0", "no negative zero"},
      {Json(1e21), "1000000000000000000000", "no exponent"},
      {Json(std::numeric_limits<double>::infinity()), "null", "JSON has no infinity"},
      {Json(std::numeric_limits<double>::quiet_NaN()), "null", "JSON has no NaN"},
      {Json("a \"b\"\\\n\x01"), R"("a \"b\"\\\n\u0001")", "quotes, backslash and control characters (RFC 8259)"},
      {Json("10 \xC2\xB5"
            "F"),
       "\"10 \xC2\xB5"
       "F\"",
       "UTF-8 stays"},
      {Json("a\xFF"
            "b"),
       "\"a\xEF\xBF\xBD"
       "b\"",
       "what is no UTF-8 becomes U+FFFD"},
      {Json("\xC2"), "\"\xEF\xBF\xBD\"", "a cut character"},
      {Json::Array(), "[]", "an empty array"},
      {Json::Object(), "{}", "an empty object"},
      {Json::Array({1, "two", Json::Array({false})}), R"([1,"two",[false]])", "nested"},
  };
  for (const Case& c : cases) EXPECT_EQ(c.value.Dump(), c.written) << c.reason;
}

TEST(JsonTest, EscapesAllThatATerminalWouldObey) {
  EXPECT_EQ(Json("\x1b[2J\x07").Dump(), "\"\\u001b[2J\\u0007\"");
  EXPECT_EQ(Json("a\x7F\xC2\x9B"
                 "31m\xC2\x80\xC2\x9F")
                .Dump(),
            "\"a\\u007f\\u009b31m\\u0080\\u009f\"");
  EXPECT_EQ(Json("\xC2\xA0\xC2\xB5"
                 "F\xC3\x9B")
                .Dump(),
            "\"\xC2\xA0\xC2\xB5"
            "F\xC3\x9B\"")
      << "no controls";
}

TEST(JsonTest, LargestDoubleFits) {
  EXPECT_EQ(Json(-std::numeric_limits<double>::max()).Dump().size(), 310U);  // 309 digits and the sign
}

TEST(JsonTest, KeepsTheOrderOfFieldsAndReplacesInPlace) {
  Json json = Json::Object({{"z", 1}, {"a", 2}});
  json.Set("m", Json::Array());
  json.Set("z", 3);
  EXPECT_EQ(json.Dump(), R"({"z":3,"a":2,"m":[]})");
}

TEST(JsonTest, AddsToArrays) {
  Json json = Json::Array({1});
  json.Add(Json::Object({{"a", 2}}));
  EXPECT_EQ(json.Dump(), R"([1,{"a":2}])");
}

TEST(JsonTest, WritesBoxesAsFourNumbers) {
  EXPECT_EQ(ToJson(FractionBox{0.25, 0, 1, 0.33333}).Dump(), "[0.25,0,1,0.3333]");
}

}  // namespace
}  // namespace benchleaf
