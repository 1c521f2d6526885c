#include "raster/pdf_pictures.h"

#include "raster/sample_files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<PlacedPicture> Found(const SamplePdf& pdf, int page = 1) {
  const SampleFolder folder;
  return PdfPictures(folder.Write("a.pdf", pdf.Finish())).OnPage(page);
}

TEST(PdfPicturesTest, FollowsMatricesAndSavedStates) {
  SamplePdf pdf;
  const int picture = pdf.AddPicture(NoisePicture(4, 3));
  pdf.AddPage("0 0 100 100", DrawnAs("P", picture),
              "q 2 0 0 2 10 10 cm q 20 0 0 30 1 1 cm /P Do Q /P Do Q Q 5 0 0 5 0 0 cm /P Do");
  EXPECT_THAT(Found(pdf),
              ElementsAre(PlacedPicture{4, 3, {40, 0, 0, 60, 12, 12}}, PlacedPicture{4, 3, {2, 0, 0, 2, 10, 10}},
                          PlacedPicture{4, 3, {5, 0, 0, 5, 0, 0}}));
}

TEST(PdfPicturesTest, LooksIntoFormsWithAndWithoutResources) {
  SamplePdf pdf;
  const int picture = pdf.AddPicture(NoisePicture(4, 3));
  const int inner = pdf.AddStream("/Type /XObject /Subtype /Form /BBox [0 0 9 9]", "/P Do");
  const int outer = pdf.AddStream(
      "/Type /XObject /Subtype /Form /BBox [0 0 9 9] /Matrix [2 0 0 2 0 0] /Resources << "
      "/XObject << /P " +
          std::to_string(picture) + " 0 R /Inner " + std::to_string(inner) + " 0 R >> >>",
      "3 0 0 3 0 0 cm /Inner Do");
  pdf.AddPage("0 0 100 100", DrawnAs("Outer", outer), "1 0 0 1 7 7 cm /Outer Do");
  EXPECT_THAT(Found(pdf), ElementsAre(PlacedPicture{4, 3, {6, 0, 0, 6, 7, 7}}));
}

TEST(PdfPicturesTest, FindsInlineImages) {
  SamplePdf pdf;
  pdf.AddPage("0 0 100 100", "", "q 50 0 0 40 0 0 cm BI /W 2 /H 3 /CS /G /BPC 8 ID abcdef EI Q");
  EXPECT_THAT(Found(pdf), ElementsAre(PlacedPicture{2, 3, {50, 0, 0, 40, 0, 0}}));
}

TEST(PdfPicturesTest, TakesTheSizeOfAFinerMask) {
  SamplePdf pdf;
  const int mask = pdf.AddPicture(NoisePicture(40, 30));
  const int picture = pdf.AddPicture(NoisePicture(4, 3), "/SMask " + std::to_string(mask) + " 0 R");
  pdf.AddPage("0 0 100 100", DrawnAs("P", picture), "50 0 0 40 0 0 cm /P Do");
  EXPECT_THAT(Found(pdf), ElementsAre(PlacedPicture{40, 30, {50, 0, 0, 40, 0, 0}}));
}

TEST(PdfPicturesTest, AFormThatDrawsItselfComesToAnEnd) {
  SamplePdf pdf;
  const int picture = pdf.AddPicture(NoisePicture(4, 3));
  const int self = picture + 1;
  pdf.AddStream("/Type /XObject /Subtype /Form /BBox [0 0 9 9] /Resources << /XObject << /P " +
                    std::to_string(picture) + " 0 R /Self " + std::to_string(self) + " 0 R >> >>",
                "/P Do /Self Do /Self Do /Self Do");
  pdf.AddPage("0 0 100 100", DrawnAs("Self", self), "/Self Do");
  EXPECT_FALSE(Found(pdf).empty());
}

TEST(PdfPicturesTest, IgnoresWhatMakesNoSense) {
  SamplePdf pdf;
  const int picture = pdf.AddPicture(NoisePicture(4, 3));
  pdf.AddPage("0 0 100 100", DrawnAs("P", picture),
              "Q Q cm 1 2 cm /X /Y /Z 1 0 0 1 (a) cm Do /None Do 5 Do BI ID x EI 9 0 0 9 0 0 cm /P Do");
  EXPECT_THAT(Found(pdf), ElementsAre(PlacedPicture{4, 3, {9, 0, 0, 9, 0, 0}}));
}

TEST(PdfPicturesTest, AFileThatIsNoPdfHasNone) {
  const SampleFolder folder;
  EXPECT_THAT(PdfPictures(folder.Write("a.pdf", "%PDF-1.4 and nothing more")).OnPage(1), IsEmpty());
  EXPECT_THAT(PdfPictures(folder.path() / "none.pdf").OnPage(1), IsEmpty());
}

TEST(PdfPicturesTest, APageThatIsNotThereHasNone) {
  SamplePdf pdf;
  pdf.AddPage("0 0 100 100", DrawnAs("P", pdf.AddPicture(NoisePicture(4, 3))), "/P Do");
  EXPECT_THAT(Found(pdf, 0), IsEmpty());
  EXPECT_THAT(Found(pdf, 2), IsEmpty());
}

}  // namespace
}  // namespace benchleaf
