// Which assembly a drawing shows that does not say so.

#ifndef BENCHLEAF_SRC_LINKING_ASSEMBLY_SHOWN_H_
#define BENCHLEAF_SRC_LINKING_ASSEMBLY_SHOWN_H_

#include <string>
#include <utility>
#include <vector>

namespace benchleaf::linking {

// Of the value beside a symbol with that in the list.
enum class Agreement { kUnknown, kAgrees, kDiffers };

// A designator on a drawing, without assembly.
struct DrawnPart {
  std::string name;
  std::vector<std::pair<std::string, Agreement>> listed;  // the assemblies that list it, each with what the value says
};

struct DrawnParts {
  std::vector<DrawnPart> parts;  // those that the list names at all
  bool told = false;             // the drawing names an assembly itself, for some of its parts at least
};

// The one assembly whose rows explain the drawing clearly better than those of any other, by the designators that it
// lists and by the values that agree; empty when none does, when the drawing shows more than one assembly (a third of
// its designators stand on it twice), or when it tells itself.
std::string AssemblyShown(const DrawnParts& drawn);

}  // namespace benchleaf::linking

#endif  // BENCHLEAF_SRC_LINKING_ASSEMBLY_SHOWN_H_
