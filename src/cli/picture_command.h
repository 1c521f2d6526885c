// picture: a spot on a page, ringed.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>
#include <vector>

namespace benchleaf {

// Either a term, with what narrows its search, or a file's page.
struct PictureOptions {
  PlaceOptions places;
  std::string term;
  std::string set;
  std::string kind;
  int hit = 0;    // the place's number as find gives it; 0: the best ones
  int limit = 6;  // places pictured when no number is given
  std::string file;
  int page = 1;
  std::vector<double> box;  // x, y, width, height as fractions of the page; empty: no ring
  std::string out;          // file to write; empty: named after the term or the file
  bool force = false;       // write over files
  bool json = false;
};

void SetUpPicture(CLI::App& app, Job& job);
ExitCode RunPicture(const PictureOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_
