// The terms that the pages of one manual name, each with the pages that name it.

#ifndef BENCHLEAF_SRC_EXTRACT_LEXICON_H_
#define BENCHLEAF_SRC_EXTRACT_LEXICON_H_

#include "extract/rule_tables.h"

#include "benchleaf/extract/lexicon.h"
#include "benchleaf/extract/sighting.h"

#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace benchleaf::extract {

class Lexicon {
 public:
  // A term of the lexicon that a reading is (`unlike` is 0) or looks like (see Unlikeness).
  struct Match {
    TermKind kind = TermKind::kDesignator;
    std::string text;
    double unlike = 0;
  };

  // Takes the terms of lists and texts, and those that are surely read on drawings.
  Lexicon(const std::vector<LexiconPage>& pages, const Rules::Tables& tables);

  // How surely pages other than `page` name the term: 0 to 1. A section of a part (C1A) is named with its part.
  double SureOf(TermKind kind, const std::string& text, std::size_t page) const;

  // The terms that pages other than `page` name and that a reading, trimmed, looks like; the most alike first.
  std::vector<Match> Like(const std::string& reading, std::size_t page) const;

  // Whether the number lies far beyond all others of its class; see LoneNumbers.
  bool IsLone(const std::string& designator) const { return lone_.count(designator) != 0; }

  // Whether an alignment page names it as one of its points.
  bool IsAlignmentPoint(const std::string& designator) const { return points_.count(designator) != 0; }

  // The share of the designators surely read on drawings that the lists name: 0 when there is too little of either to
  // tell.
  double Completeness() const { return completeness_; }

  // The share of the numbers of a class, from the lowest to the highest, that is named: how likely a wrong number of
  // that class is named all the same.
  double Density(std::string_view letters) const;

  // How many numbers of a class are named.
  std::size_t ClassSize(std::string_view letters) const;

 private:
  struct Evidence {
    std::size_t page = 0;
    double sure = 0;
  };

  void Add(TermKind kind, const std::string& text, std::size_t page, double sure);
  void AddPage(const LexiconPage& page, std::size_t at);
  void NotePoints(const std::vector<LexiconPage>& pages);
  void MeasureCompleteness(const std::vector<LexiconPage>& pages);
  // Measures the density of each class, and adds the numbers that are missing in a class that is named nearly whole:
  // they exist as well. `page_count` stands for the page that names these.
  void LookAtNumbers(std::size_t page_count);

  const Rules::Tables& tables_;
  std::map<std::pair<TermKind, std::string>, std::vector<Evidence>> terms_;
  std::unordered_map<std::string, std::vector<std::pair<TermKind, std::string>>> folded_;
  std::map<std::string, double, std::less<>> density_;           // by class letters
  std::map<std::string, std::size_t, std::less<>> class_sizes_;  // by class letters
  std::set<std::string> lone_;
  std::set<std::string> points_;
  double completeness_ = 0;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LEXICON_H_
