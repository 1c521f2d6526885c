// Names what the pages of a manual are searched by, so that a change of it is noticed.

#ifndef BENCHLEAF_SRC_WORK_RULES_FINGERPRINT_H_
#define BENCHLEAF_SRC_WORK_RULES_FINGERPRINT_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <string>

namespace benchleaf {

// 16 hexadecimal digits over the tables (*.tsv) in `config`, over the restorer's own tables that LoadRules takes from
// the folder `own`, and over `program`: rules are both data and code. Changes whenever a byte of them does. Fails with
// kIo when one of them cannot be read.
Result<std::string> RulesFingerprint(const std::filesystem::path& config, const std::filesystem::path& own,
                                     const std::filesystem::path& program);

// This process's own program.
std::filesystem::path RunningProgram();

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_RULES_FINGERPRINT_H_
