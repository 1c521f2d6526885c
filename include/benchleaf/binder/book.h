// One set of the library as the binder shows it: its pages, the spots on them, its parts index, and the ties between
// spots and parts.

#ifndef BENCHLEAF_BINDER_BOOK_H_
#define BENCHLEAF_BINDER_BOOK_H_

#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/lineup/line_up.h"
#include "benchleaf/record/manual_record.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::binder {

// A place on a page that can be ringed.
struct Spot {
  std::string id;    // unique on its page, of small letters, figures and hyphens: "at-c12", "row-4"
  std::string text;  // what stands there, canonical; of a row the parts that it lists: "C4, C5"
  bool row = false;  // a row of a parts list; else a term of the kind below
  TermKind kind = TermKind::kDesignator;
  FractionBox box;  // of the page turned upright, from its upper left corner
  double confidence = 0;
  std::optional<std::size_t> part;  // position in the book's parts of what it names
};

struct BookPage {
  PagePlace place;
  std::size_t manual = 0;  // position in the book's manuals
  int number = 1;          // in the set, counts from 1: names the page's files
  int volume = 1;
  std::optional<Error> failure;  // it could not be read
  PageFacts facts;
  PageFrame frame;  // of the scan; of a page that could not be read all 0 and 1
  std::vector<Spot> spots;
};

struct SpotPlace {
  std::size_t page = 0;  // position in the book's pages
  std::size_t spot = 0;  // position in that page's spots
  double confidence = 0;
};

struct BookPart {
  std::string id;  // unique in the book, as a spot's: "part-c12"
  Entry entry;
  SpotPlace row;                 // its row in the list
  std::vector<SpotPlace> drawn;  // where it is drawn, schematics first, surest first
};

struct BookManual {
  std::string name;
  std::string title;
  int volumes = 0;
  std::vector<std::string> files;
  std::vector<Error> failures;  // files that could not be opened
};

struct Book {
  int number = 1;      // in the binder, counts from 1
  std::string folder;  // of its files within the binder: "0003-osterwick-tv-217"
  std::string set;
  std::string maker;
  std::string model;
  std::vector<BookManual> manuals;
  std::vector<BookPage> pages;
  std::vector<BookPart> parts;        // in the order of the lists
  std::vector<SpotPlace> unlisted;    // designators drawn that no row names, each once, its surest place
  std::vector<SeenTube> tubes;        // every tube type on its pages
  std::vector<ManualLineup> lineups;  // of each manual; they point into a TubeTable
  std::vector<ManualGaps> gaps;       // of each manual
};

// Pure. `lineups` and `gaps` are those of the manuals, in their order.
// REQUIRES: LinksFit of every manual.
Book MakeBook(int number, const std::vector<ManualRecord>& manuals, std::vector<ManualLineup> lineups,
              std::vector<ManualGaps> gaps);

// The spot with that box (of the page as scanned); nothing when the page has none there.
std::optional<SpotPlace> FindSpot(const Book& book, const PagePlace& place, const FractionBox& box);

// The page at that place; nothing when it is not the book's.
std::optional<std::size_t> FindPage(const Book& book, const PagePlace& place);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_BINDER_BOOK_H_
