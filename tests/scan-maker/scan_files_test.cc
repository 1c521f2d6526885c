#include "scan-maker/scan_files.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace benchleaf::scanmaker {
namespace {

class ScanFilesTest : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = std::filesystem::path(testing::TempDir()) /
              (std::string("scan-files-") + testing::UnitTest::GetInstance()->current_test_info()->name());
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  std::string Bytes(const std::string& name) const {
    std::ifstream in(folder_ / name, std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    return bytes.str();
  }

  static FilePage Page(bool one_bit) {
    FilePage page;
    page.image = GreyImage(121, 80);
    for (int x = 10; x < 60; ++x) {
      page.image.row(20)[x] = 0;
    }
    page.dpi = 200;
    page.one_bit = one_bit;
    return page;
  }

  std::filesystem::path folder_;
};

TEST_F(ScanFilesTest, WritesEachFormatWithItsSignatureAndTheSameBytesTwice) {
  const std::vector<FilePage> pages = {Page(true), Page(false)};
  for (const std::string name : {"one", "two"}) {
    WritePdfFile(folder_ / (name + ".pdf"), pages);
    WriteTiffFile(folder_ / (name + ".tif"), pages);
    WritePngFile(folder_ / (name + ".png"), pages[0]);
    WriteJpegFile(folder_ / (name + ".jpg"), pages[1]);
  }
  struct Case {
    std::string ending;
    std::string signature;
  };
  const std::vector<Case> cases = {
      {".pdf", "%PDF-"}, {".tif", std::string("II*\0", 4)}, {".png", "\x89PNG"}, {".jpg", "\xFF\xD8\xFF"}};
  for (const Case& c : cases) {
    SCOPED_TRACE(c.ending);
    EXPECT_TRUE(Bytes("one" + c.ending).starts_with(c.signature));
    EXPECT_EQ(Bytes("one" + c.ending), Bytes("two" + c.ending));
  }
}

TEST_F(ScanFilesTest, NamesTheFileThatCannotBeWritten) {
  const std::filesystem::path nowhere = folder_ / "missing" / "a.jpg";
  try {
    WriteJpegFile(nowhere, Page(false));
    FAIL() << "wrote into a folder that is not there";
  } catch (const std::runtime_error& error) {
    EXPECT_NE(std::string(error.what()).find("a.jpg"), std::string::npos);
  }
  EXPECT_THROW(WritePngFile(nowhere, Page(false)), std::runtime_error);
  EXPECT_THROW(WriteTiffFile(nowhere, {Page(false)}), std::runtime_error);
  EXPECT_THROW(WritePdfFile(nowhere, {Page(false)}), std::runtime_error);
}

TEST(PoorLayerTest, LosesAndMistakesSomeWordsButNotMost) {
  PageTruth truth;
  for (int i = 0; i < 400; ++i) {
    const std::string designator = std::to_string(i + 100).insert(0, "R");
    truth.terms.push_back({"designator", designator, {0.1, 0.1, 0.02, 0.01}, 0});
  }
  truth.terms.push_back({"designator", "C1", {0.1, 0.1, 0.02, 0.01}, 90});
  const std::vector<HiddenWord> layer = PoorLayer(truth, 1);
  int right = 0;
  for (const HiddenWord& word : layer) {
    for (const TruthTerm& term : truth.terms) {
      right += term.text == word.text ? 1 : 0;
    }
    EXPECT_NE(word.text, "C1");
  }
  EXPECT_LT(layer.size(), 380U);
  EXPECT_GT(right, 100);
  EXPECT_LT(right, static_cast<int>(layer.size()) - 50);
}

}  // namespace
}  // namespace benchleaf::scanmaker
