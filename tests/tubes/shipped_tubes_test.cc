// config/tubes.tsv against itself: what is written twice must agree.

#include "tubes/shipped_table.h"

#include "benchleaf/core/table_file.h"
#include "benchleaf/tubes/decode.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

std::vector<std::string> Words(const std::string& text) {
  std::istringstream in(text);
  std::vector<std::string> words;
  for (std::string word; in >> word;) words.push_back(word);
  return words;
}

bool Has(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

// Heater power of the first supply, W; 0 where it is not known.
double Watts(const TubeEntry& entry) {
  if (entry.heater.empty()) return 0;
  return entry.heater.front().volts.value_or(0) * entry.heater.front().amps.value_or(0);
}

TEST(ShippedTubes, AreAtLeastSixHundred) { EXPECT_GE(ShippedTubes().entries().size(), 600U); }

// TubeTable mends one-sided relations for a restorer; the shipped file has them written at both sides, so that whoever
// reads it needs no program. So the file is read here, not the table.
TEST(ShippedTubes, AreWrittenAtBothSides) {
  const auto file = TableFile::Read(ShippedTubesFile(), {"type", "equivalents", "heater_variants"});
  ASSERT_TRUE(file);
  for (const char* column : {"equivalents", "heater_variants"}) {
    std::set<std::pair<std::string, std::string>> said;
    for (std::size_t row = 0; row < file->size(); ++row) {
      for (const std::string& name : Words(file->Cell(row, column))) {
        EXPECT_TRUE(said.emplace(file->Cell(row, "type"), name).second)
            << file->Cell(row, "type") << " names " << name << " twice";
      }
    }
    for (const auto& [type, name] : said) {
      EXPECT_TRUE(said.count({name, type}) != 0) << column << ": " << type << " names " << name << ", not back";
    }
  }
}

TEST(ShippedTubes, NameOnlyTypesThatHaveRows) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const auto* names : {&entry.equivalents, &entry.variants, &entry.served_by, &entry.industrial}) {
      for (const std::string& name : *names) {
        EXPECT_NE(ShippedTubes().entries().count(name), 0U) << type << " names " << name;
      }
    }
  }
}

TEST(ShippedTubes, HaveClassAndSource) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    EXPECT_FALSE(entry.tube_class.empty()) << type;
    EXPECT_NE(entry.source.find("from memory"), std::string::npos) << type;
  }
}

// The same tube under two names has one heater, one base, one class, and the same relatives.
TEST(ShippedTubes, AreTheSameUnderEveryName) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const std::string& name : entry.equivalents) {
      const TubeEntry& other = ShippedTubes().entries().at(name);
      EXPECT_EQ(entry.heater, other.heater) << type << " and " << name;
      EXPECT_EQ(entry.base, other.base) << type << " and " << name;
      EXPECT_EQ(entry.tube_class, other.tube_class) << type << " and " << name;
      EXPECT_FALSE(Has(entry.variants, name)) << type << " and " << name << " cannot differ in the heater";
      for (const std::string& third : other.equivalents) {
        EXPECT_TRUE(third == type || Has(entry.equivalents, third)) << type << " = " << name << " = " << third;
      }
    }
  }
}

// What serves in the place of another needs the same socket and the same heater supply.
TEST(ShippedTubes, ServeOnTheSameHeaterAndBase) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const std::string& name : entry.served_by) {
      const TubeEntry& better = ShippedTubes().entries().at(name);
      EXPECT_EQ(entry.heater, better.heater) << type << " served by " << name;
      EXPECT_EQ(entry.base, better.base) << type << " served by " << name;
      EXPECT_FALSE(Has(better.served_by, type)) << type << " and " << name << " are equivalents then";
    }
    for (const std::string& name : entry.industrial) {
      const TubeEntry& version = ShippedTubes().entries().at(name);
      EXPECT_EQ(entry.base, version.base) << type << " in industrial form " << name;
      ASSERT_EQ(entry.heater.size(), version.heater.size()) << type << " in industrial form " << name;
      for (std::size_t i = 0; i < entry.heater.size(); ++i) {
        EXPECT_EQ(entry.heater[i].volts, version.heater[i].volts) << type << " in industrial form " << name;
      }
    }
  }
}

