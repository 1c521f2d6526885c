#include "benchleaf/raster/page_source.h"

#include "raster/file_bytes.h"
#include "raster/pdf_source.h"
#include "raster/picture_source.h"

#include "benchleaf/pixels/image_file.h"

#include <cstddef>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace {

// A PDF's header may stand behind up to 1 KB of other bytes (ISO 32000-1, annex H, note 13, tells that readers accept
// this).
bool HasPdfHeader(std::string_view bytes) {
  constexpr std::string_view kHeader = "%PDF-";
  constexpr std::size_t kLatest = 1024;
  return bytes.substr(0, kLatest + kHeader.size()).find(kHeader) != std::string_view::npos;
}

}  // namespace

Result<std::unique_ptr<PageSource>> OpenScan(const std::filesystem::path& path, const std::string& name,
                                             const RasterLimits& limits) {
  Result<FileBytes> bytes = FileBytes::Map(path, name, limits.max_file_bytes);
  if (!bytes) {
    return tl::unexpected(std::move(bytes.error()));
  }
  const Result<int> pictures = CountPictures(bytes->view());
  if (pictures) {
    return PicturePages(std::move(*bytes), *pictures, name, limits);
  }
  if (HasPdfHeader(bytes->view())) {
    return OpenPdf(path, name, limits);
  }
  return Fail(pictures.error().code, pictures.error().message, name);
}

}  // namespace benchleaf
