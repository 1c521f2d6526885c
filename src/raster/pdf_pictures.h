// Finds the pictures that the pages of a PDF draw, without decoding any.

#ifndef BENCHLEAF_RASTER_PDF_PICTURES_H_
#define BENCHLEAF_RASTER_PDF_PICTURES_H_

#include "raster/page_layout.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace benchleaf {

// An open PDF. Not safe for use by several threads.
class PdfPictures {
 public:
  // A file that cannot be understood gives pages without pictures: whether it can be shown is for the renderer to say.
  explicit PdfPictures(const std::filesystem::path& path);
  ~PdfPictures();
  PdfPictures(const PdfPictures&) = delete;
  PdfPictures& operator=(const PdfPictures&) = delete;

  // The pictures that the page draws, form XObjects and inline images included, in the order of drawing; `page` counts
  // from 1. Placements are given in the space into which `base` takes the page's user space. Of a damaged page, those
  // before the damage. Nesting of more than 8 forms and drawing operations beyond some millions are not followed.
  std::vector<PlacedPicture> OnPage(int page, const Affine& base = {});

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PDF_PICTURES_H_
