#include "extract/tube_type.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

std::string Type(const std::string& text, TubeContext context = TubeContext::kNone) {
  const auto tube = ParseTubeType(text, ShippedRules().tables(), context);
  return tube ? tube->type : "-";
}

TEST(ParseTubeType, ReadsReceivingTypes) {
  // RETMA/EIA type designation: heater volts, letters, elements, suffixes. Types from receiving tube manuals.
  for (const char* type :
       {"6CB6",    "6CB6A",   "12AX7", "6SN7GTB", "5U4GB", "50C5", "35W4",  "117Z3", "6BQ6GTB", "6AF11", "6X4W",
        "12AX7WA", "5Y3WGTA", "6J6",   "1B3GT",   "7N7",   "14F7", "6SJ7Y", "6C4",   "3V4",     "19AU4"}) {
    EXPECT_EQ(Type(type), type);
  }
}

TEST(ParseTubeType, ReadsUnknownTypesOfTheRightForm) {
  EXPECT_EQ(Type("6QZ9"), "6QZ9");
  EXPECT_LT(ParseTubeType("6QZ9", ShippedRules().tables(), TubeContext::kNone)->sure, 0.8);
}

TEST(ParseTubeType, ReadsPictureAndOscilloscopeTubes) {
  // JEDEC/EIA cathode-ray tube designation: size, letters, P and phosphor.
  for (const char* type : {"10BP4", "21ZP4A", "5UP1", "3RP1A", "17AVP4", "19VBP22"}) {
    EXPECT_EQ(Type(type), type);
  }
}

TEST(ParseTubeType, ReadsProElectronTypes) {
  // Pro Electron and earlier European designation.
  for (const char* type :
       {"EL84", "PCL82", "ECC83", "EF80", "EZ81", "GZ34", "E88CC", "UABC80", "PL81", "KT88", "EQ80"}) {
    EXPECT_EQ(Type(type), type);
  }
  EXPECT_EQ(Type("EL-84"), "EL84") << "some print a dash inside";
}

TEST(ParseTubeType, WritesVoltageRegulatorsWithANought) {
  EXPECT_EQ(Type("OA2"), "0A2");
  EXPECT_EQ(Type("0A2"), "0A2");
  EXPECT_EQ(Type("OD3"), "0D3");
}

TEST(ParseTubeType, GivesTheTypeWithoutWhatStandsInFront) {
  EXPECT_EQ(Type("1/2-12AU7"), "12AU7");
  EXPECT_EQ(Type("1/26SN7GTB"), "6SN7GTB");
  EXPECT_EQ(Type("JAN-6AU6"), "6AU6");
  EXPECT_EQ(Type("JAN6SN7GT"), "6SN7GT");
}

TEST(ParseTubeType, ReadsTwoNamesOfOneTube) {
  EXPECT_EQ(Type("12AX7A/ECC83"), "12AX7A/ECC83");
  EXPECT_EQ(Type("6BQ6GTB/6CU6"), "6BQ6GTB/6CU6");
  EXPECT_EQ(Type("6J5GT/G"), "6J5GT/G") << "one name: G is a bulb";
  EXPECT_EQ(Type("R1/C5"), "-");
}

TEST(ParseTubeType, TakesBareNumbersOnlyNearATube) {
  for (const char* type : {"80", "27", "01A", "5725", "807", "6550"}) {
    EXPECT_EQ(Type(type), "-") << type;
    EXPECT_EQ(Type(type, TubeContext::kTube), type);
  }
  EXPECT_EQ(Type("5751WA"), "5751WA") << "a known number with its suffix needs no context";
  EXPECT_EQ(Type("1032", TubeContext::kTube), "-") << "no such type";
}

TEST(ParseTubeType, ReadsServiceNumbers) {
  EXPECT_EQ(Type("VT-52"), "VT52");
  EXPECT_EQ(Type("VT52"), "-") << "may as well be a designator";
  EXPECT_EQ(Type("CV4024"), "CV4024");
  EXPECT_EQ(Type("UX-245"), "UX245");
}

