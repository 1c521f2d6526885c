// Values of receiving-tube handbooks, written down for this test apart from the table and from memory: heater, class,
// base and the code of the pins, as every such handbook prints them.

#include "places/places.h"

#include "benchleaf/tubes/tube_table.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <iterator>
#include <string>

namespace benchleaf {
namespace {

struct HandbookTube {
  const char* type;
  double volts;
  double amps;
  const char* tube_class;  // a word of it
  const char* base;
  const char* basing;
};

constexpr HandbookTube kHandbook[] = {
    {"01A", 5, 0.25, "triode", "4-pin", "4D"},
    {"1B3GT", 1.25, 0.2, "high-voltage rectifier", "octal", "3C"},
    {"1R5", 1.4, 0.05, "pentagrid converter", "7-pin miniature", "7AT"},
    {"1U5", 1.4, 0.05, "diode", "7-pin miniature", "6BW"},
    {"2A3", 2.5, 2.5, "triode", "4-pin", "4D"},
    {"5R4GY", 5, 2, "full-wave rectifier", "octal", "5T"},
    {"5U4GB", 5, 3, "full-wave rectifier", "octal", "5T"},
    {"5U8", 4.7, 0.6, "pentode", "noval", "9AE"},
    {"5Y3GT", 5, 2, "full-wave rectifier", "octal", "5T"},
    {"6A8", 6.3, 0.3, "pentagrid converter", "octal", "8A"},
    {"6AC7", 6.3, 0.45, "sharp-cutoff pentode", "octal", "8N"},
    {"6AG7", 6.3, 0.65, "power pentode", "octal", "8Y"},
    {"6AL5", 6.3, 0.3, "dual diode", "7-pin miniature", "6BT"},
    {"6AQ5", 6.3, 0.45, "beam power", "7-pin miniature", "7BZ"},
    {"6AS7G", 6.3, 2.5, "dual power triode", "octal", "8BD"},
    {"6AU6", 6.3, 0.3, "sharp-cutoff pentode", "7-pin miniature", "7BK"},
    {"6AV6", 6.3, 0.3, "high-mu triode", "7-pin miniature", "7BT"},
    {"6AX4GT", 6.3, 1.2, "damper", "octal", "4CG"},
    {"6BA6", 6.3, 0.3, "remote-cutoff pentode", "7-pin miniature", "7BK"},
    {"6BE6", 6.3, 0.3, "pentagrid converter", "7-pin miniature", "7CH"},
    {"6BG6G", 6.3, 0.9, "horizontal-output", "octal", "5BT"},
    {"6BQ5", 6.3, 0.76, "power pentode", "noval", "9CV"},
    {"6BQ6GT", 6.3, 1.2, "horizontal-output", "octal", "6AM"},
    {"6BQ7A", 6.3, 0.4, "dual triode", "noval", "9AJ"},
    {"6C4", 6.3, 0.15, "triode", "7-pin miniature", "6BG"},
    {"6CB6", 6.3, 0.3, "sharp-cutoff pentode", "7-pin miniature", "7CM"},
    {"6CD6G", 6.3, 2.5, "horizontal-output", "octal", "5BT"},
    {"6E5", 6.3, 0.3, "tuning indicator", "6-pin", "6R"},
    {"6F6", 6.3, 0.7, "power pentode", "octal", "7S"},
    {"6H6", 6.3, 0.3, "dual diode", "octal", "7Q"},
    {"6J5", 6.3, 0.3, "triode", "octal", "6Q"},
    {"6J6", 6.3, 0.45, "dual triode", "7-pin miniature", "7BF"},
    {"6K6GT", 6.3, 0.4, "power pentode", "octal", "7S"},
    {"6L6G", 6.3, 0.9, "beam power", "octal", "7AC"},
    {"6SJ7", 6.3, 0.3, "sharp-cutoff pentode", "octal", "8N"},
    {"6SL7GT", 6.3, 0.3, "high-mu dual triode", "octal", "8BD"},
    {"6SN7GT", 6.3, 0.6, "medium-mu dual triode", "octal", "8BD"},
    {"6SQ7", 6.3, 0.3, "high-mu triode", "octal", "8Q"},
    {"6T8", 6.3, 0.45, "triple diode", "noval", "9E"},
    {"6V6", 6.3, 0.45, "beam power", "octal", "7AC"},
    {"6X4", 6.3, 0.6, "full-wave rectifier", "7-pin miniature", "5BS"},
    {"6X5GT", 6.3, 0.6, "full-wave rectifier", "octal", "6S"},
    {"7C5", 6.3, 0.45, "beam power", "loktal", "6AA"},
    {"12AT7", 12.6, 0.15, "high-mu dual triode", "noval", "9A"},
    {"12AU7", 12.6, 0.15, "medium-mu dual triode", "noval", "9A"},
    {"12AX7", 12.6, 0.15, "high-mu dual triode", "noval", "9A"},
    {"12BH7A", 12.6, 0.3, "medium-mu dual triode", "noval", "9A"},
    {"12BY7A", 12.6, 0.3, "pentode", "noval", "9BF"},
    {"24A", 2.5, 1.75, "tetrode", "5-pin", "5E"},
    {"25L6GT", 25, 0.3, "beam power", "octal", "7AC"},
    {"25Z5", 25, 0.3, "rectifier-doubler", "6-pin", "6E"},
    {"35W4", 35, 0.15, "half-wave rectifier", "7-pin miniature", "5BQ"},
    {"35Z5GT", 35, 0.15, "half-wave rectifier", "octal", "6AD"},
    {"42", 6.3, 0.7, "power pentode", "6-pin", "6B"},
    {"45", 2.5, 1.5, "triode", "4-pin", "4D"},
    {"50C5", 50, 0.15, "beam power", "7-pin miniature", "7CV"},
    {"50L6GT", 50, 0.15, "beam power", "octal", "7AC"},
    {"78", 6.3, 0.3, "remote-cutoff pentode", "6-pin", "6F"},
    {"80", 5, 2, "full-wave rectifier", "4-pin", "4C"},
    {"807", 6.3, 0.9, "beam power", "5-pin", "5AW"},
    {"117Z3", 117, 0.04, "half-wave rectifier", "7-pin miniature", "4CB"},
};

TEST(TubeHandbook, AgreesWithTheTable) {
  static_assert(std::size(kHandbook) >= 40);
  const auto table = TubeTable::Load({SourceFolder() / "config" / "tubes.tsv"});
  ASSERT_TRUE(table);
  for (const HandbookTube& tube : kHandbook) {
    const TubeEntry* entry = table->Find(tube.type);
    ASSERT_NE(entry, nullptr) << tube.type;
    EXPECT_EQ(entry->heater.at(0).volts, tube.volts) << tube.type;
    EXPECT_EQ(entry->heater.at(0).amps, tube.amps) << tube.type;
    EXPECT_NE(entry->tube_class.find(tube.tube_class), std::string::npos) << tube.type << ": " << entry->tube_class;
    EXPECT_EQ(entry->base, tube.base) << tube.type;
    EXPECT_EQ(entry->basing, tube.basing) << tube.type;
  }
}

// The power-pack heater chain that the handbooks drew for sets of 600 mA: the string types carry 600 mA each.
TEST(TubeHandbook, GivesStringsTheirCurrent) {
  const auto table = TubeTable::Load({SourceFolder() / "config" / "tubes.tsv"});
  ASSERT_TRUE(table);
  const struct {
    double amps;
    std::initializer_list<const char*> types;
  } kStrings[] = {
      {0.6, {"3CB6", "3BZ6", "3AL5", "4BQ7A", "5AQ5", "5U8", "5AM8", "5J6", "12BQ6GT", "12AX4GT", "10DE7", "25CD6G"}},
      {0.45, {"4CB6", "4BZ6", "8AW8A", "8CG7", "17DQ6A", "17AX4GT", "13DE7", "8CM7"}},
      {0.3, {"25L6", "25Z6", "25BQ6GT", "25W4GT", "6BX6", "PL36", "PCL82", "PY81", "PCF80"}},
      {0.15, {"12BA6", "12BE6", "12AV6", "50C5", "35W4", "12SK7", "12SA7", "50L6GT"}},
      {0.1, {"18FW6", "18FX6", "18FY6", "34GD5", "36AM3", "UCL82", "UY85", "UCH81"}},
  };
  for (const auto& string : kStrings) {
    for (const char* type : string.types) {
      const TubeEntry* entry = table->Find(type);
      ASSERT_NE(entry, nullptr) << type;
      EXPECT_EQ(entry->heater.at(0).amps, string.amps) << type;
    }
  }
}

}  // namespace
}  // namespace benchleaf
