// What the names of files and folders tell: a set's name, a volume's or page's number.

#ifndef BENCHLEAF_LIBRARY_FILE_NAMES_H_
#define BENCHLEAF_LIBRARY_FILE_NAMES_H_

#include <string>
#include <string_view>

namespace benchleaf {

// A file's or folder's name as a person would write it: '_' and control characters become spaces, and so does '-'
// between words. A single '-' stays where it seems to belong to a model number: one of the words it joins holds a
// digit, and the other holds a digit too or has at most three characters (HR-210, 210-B, 1975-06; but fernwell-210
// becomes "fernwell 210"). Gives the name unchanged when nothing else would be left of it.
std::string ReadableName(std::string_view name);

// A name and the number that was taken out of it.
struct NumberedName {
  std::string base;  // what is left of the name, may be empty
  int number = 0;    // 1 to 99; 0 when the name holds none, `base` is then the whole name

  friend bool operator==(const NumberedName&, const NumberedName&) = default;
};

// Takes out a volume's number, written as vol, volume, part, pt, book or bk with a number ("vol 1", "vol.2",
// "volume-3 of 4", "bk1"), as a roman numeral I to X behind vol, volume, part or book, as "v2" in one word, or as
// "1 of 3". When a name holds several, the last one counts. `name` is without extension.
NumberedName SplitVolume(std::string_view name);

// Takes out a page's number: page, pg or sheet with a number, or "p2" in one word.
NumberedName SplitPage(std::string_view name);

// Takes out a number of any length that ends the name ("scan0012"). Gives the whole name, and `counted` false, when
// there is none.
struct CountedName {
  std::string base;
  bool counted = false;
};
CountedName SplitTrailingNumber(std::string_view name);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_FILE_NAMES_H_
