// Which places and pages the arguments of `picture` mean.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_PLACES_H_
#define BENCHLEAF_SRC_CLI_PICTURE_PLACES_H_

#include "cli/picture_command.h"

#include "benchleaf/report/pictured.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// One term and the places to be shown of it, best first; there is at least one.
struct TermPlaces {
  std::string term;
  std::vector<SheetPlace> places;
};

// Without numbers, the places that fit as well as the first: no look-alikes where the term itself is found. Other forms
// of the term (6AU6A for 6AU6) count as itself where places stand side by side. Says what is wrong, and gives the exit
// code, when a term has no place, a number is too high, or what was found last cannot be found again.
tl::expected<std::vector<TermPlaces>, ExitCode> ChoosePlaces(IndexReader& index, const PictureOptions& options,
                                                             const Streams& streams);

// A picture for each place, or, where `together` is asked for, for each page.
std::vector<Pictured> PicturesOf(const std::vector<TermPlaces>& chosen, bool together);

// The page that --file and --page name, or the pages of the set on which --page is printed.
tl::expected<std::vector<Pictured>, ExitCode> NamedPages(const PictureOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_PLACES_H_
