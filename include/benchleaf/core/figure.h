// Figures as people write them.

#ifndef BENCHLEAF_CORE_FIGURE_H_
#define BENCHLEAF_CORE_FIGURE_H_

#include <string>

namespace benchleaf {

// 6.3, 0.15: six significant digits, no noughts at the end.
std::string Figure(double value);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_FIGURE_H_
