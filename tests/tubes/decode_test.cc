#include "benchleaf/tubes/decode.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

// The meanings of all parts with the parts before them: "6: heater ...; CB: order ...".
std::string Read(const std::string& text) {
  std::string read;
  for (const TypePart& part : DecodeTubeType(text).parts) {
    read += (read.empty() ? "" : "; ") + part.text + ": " + part.meaning;
  }
  return read;
}

TEST(DecodeTubeType, KnowsWhoGaveTheNumberOut) {
  const struct {
    const char* type;
    TypeSystem system;
  } kCases[] = {
      {"6CB6", TypeSystem::kReceiving},
      {"6QZ9", TypeSystem::kReceiving},
      {"6SN7GTB", TypeSystem::kReceiving},
      {"6J5GT/G", TypeSystem::kReceiving},
      {"117Z3", TypeSystem::kReceiving},
      {"6AF11", TypeSystem::kReceiving},
      {"0A2", TypeSystem::kReceiving},
      {"1A4P", TypeSystem::kReceiving},
      {"10BP4", TypeSystem::kCathodeRay},
      {"5UP1", TypeSystem::kCathodeRay},
      {"21FBP22A", TypeSystem::kCathodeRay},
      {"2D21", TypeSystem::kPowerClass},
      {"2C51", TypeSystem::kPowerClass},
      {"5751", TypeSystem::kIndustrial},
      {"5751WA", TypeSystem::kIndustrial},
      {"80", TypeSystem::kBareNumber},
      {"01A", TypeSystem::kBareNumber},
      {"807", TypeSystem::kBareNumber},
      {"2050", TypeSystem::kBareNumber},
      {"ECC83", TypeSystem::kEuropean},
      {"E88CC", TypeSystem::kEuropean},
      {"EL3N", TypeSystem::kEuropean},
      {"UABC80", TypeSystem::kEuropean},
      {"CY1", TypeSystem::kEuropean},
      {"A59-11W", TypeSystem::kEuropeanScreen},
      {"AW53-80", TypeSystem::kEuropeanScreen},
      {"DG7-32", TypeSystem::kEuropeanScreen},
      {"85A2", TypeSystem::kEuropeanGas},
      {"150B2", TypeSystem::kEuropeanGas},
      {"QQE03/12", TypeSystem::kEuropeanTransmit},
      {"QQV03-10", TypeSystem::kEuropeanTransmit},
      {"VT-231", TypeSystem::kService},
      {"CV4024", TypeSystem::kService},
      {"VR150", TypeSystem::kService},
      {"UX-245", TypeSystem::kService},
      {"KT66", TypeSystem::kUnknown},
  };
  for (const auto& one : kCases) EXPECT_EQ(DecodeTubeType(one.type).system, one.system) << one.type;
}

TEST(DecodeTubeType, ReadsReceivingTypes) {
  EXPECT_EQ(Read("6CB6"),
            "6: heater of about 6 V, nearly always 6.3 V; CB: order of registration, says nothing of the tube; "
            "6: 6 elements with a connection, the heater counted as one");
  EXPECT_THAT(Read("6SN7GTB"), HasSubstr("GT: glass in a small straight bulb with an octal base; B: revision B"));
  EXPECT_THAT(Read("6SK7"), HasSubstr("no top cap"));
  EXPECT_THAT(Read("1LA4"), HasSubstr("lock-in base"));
  EXPECT_THAT(Read("6AU6WA"), HasSubstr("W: made to military specifications"));
  EXPECT_EQ(DecodeTubeType("OA2").type, "0A2");
  EXPECT_EQ(DecodeTubeType("12ax7a/ecc83").type, "12AX7A");
  EXPECT_EQ(DecodeTubeType("JAN-CXX-6AU6WA").type, "6AU6WA");
}

