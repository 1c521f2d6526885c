// The project's rules with a restorer's own rows over them.

#ifndef BENCHLEAF_EXTRACT_OWN_RULES_H_
#define BENCHLEAF_EXTRACT_OWN_RULES_H_

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

// Reads every table in the folder `config` as Rules::Load does, then the tables of the same names in the folder `own`,
// as far as there are any. A row goes over ours with the same key: letters of a designator, a look-alike's text, a part
// number's name, a tube's type, the words of a description; kind and words of a page; words of lists are added. Ours
// are taken out by sure 0 (designator-classes, part-numbers), weight 0 (page-kinds), family none (tube-types), classes
// "-" (part-words), role none (list-words). Fails with kMissing or kUsage; the message names file, line and column.
Result<std::shared_ptr<const Rules>> LoadRules(const std::filesystem::path& config, const std::filesystem::path& own);

// The names of the tables, in the order in which they are read.
std::vector<std::string> RuleTableNames();

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_OWN_RULES_H_
