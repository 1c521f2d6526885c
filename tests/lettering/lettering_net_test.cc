#include "benchleaf/lettering/lettering_net.h"

#include "places/places.h"

#include "benchleaf/lettering/line_strip.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

void Put(std::string& bytes, std::uint32_t number, int length) {
  for (int i = 0; i < length; ++i) bytes += static_cast<char>(number >> (8 * i) & 0xFF);
}

void PutReal(std::string& bytes, float number) { Put(bytes, std::bit_cast<std::uint32_t>(number), 4); }

// A layer's channels, kernel, whether rows are padded, added, rectified, and its pool.
void PutShape(std::string& bytes, std::uint32_t in, std::uint32_t out, const std::vector<std::uint32_t>& small) {
  Put(bytes, in, 2);
  Put(bytes, out, 2);
  for (const std::uint32_t number : small) Put(bytes, number, 1);
}

// A net that knows one character, "x": a pool of whole columns, then ink above one half speaks for it.
std::string TellsInk() {
  std::string bytes = "benchleaf net 1\n";
  Put(bytes, 1, 2);
  Put(bytes, 1, 1);
  bytes += "x";
  Put(bytes, 2, 1);
  PutShape(bytes, 1, 1, {1, 1, 1, 0, 1, kStripRows, kStepPx});
  PutReal(bytes, 1.0F / 100);
  PutReal(bytes, 0);
  Put(bytes, 100, 1);
  PutShape(bytes, 1, 2, {1, 1, 1, 0, 0, 1, 1});
  PutReal(bytes, 1);  // the blank: nought
  PutReal(bytes, 0);
  Put(bytes, 0, 1);
  PutReal(bytes, 0.1F);  // "x": ten times the ink, less five
  PutReal(bytes, -5);
  Put(bytes, 100, 1);
  return bytes;
}

class NetFile : public testing::Test {
 protected:
  NetFile() : path_(fs::path(testing::TempDir()) / ("net" + std::to_string(std::hash<std::string>()(TestName())))) {}
  ~NetFile() override { fs::remove(path_); }

  static std::string TestName() { return testing::UnitTest::GetInstance()->current_test_info()->name(); }
  Result<std::unique_ptr<LetteringNet>> Loaded(const std::string& bytes) {
    std::ofstream(path_, std::ios::binary) << bytes;
    return LetteringNet::Load(path_);
  }

  fs::path path_;
};

TEST_F(NetFile, TellsWhereInkStands) {
  const auto net = Loaded(TellsInk());
  ASSERT_TRUE(net) << net.error().ToString();
  GreyImage strip(10, kStripRows);
  strip.row(20)[6] = 0;
  const StepChances chances = (*net)->Run(strip);
  ASSERT_EQ(chances.steps, 3U) << "a step for every four columns begun";
  ASSERT_EQ(chances.symbols, 2U);
  const double x = std::exp(5) / (1 + std::exp(5));
  EXPECT_NEAR(std::exp(chances.at(1, 1)), x, 1e-4);
  EXPECT_NEAR(std::exp(chances.at(0, 1)), 1 - x, 1e-4);
  EXPECT_NEAR(std::exp(chances.at(0, 0)) + std::exp(chances.at(0, 1)), 1, 1e-5);
}

TEST_F(NetFile, IsRefusedWhenCutShortAnywhere) {
  const std::string whole = TellsInk();
  for (std::size_t length = 0; length < whole.size(); ++length) {
    const auto net = Loaded(whole.substr(0, length));
    ASSERT_FALSE(net) << length;
    EXPECT_EQ(net.error().code, ErrorCode::kMissing);
  }
  EXPECT_FALSE(Loaded(whole + "x")) << "something behind its end";
}

TEST_F(NetFile, IsRefusedWhenItsLayersDoNotFit) {
  std::string rows = TellsInk();
  rows[rows.find(static_cast<char>(kStripRows), 20)] = kStripRows / 2;  // two rows are left
  EXPECT_FALSE(Loaded(rows));
}

TEST_F(NetFile, NamesItselfWhenItIsNotThere) {
  const auto net = LetteringNet::Load("nowhere/lettering.net");
  ASSERT_FALSE(net);
  EXPECT_NE(net.error().ToString().find("nowhere/lettering.net"), std::string::npos);
}

TEST(ShippedNet, IsUnderAMegabyteAndKnowsTheLettersOfDesignators) {
  const fs::path file = SourceFolder() / "config" / "lettering.net";
  EXPECT_LT(fs::file_size(file), 1'000'000U);
  const auto net = LetteringNet::Load(file);
  ASSERT_TRUE(net) << net.error().ToString();
  const std::vector<std::string>& known = (*net)->characters();
  for (const char c : std::string("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,-/~ ")) {
    EXPECT_NE(std::find(known.begin(), known.end(), std::string(1, c)), known.end()) << c;
  }
}

TEST(Strips, HoldTheMiddleOfALine) {
  GreyImage line(80, 96);
  line.row(48)[40] = 0;
  line.row(49)[41] = 0;
  const GreyImage strip = StripOf(line, 40);  // half as large
  ASSERT_EQ(strip.height, kStripRows);
  EXPECT_EQ(strip.width, 40);
  EXPECT_LT(strip.row(kStripRows / 2)[20], 255);
  const GreyImage low = StripOf(GreyImage(30, 10, 0), 20);
  EXPECT_EQ(low.row(0)[5], 255) << "light where the line has nothing";
  EXPECT_EQ(low.row(kStripRows / 2)[5], 0);
}

}  // namespace
}  // namespace benchleaf
