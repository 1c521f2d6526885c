#include "benchleaf/raster/searchable_copy.h"

#include "pixels/made_tiff.h"
#include "raster/sample_files.h"

#include "benchleaf/pixels/image_file.h"
#include "benchleaf/raster/page_source.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::HasSubstr;
using testing::Not;

Result<SearchableCopy> MakeSearchableCopy(const std::vector<PageToCopy>& pages) {
  return SearchableCopier(pages).Finish();
}

// A word of that box, lying upright on the page as scanned.
LaidWord Lying(const std::string& text, const FractionBox& box) {
  return {text, {box.x, box.y + box.height}, {box.x + box.width, box.y + box.height}, {box.x, box.y}};
}

// What poppler reads in the copy: the words of a page with their boxes.
std::vector<LayerWord> WordsIn(const SearchableCopy& copy, int page = 1) {
  const SampleFolder folder;
  const auto source = OpenScan(folder.Write("copy.pdf", copy.pdf), "copy.pdf");
  if (!source) {
    ADD_FAILURE() << source.error().ToString();
    return {};
  }
  const auto loaded = (*source)->Load(page);
  if (!loaded) {
    ADD_FAILURE() << loaded.error().ToString();
    return {};
  }
  return loaded->layer;
}

GreyImage PageOf(const std::filesystem::path& path, int page = 1) {
  const auto source = OpenScan(path, "scan");
  const auto loaded = source ? (*source)->Load(page) : tl::unexpected(source.error());
  return loaded ? loaded->image : GreyImage();
}

void ExpectNear(const FractionBox& found, const FractionBox& laid, const std::string& why) {
  constexpr double kNear = 0.003;
  EXPECT_NEAR(found.x, laid.x, kNear) << why;
  EXPECT_NEAR(found.y, laid.y, kNear) << why;
  EXPECT_NEAR(found.width, laid.width, kNear) << why;
  EXPECT_NEAR(found.height, laid.height, kNear) << why;
}

std::string OnePagePdf(const std::string& entries) {
  SamplePdf pdf;
  const int picture = pdf.AddPicture(NoisePicture(200, 300));
  pdf.AddPage("0 0 200 300", DrawnAs("P", picture) + entries, "3 0 0 3 7 7 cm q 66 0 0 98 0 0 cm /P Do");
  return pdf.Finish();
}

TEST(SearchableCopy, WordsAreFoundWhereTheyWereLaidHoweverThePageIsTurned) {
  struct Case {
    const char* why;
    std::string entries;
  };
  const std::vector<Case> cases = {
      {"upright, its content leaves a matrix behind", ""},
      {"turned by a quarter", " /Rotate 90"},
      {"upside down", " /Rotate 180"},
      {"turned the other way", " /Rotate -90"},
      {"a crop box that does not begin at the origin", " /CropBox [20 30 170 280]"},
      {"cropped and turned", " /CropBox [20 30 170 280] /Rotate 270"},
  };
  const FractionBox box{0.25, 0.4, 0.2, 0.03};
  for (const Case& c : cases) {
    const SampleFolder folder;
    SamplePdf pdf;
    const int picture = pdf.AddPicture(NoisePicture(200, 300));
    pdf.AddPage("0 0 200 300", DrawnAs("P", picture), "3 0 0 3 7 7 cm q 66 0 0 98 0 0 cm /P Do", c.entries);
    const auto path = folder.Write("scan.pdf", pdf.Finish());
    const auto copy = MakeSearchableCopy({{path, "scan.pdf", 1, 0, {Lying("C112", box)}}});
    ASSERT_TRUE(copy) << c.why << ": " << copy.error().ToString();
    const auto words = WordsIn(*copy);
    ASSERT_EQ(words.size(), 1U) << c.why;
    EXPECT_EQ(words.front().text, "C112") << c.why;
    ExpectNear(words.front().box, box, c.why);
    // Nothing of it is drawn.
    EXPECT_EQ(PageOf(folder.Write("copy.pdf", copy->pdf)), PageOf(path)) << c.why;
  }
}

