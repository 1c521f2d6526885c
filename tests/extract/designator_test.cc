#include "extract/designator.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

TEST(ParseDesignator, KnowsTheClassesOfTheStandard) {
  // IEEE 315-1975, clause 22.4: class designation letters, one example each.
  for (const char* text :
       {"A1",  "AR2", "AT1", "B1",   "BT1", "C12", "CB1", "CP3",  "CR4", "D5",  "DC1", "DL1", "DS2", "E7",
        "EQ1", "F1",  "FL2", "G1",   "H4",  "HR1", "HS1", "HT1",  "HY2", "J15", "K3",  "L9",  "LS1", "M1",
        "MG1", "MK1", "MP8", "P2",   "PS1", "PU1", "Q17", "R101", "RE1", "RT3", "RV1", "S5",  "SQ1", "SR1",
        "T6",  "TB2", "TC1", "TP11", "TR1", "U8",  "V20", "VR1",  "W12", "XF1", "XV4", "Y1",  "Z3"}) {
    const auto designator = ParseDesignator(text, Tables());
    ASSERT_TRUE(designator.has_value()) << text;
    EXPECT_EQ(designator->Text(), text);
    EXPECT_GT(designator->sure, 0.5) << text;
  }
}

TEST(ParseDesignator, KnowsOlderPractice) {
  // Common practice in older sets, no source.
  for (const char* text : {"PL1", "SW2", "I1", "FB3", "IC4", "RFC1", "SO2", "PC1", "VC1", "TH1", "CV1", "MR2", "SR1",
                           "POT3", "TS1", "SKT2", "RECT1", "SCR1", "FS1"}) {
    EXPECT_TRUE(ParseDesignator(text, Tables()).has_value()) << text;
  }
}

TEST(ParseDesignator, TakesAssembliesInFrontAndSectionsBehind) {
  // ASME Y14.44-2008: unit, assembly and subassembly designators stand in front of the part's own.
  const struct {
    const char* text;
    const char* assembly;
    const char* letters;
    const char* number;
    const char* suffix;
  } kCases[] = {
      {"A4C12", "A4", "C", "12", ""},  {"A1A2R3", "A1A2", "R", "3", ""}, {"A12TP4", "A12", "TP", "4", ""},
      {"A4-C12", "A4", "C", "12", ""}, {"C1A", "", "C", "1", "A"},       {"A2S1B", "A2", "S", "1", "B"},
      {"A4", "", "A", "4", ""},        {"A4B", "", "A", "4", "B"},       {"A1A2", "A1", "A", "2", ""},
      {"R1042", "", "R", "1042", ""},
  };
  for (const auto& one : kCases) {
    const auto designator = ParseDesignator(one.text, Tables());
    ASSERT_TRUE(designator.has_value()) << one.text;
    EXPECT_EQ(designator->assembly, one.assembly) << one.text;
    EXPECT_EQ(designator->letters, one.letters) << one.text;
    EXPECT_EQ(designator->number, one.number) << one.text;
    EXPECT_EQ(designator->suffix, one.suffix) << one.text;
  }
}

TEST(ParseDesignator, RefusesWhatIsNone) {
  const struct {
    const char* text;
    const char* reason;
  } kCases[] = {
      {"101", "a number alone is never a designator"},
      {"R", "no number"},
      {"QX5", "no class"},
      {"GND1", "no class"},
      {"R12345", "five figures"},
      {"R0", "numbers begin at 1"},
      {"R-1234", "a part number"},
      {"C1AB", "two suffix letters"},
      {"r12", "small letters need repair"},
      {"6AU6", "a tube"},
      {"4K7", "a value"},
      {"", "empty"},
      {"A", "no number"},
      {"A4A", "a suffix, not an assembly"},
  };
  for (const auto& one : kCases) {
    const auto designator = ParseDesignator(one.text, Tables());
    if (std::string(one.text) == "A4A") {
      ASSERT_TRUE(designator.has_value());
      EXPECT_EQ(designator->suffix, "A") << one.reason;
    } else {
      EXPECT_FALSE(designator.has_value()) << one.text << ": " << one.reason;
    }
  }
}

