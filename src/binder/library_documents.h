// The binder's documents over all sets.

#ifndef BENCHLEAF_SRC_BINDER_LIBRARY_DOCUMENTS_H_
#define BENCHLEAF_SRC_BINDER_LIBRARY_DOCUMENTS_H_

#include "binder/addresses.h"

#include "benchleaf/binder/book.h"
#include "benchleaf/binder/page_picture.h"
#include "benchleaf/report/tube_knowledge.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace benchleaf::binder {

// What the front of the binder tells of a set; the set itself need not stay in memory.
struct SetCard {
  std::string set;
  std::string maker;
  std::string model;
  std::string folder;
  std::size_t pages = 0;
  std::size_t parts = 0;
  std::size_t drawn = 0;
  std::size_t tubes = 0;
  std::string thumb;  // within the set's folder: that of its first schematic, else of its first page; empty: none
};

SetCard CardOf(const Book& book, const std::vector<PagePicture>& pictures);

// Where one set has a tube type.
struct TubeUse {
  struct Place {
    std::string address;  // from the binder's folder
    std::string words;    // "sheet 8 schematic, upper left"
    double confidence = 0;
  };
  std::string set;
  std::string folder;
  std::string designators;  // "V3, V4"
  std::string functions;
  std::vector<Place> places;  // surest first
};

// Uses by type.
using TubeUses = std::map<std::string, std::vector<TubeUse>>;

void AddTubeUses(const Book& book, TubeUses& uses);

// index.html.
std::string SetsHtml(const std::vector<SetCard>& sets);

// tubes.html: every type.
std::string TubesHtml(const TubeUses& uses, const TubeTable& table, TubeFiles& files);

// tubes/6au6.html: what the type is, and every set with it.
std::string TubeHtml(const std::string& type, const TubeUses& uses, const TubeTable& table, TubeFiles& files);

// help.html.
std::string HelpHtml();

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_LIBRARY_DOCUMENTS_H_
