// The assemblies' own designators in front of a part's: A4A1 in A4A1C12 (ASME Y14.44).

#ifndef BENCHLEAF_SRC_EXTRACT_ASSEMBLY_PREFIX_H_
#define BENCHLEAF_SRC_EXTRACT_ASSEMBLY_PREFIX_H_

#include <cstddef>
#include <string_view>

namespace benchleaf::extract {

// How many characters of a canonical designator name assemblies: 4 for A4A1C12, 0 for C12, A4 and A4B (section B of
// A4).
std::size_t AssemblyLength(std::string_view canonical);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ASSEMBLY_PREFIX_H_