// Types for other heater strings are the same cathode heated with the same power: volts and amps written for one tube
// check those of the others. Within 6 % nearly everywhere, as volts are rounded; never beyond 16 % but for the types
// below.
TEST(ShippedTubes, HeatTheirVariantsWithTheSamePower) {
  // The 2.5 V types of 1932 took 2.5 W; their 6.3 V successors of 1933 have cathodes of 1.9 W.
  const std::set<std::string> kOfHotterCathodes = {"55", "56", "57", "58"};
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const std::string& name : entry.variants) {
      const TubeEntry& other = ShippedTubes().entries().at(name);
      EXPECT_EQ(entry.base, other.base) << type << " and " << name;
      EXPECT_EQ(entry.tube_class, other.tube_class) << type << " and " << name;
      EXPECT_TRUE(entry.heater != other.heater || entry.heater.empty()) << type << " and " << name;
      if (Watts(entry) == 0 || Watts(other) == 0 ||
          kOfHotterCathodes.count(type) + kOfHotterCathodes.count(name) != 0) {
        continue;
      }
      EXPECT_LT(std::abs(std::log(Watts(entry) / Watts(other))), std::log(1.17))
          << type << " " << Watts(entry) << " W, " << name << " " << Watts(other) << " W";
    }
  }
}

TEST(ShippedTubes, HaveHeatersOfPlausibleSize) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const HeaterSupply& supply : entry.heater) {
      if (entry.has_no_heater()) {
        EXPECT_EQ(supply.amps, 0.0) << type;
        continue;
      }
      EXPECT_GE(supply.volts.value_or(1), 0.6) << type << ": the least is that of small high-voltage rectifiers";
      EXPECT_GE(supply.amps.value_or(1), 0.01) << type << ": the least is that of hearing-aid tubes";
      EXPECT_LE(supply.amps.value_or(1), 7.5) << type << ": the most is that of large rectifiers";
    }
    // Wired in series or in parallel, a heater takes the same power.
    if (entry.heater.size() == 2 && entry.heater[0].amps && entry.heater[1].amps) {
      EXPECT_DOUBLE_EQ(*entry.heater[0].volts, 2 * *entry.heater[1].volts) << type;
      EXPECT_DOUBLE_EQ(2 * *entry.heater[0].amps, *entry.heater[1].amps) << type;
    }
  }
}

// The number of every type, read by its standard, agrees with what its row says.
TEST(ShippedTubes, AreDecoded) {
  // Names that no standard explains in full: makers' own, and two of 1933.
  const std::set<std::string> kMakersNames = {"KT66", "KT88", "25S", "83V"};
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    const DecodedType decoded = DecodeTubeType(type);
    EXPECT_EQ(decoded.type, type);
    EXPECT_EQ(decoded.complete, kMakersNames.count(type) == 0) << type;
    EXPECT_TRUE(decoded.base.empty() || entry.base.empty() || decoded.base == entry.base)
        << type << " has the base " << entry.base << ", its number says " << decoded.base;
  }
}

TEST(ShippedTubes, HaveTheHeaterThatTheirNumbersTell) {
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    const DecodedType decoded = DecodeTubeType(type);
    // Of a heater that may be wired two ways the number tells one: 12 of 12AX7, E of ECC83.
    const bool fits = std::any_of(entry.heater.begin(), entry.heater.end(), [&](const HeaterSupply& supply) {
      const bool volts = !decoded.heater_volts || !supply.volts ||
                         (*supply.volts >= decoded.heater_volts->low && *supply.volts <= decoded.heater_volts->high);
      return volts && (!decoded.heater_amps || !supply.amps || *supply.amps == *decoded.heater_amps);
    });
    EXPECT_TRUE(fits || entry.heater.empty()) << type << " at " << entry.heater.front().volts.value_or(-1) << " V";
    // The lock-in base is the one exception of the rule, and only at 7 and 14.
    const bool lock_in_figure = type.rfind('7', 0) == 0 || type.rfind("14", 0) == 0;
    if (entry.base == "loktal" && lock_in_figure && decoded.system == TypeSystem::kReceiving) {
      EXPECT_TRUE(entry.heater.front().volts == 6.3 || entry.heater.front().volts == 12.6) << type;
    }
  }
}

TEST(ShippedTubes, HaveServiceNumbersOfOneType) {
  std::set<std::string> numbers;
  for (const auto& [type, entry] : ShippedTubes().entries()) {
    for (const std::string& number : entry.service) {
      EXPECT_TRUE(number.rfind("VT", 0) == 0 || number.rfind("CV", 0) == 0) << type << ": " << number;
      EXPECT_TRUE(numbers.insert(number).second) << number << " stands at several types";
      EXPECT_EQ(ShippedTubes().entries().count(number), 0U) << number;
    }
  }
}

}  // namespace
}  // namespace benchleaf
