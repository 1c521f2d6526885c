// Letters of names and words compared as a person would: without regard to case, and by how many differ.

#ifndef BENCHLEAF_STORE_LETTERS_H_
#define BENCHLEAF_STORE_LETTERS_H_

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::store {

// The characters in lower case. A byte that is not UTF-8 counts as the Latin-1 character.
std::u32string Lowered(const std::string& text);

// The words of the text, split at white space.
std::vector<std::u32string> WordsOf(const std::u32string& text);

// How many characters must be put in, left out, exchanged or swapped with their neighbour to make one text of the
// other (optimal string alignment); `most` + 1 as soon as it is more than `most`.
std::size_t EditDistance(std::u32string_view a, std::u32string_view b, std::size_t most);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_LETTERS_H_
