// Finds what stands beside what: a page cut into bands from top to bottom, so that a thing is held against those in its
// bands alone, not against all of the page.

#ifndef BENCHLEAF_SRC_EXTRACT_PAGE_BANDS_H_
#define BENCHLEAF_SRC_EXTRACT_PAGE_BANDS_H_

#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf::extract {

class PageBands {
 public:
  // `height` of the page, in any unit; `count` of things that will be added, about. Things may lie beyond the page; the
  // first and last band hold them.
  PageBands(double height, std::size_t count);

  // Adds a thing by its number, or tells that it has moved: it is found in its old place, too. Numbers are positions
  // in a list.
  void Add(std::size_t number, double top, double bottom);

  // All things that may share some height with what lies between `top` and `bottom`, each once, numbers rising. Some
  // of them may lie a little above or below.
  std::vector<std::size_t> Beside(double top, double bottom) const;
  // The same into `beside`, so that one vector serves many questions.
  void Beside(double top, double bottom, std::vector<std::size_t>& beside) const;

 private:
  std::size_t BandAt(double y) const;

  double band_height_;
  std::vector<std::vector<std::size_t>> bands_;
  std::vector<std::pair<std::size_t, std::size_t>> covered_;  // by number: its first band and the one behind its last
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PAGE_BANDS_H_
