// Makes the pictures of `picture` and writes them.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_WRITING_H_
#define BENCHLEAF_SRC_CLI_PICTURE_WRITING_H_

#include "cli/picture_command.h"
#include "cli/picture_places.h"

#include "benchleaf/report/pictured.h"

#include <string>
#include <vector>

namespace benchleaf {

// Writes each picture and tells of it; a page that cannot be shown is told of, and the others are written all the same.
// `subject` gives the files their name where --out gives none.
ExitCode WritePictures(const PictureOptions& options, std::vector<Pictured> pictures, const std::string& subject,
                       const Streams& streams);

// The same for contact sheets of the places.
ExitCode WriteSheets(const PictureOptions& options, const std::vector<TermPlaces>& chosen, const std::string& subject,
                     const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_WRITING_H_
