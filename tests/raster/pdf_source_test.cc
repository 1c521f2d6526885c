// Tells qpdf that its old pointer type is not used here, as its headers ask for.
#define POINTERHOLDER_TRANSITION 4

#include "raster/pdf_source.h"

#include "raster/sample_files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;

Result<std::unique_ptr<PageSource>> Open(const SampleFolder& folder, const std::string& bytes) {
  return OpenScan(folder.Write("a.pdf", bytes), "set/a.pdf");
}

RasterPage LoadFirst(const SamplePdf& pdf) {
  const SampleFolder folder;
  const auto source = Open(folder, pdf.Finish());
  if (!source) {
    ADD_FAILURE() << source.error().ToString();
    return {};
  }
  auto page = (*source)->Load(1);
  if (!page) {
    ADD_FAILURE() << page.error().ToString();
    return {};
  }
  return std::move(*page);
}

// The matrix that fills a page of 480 x 720 pt.
constexpr const char* kFill = "480 0 0 720 0 0 cm /P Do";

TEST(PdfSourceTest, GivesThePixelsOfThePictureAsScanned) {
  const GreyImage scan = NoisePicture(1000, 1500);
  SamplePdf pdf;
  pdf.AddPage("0 0 480 720", DrawnAs("P", pdf.AddPicture(scan)), kFill);
  const RasterPage page = LoadFirst(pdf);
  EXPECT_DOUBLE_EQ(page.dpi, 150);
  EXPECT_TRUE(page.image == scan) << "every pixel is the scan's";
  EXPECT_TRUE(page.layer.empty());
}

// How many rows of the scan stand in the picture unchanged, the picture having at most one row less.
int RowsKept(const GreyImage& picture, const GreyImage& scan) {
  int kept = 0;
  for (int y = 0; y < picture.height; ++y) {
    for (int shift = 0; shift <= 1 && y + shift < scan.height; ++shift) {
      if (std::equal(picture.row(y), picture.row(y) + picture.width, scan.row(y + shift))) {
        ++kept;
        break;
      }
    }
  }
  return kept;
}

