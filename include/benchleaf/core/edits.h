// How far two words are apart.

#ifndef BENCHLEAF_CORE_EDITS_H_
#define BENCHLEAF_CORE_EDITS_H_

#include <string_view>

namespace benchleaf {

// Letters to insert, leave out or change that make one text the other, but `most` + 1 when it takes more than `most`.
int EditsBetween(std::string_view a, std::string_view b, int most);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_EDITS_H_