// The first figure tells a heater voltage, but not that of every type to the tenth: RETMA ET-109-A, from memory.
TEST(DecodeTubeType, GivesTheVoltsThatTheFigureAllows) {
  const struct {
    const char* type;
    double low;
    double high;
    const char* why;
  } kCases[] = {
      {"0A2", 0, 0, "cold cathode"},
      {"1R5", 0.1, 2.1, "1.4 V and 2 V types both begin with 1"},
      {"5U8", 4.5, 5.9, "rectifiers of 5.0 V, strings of 4.7 V"},
      {"6CB6", 5.5, 6.9, "6.3 V"},
      {"17AX4GT", 16.5, 17.9, "16.8 V"},
      {"7A7", 6.3, 7, "a lock-in type called 7 V"},
      {"14F7", 12.6, 14, "a lock-in type called 14 V"},
      {"7DJ8", 6.3, 7.9, "two letters: lock-in or not"},
  };
  for (const auto& one : kCases) {
    const DecodedType decoded = DecodeTubeType(one.type);
    ASSERT_TRUE(decoded.heater_volts) << one.type;
    EXPECT_DOUBLE_EQ(decoded.heater_volts->low, one.low) << one.type << ": " << one.why;
    EXPECT_DOUBLE_EQ(decoded.heater_volts->high, one.high) << one.type << ": " << one.why;
  }
  EXPECT_FALSE(DecodeTubeType("80").heater_volts) << "numbers before 1933 do not say";
  EXPECT_FALSE(DecodeTubeType("10BP4").heater_volts) << "10 is inches";
  EXPECT_FALSE(DecodeTubeType("2D21").heater_volts) << "2 is the power";
}

TEST(DecodeTubeType, ReadsPictureTubes) {
  EXPECT_EQ(Read("21ZP4"),
            "21: screen of about 21 inches: diameter, or diagonal of a rectangular one; "
            "Z: order of registration, says nothing of the tube; P4: phosphor: white: television");
  EXPECT_THAT(Read("5UP7"), HasSubstr("radar"));
  EXPECT_THAT(Read("A59-11W"), HasSubstr("59: screen of 59 cm"));
  EXPECT_THAT(Read("AW53-80"), HasSubstr("A: electrostatic focus, magnetic deflection; W: white: television; 53:"));
}

TEST(DecodeTubeType, ReadsEuropeanTypes) {
  EXPECT_EQ(Read("ECC83"), "E: heater of 6.3 V; C: triode; C: triode; 83: base: noval; order of registration");
  EXPECT_THAT(Read("E88CC"), HasSubstr("special quality"));
  EXPECT_DOUBLE_EQ(DecodeTubeType("PCL82").heater_amps.value_or(0), 0.3);
  EXPECT_DOUBLE_EQ(DecodeTubeType("UY85").heater_amps.value_or(0), 0.1);
  EXPECT_DOUBLE_EQ(DecodeTubeType("EL84").heater_volts->high, 6.3);
}

TEST(DecodeTubeType, TellsTheBaseOnlyWhereTheNumberDoes) {
  const struct {
    const char* type;
    const char* base;
  } kCases[] = {
      {"ECC83", "noval"},
      {"EF183", "noval"},
      {"EL90", "7-pin miniature"},
      {"EC900", "7-pin miniature"},
      {"EL34", "octal"},
      {"ECH42", "rimlock"},
      {"EL12", "8-pin steel"},
      {"EL3N", "side-contact"},
      {"PL504", "magnoval"},
      {"ECF200", "decal"},
      {"E180F", "noval"},
      {"E130L", "octal"},
      {"EF50", ""},
      {"UCH21", ""},
      {"6SN7GT", "octal"},
      {"7A7", "loktal"},
      {"1LA6", "loktal"},
      {"6CB6", ""},
      {"6L6", ""},
  };
  for (const auto& one : kCases) EXPECT_EQ(DecodeTubeType(one.type).base, one.base) << one.type;
}

TEST(DecodeTubeType, SaysWhatItDoesNotKnow) {
  EXPECT_TRUE(DecodeTubeType("6QZ9").complete) << "an unknown type of the right form";
  EXPECT_FALSE(DecodeTubeType("2R21").complete);
  EXPECT_THAT(Read("2R21"), HasSubstr("R: not known to us"));
  for (const char* text :
       {"", " ", "KT88", "Q", "/", "-", "6", "R12", "2N2222", "\xff\xfe", "///", "99999999999999999999AB9", "A-B-C"}) {
    const DecodedType decoded = DecodeTubeType(text);
    EXPECT_FALSE(decoded.complete) << text;
    EXPECT_EQ(decoded.system, TypeSystem::kUnknown) << text;
    EXPECT_THAT(decoded.parts, IsEmpty()) << text;
  }
}

}  // namespace
}  // namespace benchleaf
