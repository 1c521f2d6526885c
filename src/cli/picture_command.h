// picture: spots on pages, ringed; whole pages; contact sheets.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_

#include "cli/job.h"
#include "cli/output_options.h"
#include "cli/places.h"

#include <string>
#include <vector>

namespace benchleaf {

// Which pictures of a spot are written.
enum class PictureView { kBoth, kSpot, kPage };

// What to show is told by terms with what narrows their search, by numbers of what was found last, or by a page.
struct PictureOptions {
  PlaceOptions places;
  std::vector<std::string> terms;
  std::string set;
  std::string kind;
  std::vector<int> hits;    // numbers of places as find gives them; empty: the best ones
  int limit = 0;            // places of a term at most; 0: LimitOf
  std::string file;         // relative to the library
  std::string page;         // of the file, from 1; without a file: as printed on a page of the set; empty: the first
  std::vector<double> box;  // x, y, width, height as fractions of the page; empty: no ring
  bool together = false;    // one picture for all places of a page
  bool sheet = false;       // one picture for all places
  PictureView view = PictureView::kBoth;
  int size = 0;  // px of a picture's longer side; 0: what suits it
  OutputOptions output;

  int LimitOf() const;
};

// The names that --view takes.
std::vector<std::string> PictureViews();

void SetUpPicture(CLI::App& app, Job& job);
ExitCode RunPicture(const PictureOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_COMMAND_H_