TEST(SearchableCopy, StandingAndSlantedWordsKeepTheirDirection) {
  const SampleFolder folder;
  SamplePdf pdf;
  pdf.AddPage("0 0 600 600", "", "");
  const auto path = folder.Write("scan.pdf", pdf.Finish());
  // Read upwards, and slanted by a degree.
  const LaidWord upwards{"R7", {0.5, 0.6}, {0.5, 0.5}, {0.48, 0.6}};
  const double rise = 0.2 * std::tan(0.01745);
  const LaidWord slanted{"OSCILLATOR", {0.1, 0.2}, {0.3, 0.2 + rise}, {0.1, 0.18}};
  const auto copy = MakeSearchableCopy({{path, "scan.pdf", 1, 0, {upwards, slanted}}});
  ASSERT_TRUE(copy) << copy.error().ToString();
  const auto words = WordsIn(*copy);
  ASSERT_EQ(words.size(), 2U);
  for (const LayerWord& word : words) {
    if (word.text == "R7") {
      EXPECT_EQ(word.turn, 270);
      ExpectNear(word.box, {0.48, 0.5, 0.02, 0.1}, "upwards");
    } else {
      EXPECT_EQ(word.text, "OSCILLATOR");
      EXPECT_NEAR(word.box.x, 0.1, 0.005);
      EXPECT_NEAR(word.box.width, 0.2, 0.01);
    }
  }
}

TEST(SearchableCopy, LettersOfEveryScriptComeBack) {
  const SampleFolder folder;
  SamplePdf pdf;
  pdf.AddPage("0 0 600 600", "", "");
  const auto path = folder.Write("scan.pdf", pdf.Finish());
  std::vector<LaidWord> words;
  std::vector<std::string> texts = {"47k\u03A9", "\u00C4hre", "\u00B5F", "\u0420\u0430\u0434\u0438\u043E"};
  // More characters than one font holds.
  for (int i = 0; i < 300; ++i) {
    const int point = 0x4E00 + i;
    texts.push_back({static_cast<char>(0xE0 | (point >> 12)), static_cast<char>(0x80 | ((point >> 6) & 0x3F)),
                     static_cast<char>(0x80 | (point & 0x3F))});
  }
  for (std::size_t i = 0; i < texts.size(); ++i) {
    words.push_back(Lying(
        texts[i], {0.1 + 0.2 * static_cast<double>(i % 4), 0.01 + 0.012 * static_cast<double>(i / 4), 0.1, 0.008}));
  }
  const auto copy = MakeSearchableCopy({{path, "scan.pdf", 1, 0, words}});
  ASSERT_TRUE(copy) << copy.error().ToString();
  std::vector<std::string> found;
  for (const LayerWord& word : WordsIn(*copy)) found.push_back(word.text);
  EXPECT_THAT(found, testing::UnorderedElementsAreArray(texts));
}

TEST(SearchableCopy, PicturesBecomePagesAndJpegStaysAsItIs) {
  const SampleFolder folder;
  ColorImage color;
  color.width = 300;
  color.height = 200;
  for (int i = 0; i < 300 * 200; ++i) {
    // Grey: the decoders of pictures and of PDF weigh colours differently.
    const auto grey = static_cast<std::uint8_t>(i % 300 / 2 + i / 300 / 2);
    color.pixels.insert(color.pixels.end(), {grey, grey, grey});
  }
  const std::string jpeg = EncodeJpeg(color, 80);
  const auto jpg = folder.Write("1.jpg", jpeg);
  const auto png = folder.Write("2.png", EncodePng(color));
  const FractionBox box{0.1, 0.1, 0.2, 0.05};
  const auto copy =
      MakeSearchableCopy({{jpg, "1.jpg", 1, 150, {Lying("V1", box)}}, {png, "2.png", 1, 100, {Lying("V2", box)}}});
  ASSERT_TRUE(copy) << copy.error().ToString();
  EXPECT_THAT(copy->pdf, HasSubstr(jpeg));
  EXPECT_THAT(copy->left_out, testing::IsEmpty());
  const auto first = WordsIn(*copy, 1);
  const auto second = WordsIn(*copy, 2);
  ASSERT_EQ(first.size(), 1U);
  ASSERT_EQ(second.size(), 1U);
  EXPECT_EQ(first.front().text, "V1");
  EXPECT_EQ(second.front().text, "V2");
  ExpectNear(second.front().box, box, "of a picture");
  const auto path = folder.Write("copy.pdf", copy->pdf);
  EXPECT_EQ(PageOf(path, 1), PageOf(jpg)) << "pixel by pixel";
  EXPECT_EQ(PageOf(path, 2), PageOf(png));
}

