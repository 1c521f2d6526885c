// Pages of a PDF.

#ifndef BENCHLEAF_RASTER_PDF_SOURCE_H_
#define BENCHLEAF_RASTER_PDF_SOURCE_H_

#include "benchleaf/raster/page_source.h"

#include <filesystem>
#include <memory>
#include <string>

namespace benchleaf {

// Opens the PDF; fails with kLocked or kDamaged. Pages are loaded as PageSource says; a page of which nothing could
// be drawn, with complaints of the renderer, is kDamaged, while a page that is damaged in part is given as far as it
// goes.
Result<std::unique_ptr<PageSource>> OpenPdf(const std::filesystem::path& path, const std::string& name,
                                            const RasterLimits& limits);

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_PDF_SOURCE_H_
