#include "benchleaf/pixels/image_file.h"
#include "benchleaf/raster/file_beside.h"
#include "benchleaf/raster/page_source.h"

#include <string>

namespace benchleaf {

Result<void> WritePng(const std::filesystem::path& path, const ColorImage& image) {
  const std::string bytes = EncodePng(image);
  if (bytes.empty()) {
    return Fail(ErrorCode::kUnsupported, "a picture without pixels cannot be written", path.string());
  }
  FileBeside file(path);
  if (Result<void> written = file.Write(bytes); !written) {
    return written;
  }
  return file.TakeTargetsPlace();
}

}  // namespace benchleaf