TEST(RepairDesignator, PutsRightWhatCanBeNothingElse) {
  const struct {
    const char* read;
    const char* right;
    const char* reason;
  } kCases[] = {
      {"Ri7", "R17", "a stroke for a 1"},
      {"Rl7", "R17", "a stroke for a 1"},
      {"R|7", "R17", "a stroke for a 1"},
      {"$2", "S2", "no other class looks like it"},
      {"v20", "V20", "small letter"},
      {"c12", "C12", "small letter"},
      {"R1O1", "R101", "a ring between figures"},
      {"R1o", "R10", "a ring at the end"},
      {"C1l2", "C112", "a stroke between figures"},
      {"R1Z3", "R123", "a Z between figures"},
      {"R1S", "R15", "S is no suffix in use"},
      {"C1S4", "C154", "an S between figures"},
      {"R1B2", "R182", "a B between figures"},
      {"\u20ac4", "C4", "struck-through C"},
      {"R17", "R17", "right already"},
  };
  for (const auto& one : kCases) {
    const auto repaired = RepairDesignator(one.read, Tables(), LoneStrokes::kRefuse);
    ASSERT_TRUE(repaired.has_value()) << one.read << ": " << one.reason;
    EXPECT_EQ(repaired->Text(), one.right) << one.reason;
    EXPECT_LE(repaired->sure, ParseDesignator(one.right, Tables())->sure);
  }
}

TEST(RepairDesignator, LeavesOutAStrokeBeforeTheDesignator) {
  const auto repaired = [](const char* read) {
    const auto designator = RepairDesignator(read, Tables(), LoneStrokes::kRefuse);
    return designator ? designator->Text() : std::string();
  };
  EXPECT_EQ(repaired("JC14"), "C14");
  EXPECT_EQ(repaired("VL1"), "L1");
  EXPECT_EQ(repaired("/C7"), "C7");
  EXPECT_EQ(repaired("VR5"), "VR5") << "a regulator";
  EXPECT_EQ(repaired("WC14"), "") << "no stroke looks like a W";
  EXPECT_EQ(repaired("JH4"), "") << "hardware is no part of drawings";
}

TEST(RepairDesignator, IsLessSureWithEachRepair) {
  const auto sure = [](const char* text) { return RepairDesignator(text, Tables(), LoneStrokes::kRefuse)->sure; };
  EXPECT_GT(sure("R111"), sure("Rl11"));
  EXPECT_GT(sure("Rl11"), sure("Rll1"));
  EXPECT_GT(sure("R1O1"), sure("R1S1"));
}

TEST(RepairDesignator, TakesNumbersOfStrokesAloneOnlyWhereAllowed) {
  for (const char* word : {"RIO", "CI", "RII"}) {
    EXPECT_FALSE(RepairDesignator(word, Tables(), LoneStrokes::kRefuse).has_value()) << word;
    EXPECT_TRUE(RepairDesignator(word, Tables(), LoneStrokes::kAllow).has_value()) << word;
  }
  EXPECT_EQ(RepairDesignator("RIO", Tables(), LoneStrokes::kAllow)->Text(), "R10");
  EXPECT_FALSE(RepairDesignator("ci", Tables(), LoneStrokes::kAllow).has_value());
  EXPECT_EQ(RepairDesignator("ci", Tables(), LoneStrokes::kAllowSmall)->Text(), "C1");
}

TEST(RepairDesignator, LeavesWordsAlone) {
  for (const char* word : {"TO", "SO", "DO",  "IS", "COIL", "SOIL", "BASE", "GRID", "OHM", "SIG", "IF",
                           "RF", "AC", "VOL", "12", "101",  "IOO",  "is",   "R-12", "?!",  "C0"}) {
    EXPECT_FALSE(RepairDesignator(word, Tables(), LoneStrokes::kRefuse).has_value()) << word;
    EXPECT_FALSE(RepairDesignator(word, Tables(), LoneStrokes::kAllow).has_value()) << word;
  }
}

}  // namespace
}  // namespace benchleaf::extract
