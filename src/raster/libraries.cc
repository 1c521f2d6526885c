#include "benchleaf/raster/libraries.h"

// Tells qpdf that its old pointer type is not used here, as its headers ask for.
#define POINTERHOLDER_TRANSITION 4
#include <poppler-version.h>
#include <qpdf/QPDF.hh>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfRaster() {
  return {{"poppler", poppler::version_string()}, {"qpdf", QPDF::QPDFVersion()}};
}

}  // namespace benchleaf