TEST(SearchableCopy, PagesOfATiffKeepTheirCoding) {
  const SampleFolder folder;
  const MadeTiffPage fax{.width = 600, .height = 400, .photometric = 0};
  MadeTiffPage white = fax;
  white.photometric = 1;
  MadeTiffPage low_bit_first = fax;
  low_bit_first.fill_order = 2;
  MadeTiffPage in_strips = fax;
  in_strips.rows = 32;
  const MadeTiffPage jpeg{.width = 600, .height = 400, .rows = 48, .bits = 8, .compression = 7, .photometric = 1};
  const std::vector<MadeTiffPage> pages = {fax, white, low_bit_first, in_strips, jpeg};
  const std::string bytes = MadeTiff(pages);
  const auto tiff = folder.Write("1.tif", bytes);
  std::vector<PageToCopy> plan;
  for (int i = 1; i <= static_cast<int>(pages.size()); ++i) {
    plan.push_back({tiff, "1.tif", i, 200, {Lying("V" + std::to_string(i), {0.1, 0.1, 0.2, 0.05})}});
  }
  const auto copy = MakeSearchableCopy(plan);
  ASSERT_TRUE(copy) << copy.error().ToString();
  EXPECT_THAT(copy->left_out, testing::IsEmpty());
  EXPECT_NE(copy->pdf.find("/CCITTFaxDecode"), std::string::npos);
  EXPECT_NE(copy->pdf.find("/DCTDecode"), std::string::npos);
  const auto path = folder.Write("copy.pdf", copy->pdf);
  for (int i = 1; i <= static_cast<int>(pages.size()); ++i) {
    const auto words = WordsIn(*copy, i);
    ASSERT_EQ(words.size(), 1U) << i;
    EXPECT_EQ(words.front().text, "V" + std::to_string(i));
    EXPECT_EQ(PageOf(path, i), PageOf(tiff, i)) << "pixel by pixel, page " << i;
  }
  // What PDF itself takes for five pages and two fonts.
  constexpr std::size_t kFrame = 12000;
  EXPECT_LT(copy->pdf.size(), bytes.size() + kFrame);
}

TEST(SearchableCopy, JoinsVolumesAndLeavesOutWhatCannotBeCopied) {
  const SampleFolder folder;
  const auto pdf = folder.Write("1.pdf", OnePagePdf(""));
  const auto broken = folder.Write("2.png", "no picture, but longer than twelve bytes");
  const auto copy = MakeSearchableCopy({{pdf, "1.pdf", 1, 0, {Lying("C1", {0.1, 0.1, 0.1, 0.02})}},
                                        {broken, "2.png", 1, 0, {}},
                                        {broken, "2.png", 2, 0, {}},
                                        {folder.path() / "gone.pdf", "gone.pdf", 3, 0, {}}});
  ASSERT_TRUE(copy) << copy.error().ToString();
  ASSERT_EQ(copy->left_out.size(), 3U);
  EXPECT_EQ(copy->left_out[0].source, "2.png");
  EXPECT_EQ(copy->left_out[1].source, "2.png");
  EXPECT_EQ(copy->left_out[2].source, "gone.pdf");
  EXPECT_EQ(copy->left_out[2].page, 3);
  EXPECT_THAT(copy->left_out[0].message, HasSubstr("index the library again"));
  EXPECT_EQ(copy->left_out[1].message, copy->left_out[0].message);
  EXPECT_THAT(copy->left_out[2].message, HasSubstr("is not there"));
  EXPECT_EQ(WordsIn(*copy).size(), 1U);
}

TEST(SearchableCopy, TheSameScansGiveTheSameBytes) {
  const SampleFolder folder;
  const auto path = folder.Write("1.pdf", OnePagePdf(""));
  const std::vector<PageToCopy> pages = {{path, "1.pdf", 1, 0, {Lying("C1", {0.1, 0.1, 0.1, 0.02})}}};
  EXPECT_EQ(MakeSearchableCopy(pages)->pdf, MakeSearchableCopy(pages)->pdf);
}

TEST(SearchableCopy, IsTheSameMadePageByPage) {
  const SampleFolder folder;
  const auto pdf = folder.Write("1.pdf", OnePagePdf(""));
  const auto tiff = folder.Write("2.tif", SampleTiff({NoisePicture(20, 30), NoisePicture(30, 20)}, 100));
  const std::vector<PageToCopy> pages = {{pdf, "1.pdf", 1, 0, {Lying("C1", {0.1, 0.1, 0.1, 0.02})}},
                                         {folder.path() / "gone.png", "gone.png", 1, 0, {}},
                                         {tiff, "2.tif", 2, 0, {}},
                                         {tiff, "2.tif", 1, 0, {}}};
  SearchableCopier copier(pages);
  // One after the other, one again, and more than there are.
  for (const std::size_t count : {1U, 2U, 2U, 3U, 9U}) copier.CopyPages(count);
  EXPECT_EQ(*copier.Finish(), *MakeSearchableCopy(pages));
}

TEST(SearchableCopy, OfNothingThatCanBeCopiedFails) {
  const SampleFolder folder;
  const auto broken = folder.Write("1.pdf", "%PDF-1.4 and nothing that fits");
  EXPECT_FALSE(MakeSearchableCopy({{broken, "1.pdf", 1, 0, {}}}));
  EXPECT_FALSE(MakeSearchableCopy({}));
}

}  // namespace
}  // namespace benchleaf
