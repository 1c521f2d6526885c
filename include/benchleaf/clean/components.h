// Connected pieces of ink, kept as runs of pixels, so that one can be painted without the others.

#ifndef BENCHLEAF_CLEAN_COMPONENTS_H_
#define BENCHLEAF_CLEAN_COMPONENTS_H_

#include "benchleaf/core/image.h"

#include <cstddef>
#include <vector>

namespace benchleaf {

// Ink from `begin` to before `end` in row `y`, px.
struct Run {
  int y = 0;
  int begin = 0;
  int end = 0;
};

// Pixels that touch, also by their corners.
struct Component {
  Box box;
  int ink = 0;  // px
  std::size_t first_run = 0;
  std::size_t run_count = 0;
};

struct Components {
  std::vector<Component> items;  // by their topmost row, then from the left
  std::vector<Run> runs;         // the runs of one component stand together
};

Components FindComponents(const InkImage& ink);

// Inks what is one component's, at its place.
void Paint(const Components& components, const Component& component, InkImage& ink);

// Ground that a component closes in.
struct Hole {
  Box box;
  int px = 0;  // its area
};

std::vector<Hole> FindHoles(const Components& components, std::size_t which);

// The box round the largest hole that one component closes in; empty when it closes none in.
Box LargestHole(const Components& components, std::size_t which);

}  // namespace benchleaf

#endif  // BENCHLEAF_CLEAN_COMPONENTS_H_
