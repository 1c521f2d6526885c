#include "cli/talk.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <sstream>

namespace benchleaf {
namespace {

// An environment variable, put back as it was.
class Variable {
 public:
  Variable(const char* name, const char* value) : name_(name) {
    if (const char* old = std::getenv(name)) old_ = old;
    if (value == nullptr) unsetenv(name);
    if (value != nullptr) setenv(name, value, 1);
  }
  ~Variable() { setenv(name_, old_.c_str(), 1); }
  Variable(const Variable&) = delete;
  Variable& operator=(const Variable&) = delete;

 private:
  const char* name_;
  std::string old_;
};

TEST(LookOfOut, IsColouredOnlyWhereThatIsWanted) {
  struct Case {
    const char* why;
    bool terminal;
    const char* term;
    const char* no_color;
    bool color;
  };
  for (const Case& c :
       {Case{"a terminal", true, "xterm", nullptr, true},
        Case{"set but empty counts as not set (no-color.org)", true, "xterm", "", true},
        Case{"no colours are wanted", true, "xterm", "1", false},
        Case{"whatever it is set to", true, "xterm", "0", false},
        Case{"a terminal without colours", true, "dumb", nullptr, false},
        Case{"an unknown terminal", true, nullptr, nullptr, false}, Case{"a file", false, "xterm", nullptr, false}}) {
    const Variable term("TERM", c.term);
    const Variable no_color("NO_COLOR", c.no_color);
    std::ostringstream out;
    EXPECT_EQ(LookOfOut({.out = out, .err = out, .out_is_terminal = c.terminal}).color, c.color) << c.why;
  }
}

TEST(LookOfOut, IsAsWideAsTheTerminal) {
  std::ostringstream out;
  EXPECT_EQ(LookOfOut({.out = out, .err = out, .out_is_terminal = true, .out_columns = 61}).columns, 61);
  EXPECT_EQ(LookOfOut({.out = out, .err = out, .out_is_terminal = false, .out_columns = 61}).columns, 0);
}

TEST(WriteCsv, IsExactForAProgramAndHarmlessOnATerminal) {
  const std::string csv = "a,b\r\n\"x\x1b[2J\ny\",1\r\n";
  std::ostringstream file;
  WriteCsv({.out = file, .err = file}, csv);
  EXPECT_EQ(file.str(), csv);
  std::ostringstream terminal;
  WriteCsv({.out = terminal, .err = terminal, .out_is_terminal = true}, csv);
  EXPECT_EQ(terminal.str(), "a,b\n\"x\uFFFD[2J\ny\",1\n");
}

}  // namespace
}  // namespace benchleaf
