#include "cli/version_text.h"

#include "benchleaf/core/library_version.h"
#include "benchleaf/labels/libraries.h"
#include "benchleaf/lettering/libraries.h"
#include "benchleaf/library/libraries.h"
#include "benchleaf/pixels/libraries.h"
#include "benchleaf/raster/libraries.h"
#include "benchleaf/reading/libraries.h"
#include "benchleaf/record/libraries.h"
#include "benchleaf/report/libraries.h"
#include "benchleaf/store/libraries.h"
#include "benchleaf/work/libraries.h"

#include <CLI/Version.hpp>

#include <vector>

namespace benchleaf {

std::string ProgramVersion() { return BENCHLEAF_VERSION; }

std::string VersionText() {
  std::string text = "benchleaf " + ProgramVersion();
  for (const std::vector<LibraryVersion>& libraries : {LibrariesOfReading(),
                                                       LibrariesOfLettering(),
                                                       LibrariesOfPixels(),
                                                       LibrariesOfRaster(),
                                                       LibrariesOfStore(),
                                                       LibrariesOfLabels(),
                                                       LibrariesOfReport(),
                                                       LibrariesOfRecord(),
                                                       LibrariesOfLibrary(),
                                                       LibrariesOfWork(),
                                                       LibrariesOfCore(),
                                                       {{"CLI11", CLI11_VERSION}}}) {
    for (const LibraryVersion& library : libraries) text += "\n  " + library.name + " " + library.version;
  }
  return text;
}

}  // namespace benchleaf