TEST(ParseTubeType, LooksPastCharactersThatScansConfuse) {
  EXPECT_EQ(Type("I2AX7"), "12AX7");
  EXPECT_EQ(Type("SU4GB"), "5U4GB");
  EXPECT_EQ(Type("6ALS"), "6AL5");
}

TEST(ParseTubeType, RefusesWhatIsNoTube) {
  const struct {
    const char* text;
    const char* reason;
  } kCases[] = {
      {"4K7", "a value"},
      {"2N2222", "a transistor"},
      {"1N34A", "a diode"},
      {"R12", "a designator"},
      {"C6", "a designator"},
      {"600V", "a value"},
      {"74-1032", "a part number"},
      {"1Y2", "a pin"},
      {"GAUG", "no figures"},
      {"6IO7", "the letters I and O are not used"},
      {"", "empty"},
      {"A", "too short"},
      {"/////////", "signs"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Type(one.text), "-") << one.text << ": " << one.reason;
  }
}

TEST(ParseTubeType, ReadsTypesAsManualsPrintThem) {
  // Forms of manuals of 1958 to 1985; types of receiving tube manuals; common practice, no source.
  const struct {
    const char* text;
    const char* type;
    const char* reason;
  } kCases[] = {
      {"1/212AX7", "12AX7", "one section, written on"},
      {"1/2-6SN7GTB", "6SN7GTB", "one section, with a dash"},
      {"(1/2)12AU7A", "12AU7A", "one section, in brackets"},
      {"I/26AL5", "6AL5", "the one read as a letter"},
      {"1/36AG11", "6AG11", "one of three sections"},
      {"12AX7/ECC83", "12AX7/ECC83", "American and European name"},
      {"EL84/6BQ5", "EL84/6BQ5", "the other way round"},
      {"6L6GC/7581", "6L6GC/7581", "the number is known for a tube by the other name"},
      {"12AX7A/ECC83/7025", "12AX7A/ECC83/7025", "three names"},
      {"EL-84", "EL84", "dash inside"},
      {"ECC-83", "ECC83", "dash inside"},
      {"PCL-82", "PCL82", "dash inside"},
      {"JAN-5814A", "5814A", "service mark"},
      {"JAN-CXX-6AU6WA", "6AU6WA", "service mark with the manufacturer's letters"},
      {"VT-231", "VT231", "service number"},
      {"CV4024", "CV4024", "service number"},
      {"10BP4", "10BP4", "picture tube"},
      {"21ZP4A", "21ZP4A", "picture tube"},
      {"7A8", "7A8", "loktal"},
      {"14Q7", "14Q7", "loktal"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Type(one.text), one.type) << one.text << ": " << one.reason;
  }
}

TEST(ParseTubeType, RepairsWhatCanBeOneKnownTypeOnly) {
  const struct {
    const char* read;
    const char* type;
    const char* reason;
  } kCases[] = {
      {"6AUG", "6AU6", "no type ends in letters alone"},
      {"I2AX7", "12AX7", "no type begins with I"},
      {"SU4GB", "5U4GB", "no American type begins with S"},
      {"6C86", "6CB6", "86 elements is no type"},
      {"6SN7GT8", "6SN7GTB", "the suffix is a letter"},
      {"6BQ7A", "6BQ7A", "right already"},
      {"l2AU7", "12AU7", "a small l for the one"},
      {"6AL5W", "6AL5W", "right already"},
      {"SY3GT", "5Y3GT", "S for 5"},
      {"S0C5", "50C5", "two characters, and still but one type"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Type(one.read), one.type) << one.read << ": " << one.reason;
  }
}

TEST(ParseTubeType, SaysWhatItRepaired) {
  const auto sure = [](const char* text) { return ParseTubeType(text, ShippedRules().tables(), TubeContext::kNone); };
  EXPECT_FALSE(sure("6AU6")->repaired);
  EXPECT_TRUE(sure("6AUG")->repaired);
  EXPECT_GT(sure("6AU6")->sure, sure("6AUG")->sure);
  EXPECT_GT(sure("I2AX7")->sure, sure("S0C5")->sure) << "fewer changes";
}

}  // namespace
}  // namespace benchleaf::extract