TEST(PdfSourceTest, KeepsPixelToPixelWhateverTheRoundingOfPlacement) {
  const GreyImage scan = NoisePicture(1240, 1754);
  const struct {
    const char* box;
    const char* content;
    const char* reason;
  } kCases[] = {
      {"0 0 595.2 841.92", "595.2 0 0 841.92 0 0 cm /P Do", "exact"},
      {"0 0 595.2 841.92", "q .24 0 0 .24 0 0 cm 2480 0 0 3508 0 0 cm /P Do Q", "in two steps"},
      {"0 0 595.2 841.92", "q 0.48 0 0 0.48 0 0 cm 1240 0 0 1754 0 0 cm /P Do Q", "in two other steps"},
      {"0 0 595.2 841.92", "595.2 0 0 841.9201 0 0 cm /P Do", "a hair over the page"},
      {"0 0 595.2 841.92", "595.2 0 0 841.9199 0 0 cm /P Do", "a hair short of it"},
      {"0 0 595 842", "595.2 0 0 841.92 0 0 cm /P Do", "a page box in whole points"},
      {"0 0 612 860", "595.2 0 0 841.92 7.3 11.1 cm /P Do", "within margins"},
      {"36 36 631.2 877.92", "595.2 0 0 841.92 36 36 cm /P Do", "a page box that does not begin at 0"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    SamplePdf pdf;
    pdf.AddPage(c.box, DrawnAs("P", pdf.AddPicture(scan)), c.content);
    const RasterPage page = LoadFirst(pdf);
    EXPECT_NEAR(page.dpi, 150, 1e-3);
    // Where the scan lies on the rendered page: the place of its first pixels.
    bool found = false;
    for (int y = 0; y < 60 && !found; ++y) {
      for (int x = 0; x < 40 && !found; ++x) {
        const int width = std::min(scan.width, page.image.width - x);
        const int height = std::min(scan.height, page.image.height - y);
        for (int from = 0; from <= 2 && !found; ++from) {
          if (std::equal(scan.row(from + 5), scan.row(from + 5) + 50, page.image.row(y + 5) + x)) {
            found = true;
            EXPECT_GE(width, 1239);
            EXPECT_GE(height, 1752);
            EXPECT_GE(RowsKept(Crop(page.image, {x, y, width, height}), Crop(scan, {0, from, width, height})),
                      height - 2);
          }
        }
      }
    }
    EXPECT_TRUE(found);
  }
}

TEST(PdfSourceTest, GivesTheDotsOfAStencilAsScanned) {
  GreyImage scan = NoisePicture(1240, 1754);
  for (std::uint8_t& pixel : scan.pixels) {
    pixel = pixel < 128 ? 0 : 255;
  }
  SamplePdf pdf;
  pdf.AddPage("0 0 595.2 841.92", DrawnAs("P", pdf.AddStencil(scan)), "0 g 595.2 0 0 841.92 0 0 cm /P Do");
  const RasterPage page = LoadFirst(pdf);
  EXPECT_DOUBLE_EQ(page.dpi, 150);
  EXPECT_TRUE(page.image == scan);
}

TEST(PdfSourceTest, PutsMirroredAndTurnedBitmapsRight) {
  const GreyImage scan = NoisePicture(100, 150);
  const auto flipped = [](const GreyImage& image, bool across, bool down) {
    GreyImage other(image.width, image.height);
    for (int y = 0; y < image.height; ++y) {
      for (int x = 0; x < image.width; ++x) {
        other.row(down ? image.height - 1 - y : y)[across ? image.width - 1 - x : x] = image.row(y)[x];
      }
    }
    return other;
  };
  const struct {
    GreyImage stored;
    const char* content;
    const char* reason;
  } kCases[] = {
      {flipped(scan, true, false), "-48 0 0 72 48 0 cm /P Do", "stored as a mirror image"},
      {flipped(scan, false, true), "48 0 0 -72 0 72 cm /P Do", "stored with the last row first"},
      {flipped(scan, true, true), "-48 0 0 -72 48 72 cm /P Do", "stored upside down"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    SamplePdf pdf;
    pdf.AddPage("0 0 48 72", DrawnAs("P", pdf.AddPicture(c.stored)), c.content);
    const RasterPage page = LoadFirst(pdf);
    EXPECT_DOUBLE_EQ(page.dpi, 150);
    EXPECT_TRUE(page.image == scan);
  }
}

TEST(PdfSourceTest, TurnsThePageAsItAsksFor) {
  const GreyImage scan = NoisePicture(100, 150);
  for (const int turn : {90, 180, 270}) {
    SCOPED_TRACE(turn);
    SamplePdf pdf;
    pdf.AddPage("0 0 48 72", DrawnAs("P", pdf.AddPicture(scan)), "48 0 0 72 0 0 cm /P Do",
                "/Rotate " + std::to_string(turn));
    const RasterPage page = LoadFirst(pdf);
    EXPECT_DOUBLE_EQ(page.dpi, 150);
    EXPECT_TRUE(page.image == Turned(scan, turn));
  }
}

TEST(PdfSourceTest, ShowsTheCropBox) {
  const GreyImage scan = NoisePicture(100, 150);
  SamplePdf pdf;
  pdf.AddPage("0 0 480 720", DrawnAs("P", pdf.AddPicture(scan)), "48 0 0 72 100 200 cm /P Do",
              "/CropBox [100 200 148 272]");
  const RasterPage page = LoadFirst(pdf);
  EXPECT_DOUBLE_EQ(page.dpi, 150);
  EXPECT_TRUE(page.image == scan);
}

TEST(PdfSourceTest, KeepsBothLayersOfALayeredScan) {
  GreyImage ground(100, 150, 255);  // 150 dpi, with a pale callout
  for (int y = 9; y < 13; ++y) {
    std::fill_n(ground.row(y) + 10, 20, std::uint8_t{200});
  }
  GreyImage stencil(200, 300, 255);  // 300 dpi, with a hairline
  std::fill_n(stencil.row(201) + 50, 100, std::uint8_t{0});
  SamplePdf pdf;
  const int below = pdf.AddPicture(ground);
  const int above = pdf.AddStencil(stencil);
  pdf.AddPage("0 0 48 72", "/XObject << /G " + std::to_string(below) + " 0 R /S " + std::to_string(above) + " 0 R >>",
              "48 0 0 72 0 0 cm /G Do 0 g /S Do");
  const RasterPage page = LoadFirst(pdf);
  EXPECT_DOUBLE_EQ(page.dpi, 300);
  ASSERT_EQ(page.image.width, 200);
  ASSERT_EQ(page.image.height, 300);
  EXPECT_EQ(page.image.row(201)[100], 0) << "the hairline, one pixel of 300 dpi";
  EXPECT_GT(page.image.row(199)[100], 250);
  EXPECT_GT(page.image.row(203)[100], 250);
  EXPECT_NEAR(page.image.row(21)[40], 200, 20) << "the pale callout of the ground";
}

TEST(PdfSourceTest, DrawsAPageWithoutPicturesAt300Dpi) {
  SamplePdf pdf;
  pdf.AddPage("0 0 48 72", "", "0 0 24 36 re f");
  const RasterPage page = LoadFirst(pdf);
  EXPECT_DOUBLE_EQ(page.dpi, 300);
  ASSERT_EQ(page.image.width, 200);
  ASSERT_EQ(page.image.height, 300);
  EXPECT_EQ(page.image.row(200)[50], 0);
  EXPECT_EQ(page.image.row(100)[150], 255);
}

constexpr const char* kFont = "/Font << /F << /Type /Font /Subtype /Type1 /BaseFont /Helvetica >> >>";

TEST(PdfSourceTest, GivesTheHiddenTextWithItsPlaceAndTurn) {
  SamplePdf pdf;
  pdf.AddPage("0 0 200 100", kFont,
              "BT 3 Tr /F 10 Tf 1 0 0 1 20 80 Tm (C112) Tj ET "
              "BT 3 Tr /F 10 Tf 0 1 -1 0 150 20 Tm (R7) Tj ET "   // reads upwards
              "BT 3 Tr /F 10 Tf 0 -1 1 0 170 60 Tm (V3) Tj ET");  // reads downwards
  const RasterPage page = LoadFirst(pdf);
  ASSERT_EQ(page.layer.size(), 3U);
  const auto word = [&](const std::string& text) {
    const auto found =
        std::find_if(page.layer.begin(), page.layer.end(), [&](const LayerWord& w) { return w.text == text; });
    return found == page.layer.end() ? LayerWord{} : *found;
  };
  EXPECT_EQ(word("C112").turn, 0);
  EXPECT_NEAR(word("C112").box.x, 0.1, 0.01);
  EXPECT_NEAR(word("C112").box.y + word("C112").box.height, 0.22, 0.03);
  EXPECT_EQ(word("R7").turn, 270);
  EXPECT_NEAR(word("R7").box.x + word("R7").box.width, 0.76, 0.02);
  EXPECT_EQ(word("V3").turn, 90);
}

TEST(PdfSourceTest, TurnsTheHiddenTextWithThePage) {
  SamplePdf pdf;
  pdf.AddPage("0 0 200 100", kFont, "BT 3 Tr /F 10 Tf 1 0 0 1 20 80 Tm (C112) Tj ET", "/Rotate 90");
  const RasterPage page = LoadFirst(pdf);
  EXPECT_LT(page.image.width, page.image.height);
  ASSERT_EQ(page.layer.size(), 1U);
  EXPECT_EQ(page.layer[0].turn, 90);
  EXPECT_NEAR(page.layer[0].box.x + page.layer[0].box.width / 2, 0.84, 0.03);
  EXPECT_NEAR(page.layer[0].box.y, 0.1, 0.01);
}

TEST(PdfSourceTest, LoadsColoursSmallEnough) {
  SamplePdf pdf;
  pdf.AddPage("0 0 480 720", "", "1 0 0 rg 0 0 480 720 re f");
  const SampleFolder folder;
  const auto source = Open(folder, pdf.Finish());
  ASSERT_TRUE(source.has_value());
  const auto page = (*source)->LoadColor(1, 100);
  ASSERT_TRUE(page.has_value()) << page.error().ToString();
  EXPECT_EQ(page->height, 100);
  EXPECT_EQ(page->width, 67);
  ASSERT_EQ(page->pixels.size(), 100U * 67U * 3U);
  EXPECT_EQ(page->pixels[3 * 1000], 255);
  EXPECT_EQ(page->pixels[3 * 1000 + 1], 0);
  EXPECT_EQ(page->pixels[3 * 1000 + 2], 0);
}

TEST(PdfSourceTest, NamesFileAndPageOfAPageThatIsNotThere) {
  SamplePdf pdf;
  pdf.AddPage("0 0 48 72", "", "");
  const SampleFolder folder;
  const auto source = Open(folder, pdf.Finish());
  ASSERT_TRUE(source.has_value());
  EXPECT_EQ((*source)->page_count(), 1);
  for (const int page : {0, 2, -1}) {
    const auto loaded = (*source)->Load(page);
    ASSERT_FALSE(loaded.has_value());
    EXPECT_EQ(loaded.error().code, ErrorCode::kMissing);
    EXPECT_EQ(loaded.error().source, "set/a.pdf");
    EXPECT_EQ(loaded.error().page, page);
  }
}

TEST(PdfSourceTest, RefusesAPictureOverTheLimits) {
  SamplePdf pdf;
  const int bomb = pdf.AddStream(
      "/Type /XObject /Subtype /Image /ColorSpace /DeviceGray /BitsPerComponent 8 /Width 90000 /Height 90000", "x");
  pdf.AddPage("0 0 480 720", DrawnAs("P", bomb), kFill);
  const SampleFolder folder;
  const auto source = Open(folder, pdf.Finish());
  ASSERT_TRUE(source.has_value());
  const auto page = (*source)->Load(1);
  ASSERT_FALSE(page.has_value());
  EXPECT_EQ(page.error().code, ErrorCode::kTooLarge);
  EXPECT_EQ(page.error().page, 1);
  EXPECT_THAT(page.error().message, HasSubstr("90000 x 90000"));
}

TEST(PdfSourceTest, APasswordIsNamed) {
  SamplePdf plain;
  plain.AddPage("0 0 48 72", "", "0 0 24 36 re f");
  const SampleFolder folder;
  const std::filesystem::path from = folder.Write("plain.pdf", plain.Finish());
  for (const bool wanted_to_open : {true, false}) {
    SCOPED_TRACE(wanted_to_open);
    const std::filesystem::path to = folder.path() / "locked.pdf";
    QPDF pdf;
    pdf.processFile(from.c_str());
    QPDFWriter writer(pdf, to.c_str());
    writer.setR6EncryptionParameters(wanted_to_open ? "secret" : "", "owner", true, true, true, true, true, true,
                                     qpdf_r3p_full, true);
    writer.write();
    const auto source = OpenScan(to, "locked.pdf");
    if (wanted_to_open) {
      ASSERT_FALSE(source.has_value());
      EXPECT_EQ(source.error().code, ErrorCode::kLocked);
      EXPECT_THAT(source.error().ToString(), AllOf(HasSubstr("locked.pdf"), HasSubstr("password")));
    } else {
      ASSERT_TRUE(source.has_value()) << "a password for changes only does not keep from reading";
      EXPECT_TRUE((*source)->Load(1).has_value());
    }
  }
}

TEST(PdfSourceTest, GarbageIsDamaged) {
  const SampleFolder folder;
  for (const std::string& bytes :
       {std::string("%PDF-1.4\nnot a word of PDF"), std::string("%PDF-"), SamplePdf().Finish()}) {
    const auto source = Open(folder, bytes);
    ASSERT_FALSE(source.has_value());
    EXPECT_EQ(source.error().code, ErrorCode::kDamaged);
    EXPECT_EQ(source.error().source, "set/a.pdf");
  }
}

TEST(PdfSourceTest, AFileCutShortGivesItsWholePagesOrSaysSo) {
  SamplePdf pdf;
  for (int i = 0; i < 3; ++i) {
    pdf.AddPage("0 0 48 72", DrawnAs("P", pdf.AddPicture(NoisePicture(100, 150))), "48 0 0 72 0 0 cm /P Do");
  }
  const std::string whole = pdf.Finish();
  const SampleFolder folder;
  for (std::size_t size = 0; size < whole.size(); size += 997) {
    SCOPED_TRACE(size);
    const auto source = Open(folder, whole.substr(0, size));
    if (!source) {
      EXPECT_EQ(source.error().code, size == 0 ? ErrorCode::kEmpty : ErrorCode::kDamaged);
      continue;
    }
    for (int page = 1; page <= (*source)->page_count(); ++page) {
      const auto loaded = (*source)->Load(page);
      if (!loaded) {
        EXPECT_EQ(loaded.error().code, ErrorCode::kDamaged);
        EXPECT_EQ(loaded.error().page, page);
      }
    }
  }
}

TEST(PdfSourceTest, SpoiltBytesGiveAPageOrAnErrorThatNamesIt) {
  SamplePdf pdf;
  const int form = pdf.AddStream("/Type /XObject /Subtype /Form /BBox [0 0 48 72] /Matrix [1 0 0 1 0 0]",
                                 "q 48 0 0 72 0 0 cm BI /W 2 /H 3 /CS /G /BPC 8 ID abcdef EI Q");
  pdf.AddPage("0 0 48 72", DrawnAs("P", form), "q 1 0 0 1 0 0 cm /P Do Q", "/Rotate 90");
  const std::string whole = pdf.Finish();
  const SampleFolder folder;
  std::uint32_t state = 1;
  const auto next = [&state] { return (state = state * 1664525U + 1013904223U) >> 8U; };
  for (int i = 0; i < 300; ++i) {
    SCOPED_TRACE(i);
    std::string spoilt = whole;
    for (int k = 0; k <= i % 4; ++k) {
      spoilt[9 + next() % (spoilt.size() - 9)] = static_cast<char>(next() % 256);
    }
    const auto source = Open(folder, spoilt);
    if (!source) {
      EXPECT_EQ(source.error().source, "set/a.pdf");
      continue;
    }
    const auto page = (*source)->Load(1);
    if (!page) {
      EXPECT_EQ(page.error().page, 1);
      EXPECT_FALSE(page.error().message.empty());
    }
  }
}

TEST(PdfSourceTest, DrawsWithoutTheIndexOfObjects) {
  const GreyImage scan = NoisePicture(1000, 1500);
  SamplePdf pdf;
  pdf.AddPage("0 0 480 720", DrawnAs("P", pdf.AddPicture(scan)), kFill);
  std::string bytes = pdf.Finish();
  bytes.replace(bytes.rfind("startxref"), std::string::npos, "startxref\n999999999\n%%EOF\n");
  const SampleFolder folder;
  const auto source = Open(folder, bytes);
  ASSERT_TRUE(source.has_value()) << source.error().ToString();
  const auto page = (*source)->Load(1);
  ASSERT_TRUE(page.has_value()) << page.error().ToString();
  EXPECT_TRUE(page->image == scan);
}

TEST(PdfSourceTest, APageOfWhichNothingCanBeDrawnIsDamaged) {
  SamplePdf pdf;
  const int picture = pdf.AddStream(
      "/Type /XObject /Subtype /Image /ColorSpace /DeviceGray /BitsPerComponent 8 /Width 100 /Height 150 /Filter "
      "/DCTDecode",
      "no JPEG at all");
  pdf.AddPage("0 0 48 72", DrawnAs("P", picture), "48 0 0 72 0 0 cm /P Do");
  pdf.AddPage("0 0 48 72", "", "");  // blank, and nothing wrong with it
  const SampleFolder folder;
  const auto source = Open(folder, pdf.Finish());
  ASSERT_TRUE(source.has_value());
  const auto spoilt = (*source)->Load(1);
  ASSERT_FALSE(spoilt.has_value());
  EXPECT_EQ(spoilt.error().code, ErrorCode::kDamaged);
  EXPECT_TRUE((*source)->Load(2).has_value());
}

TEST(PdfSourceTest, IsSilent) {
  const SampleFolder folder;
  SamplePdf pdf;
  pdf.AddPage("0 0 48 72", "", "1 2 3 nonsense ( /P Do");
  std::string bytes = pdf.Finish();
  bytes.replace(bytes.rfind("startxref"), std::string::npos, "");
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  if (const auto source = Open(folder, bytes)) {
    static_cast<void>((*source)->Load(1));
  }
  static_cast<void>(Open(folder, "%PDF-1.4 broken"));
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
}

}  // namespace
}  // namespace benchleaf
