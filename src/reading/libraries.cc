#include "benchleaf/reading/libraries.h"

#include <tesseract/baseapi.h>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfReading() { return {{"tesseract", tesseract::TessBaseAPI::Version()}}; }

}  // namespace benchleaf
