#include "outside/designator_form.h"

#include <gtest/gtest.h>

namespace benchleaf::outside {
namespace {

TEST(DesignatorFormTest, TellsDesignatorsFromOtherWords) {
  struct Case {
    const char* text;
    bool is;
    const char* why;
  };
  const Case kCases[] = {
      {"C112", true, "class letter and number"},
      {"R1", true, "shortest"},
      {"VR12A", true, "unit letter"},
      {"LED5", true, "three letters"},
      {"ICSP1", false, "four letters"},
      {"R12345", false, "five digits"},
      {"R", false, "no number"},
      {"112", false, "no letter"},
      {"12AX7", false, "a tube type"},
      {"C1AB", false, "two letters behind"},
      {"c12", false, "not in capitals"},
      {"R1.", false, "punctuation must be off already"},
      {"", false, "nothing"},
  };
  for (const Case& one : kCases) EXPECT_EQ(HasDesignatorForm(one.text), one.is) << one.text << ": " << one.why;
}

}  // namespace
}  // namespace benchleaf::outside
