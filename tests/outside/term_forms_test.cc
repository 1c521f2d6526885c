#include "outside/term_forms.h"

#include <gtest/gtest.h>

namespace benchleaf::outside {
namespace {

struct Case {
  const char* text;
  bool is;
  const char* why;
};

TEST(TermFormsTest, TellsTubeTypes) {
  const Case kCases[] = {
      {"6CB6", true, "RETMA"},
      {"5U4GB", true, "suffix of two letters"},
      {"17AX4GTB", true, "two digits of voltage, suffix of three letters"},
      {"0A2", true, "cold cathode"},
      {"ECC83", true, "Pro Electron"},
      {"EL84", true, "one system letter"},
      {"5725", true, "industrial"},
      {"7805", false, "four digits that are a regulator's"},
      {"C112", false, "a designator"},
      {"6CB", false, "no number of elements"},
      {"6CB6/", false, "punctuation must be off already"},
      {"", false, "nothing"},
  };
  for (const Case& one : kCases) EXPECT_EQ(HasTubeForm(one.text), one.is) << one.text << ": " << one.why;
}

TEST(TermFormsTest, TellsPartNumbers) {
  const Case kCases[] = {
      {"12-3456", true, "two groups"}, {"151-0124-00", true, "three groups"},
      {"P12-345A", true, "letters"},   {"R1-R4", false, "a range of designators"},
      {"123456", false, "no dash"},    {"12-", false, "nothing behind the dash"},
      {"", false, "nothing"},
  };
  for (const Case& one : kCases) EXPECT_EQ(HasPartNumberForm(one.text), one.is) << one.text << ": " << one.why;
}

}  // namespace
}  // namespace benchleaf::outside
