// Which parts a stage of each kind is made of, and what values they may have.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_STAGE_RECIPES_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_STAGE_RECIPES_H_

#include "scan-maker/circuit.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct RoleRecipe {
  std::string role;
  PartClass part_class;
  // "value;rating" choices with '|' between. Tubes and semiconductors have none: their types come from the plan.
  std::string choices;
  char section = 0;  // 'A' begins a part of several sections, later letters go on with it
};

const std::vector<RoleRecipe>& RecipeFor(StageKind kind);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_STAGE_RECIPES_H_
