#include "benchleaf/lineup/tube_functions.h"

#include "lineup/shipped_tables.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace benchleaf {
namespace {

std::string Found(const std::string& text) {
  std::string found;
  for (const FunctionFound& one : ShippedFunctions().Find(FunctionWords(text))) {
    found += (found.empty() ? "" : " + ") + one.function;
  }
  return found;
}

TEST(TubeFunctions, FindWhatManualsCallAStage) {
  const struct {
    const char* text;
    const char* found;
    const char* why;
  } kCases[] = {
      {"I.F. AMPLIFIER", "i.f. amplifier", "dots of an abbreviation"},
      {"i.f. amp.", "i.f. amplifier", "as running text has it"},
      {"HORIZ. OUTPUT", "horizontal output", "shortened"},
      {"DET. - 1ST AUDIO", "detector + audio amplifier", "two halves of one tube"},
      {"Detector, A.V.C. and first audio", "detector + automatic gain control + audio amplifier", "three works"},
      {"2ND PIX LF.", "picture i.f. amplifier", "I and L look alike in print"},
      {"HORIZONTAL OUTPUT", "horizontal output", "not the audio OUTPUT in it"},
      {"OUTPUT", "audio output", "alone"},
      {"DAMPER", "damper", ""},
      {"TRANSFORMER", "", "no tube's function"},
      {"", "", "nothing"},
  };
  for (const auto& one : kCases) EXPECT_EQ(Found(one.text), one.found) << one.text << ": " << one.why;
}

TEST(TubeFunctions, ARestorersRowsTakeThePlaceOfOurs) {
  const auto own = std::filesystem::temp_directory_path() / ("functions-" + std::to_string(getpid()) + ".tsv");
  std::ofstream(own) << "function\twords\tsource\nline output\tHORIZ. OUTPUT\tmy own\nbirdie stage\tBIRDIE\tmy own\n";
  const auto functions = TubeFunctions::Load({ShippedFile("tube-functions.tsv"), own}, ShippedRules());
  ASSERT_TRUE(functions) << functions.error().ToString();
  EXPECT_EQ(functions->Find({"HORIZ", "OUTPUT"}).at(0).function, "line output");
  EXPECT_EQ(functions->Find({"BIRDIE"}).at(0).function, "birdie stage");
  std::ofstream(own) << "function\twords\tsource\nline output\t- -\tmy own\n";
  const auto wrong = TubeFunctions::Load({own}, ShippedRules());
  ASSERT_FALSE(wrong);
  EXPECT_EQ(wrong.error().code, ErrorCode::kUsage);
  EXPECT_NE(wrong.error().message.find("line 2"), std::string::npos) << wrong.error().message;
  std::filesystem::remove(own);
}

}  // namespace
}  // namespace benchleaf
