#include "benchleaf/labels/libraries.h"

#include <pango/pangocairo.h>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfLabels() {
  return {{"pango", pango_version_string()}, {"cairo", cairo_version_string()}};
}

}  // namespace benchleaf
