// Names of the binder's files and addresses between them. They are made of numbers and slugs, never of the library's
// names, so that nothing that a file or maker is called can lead out of the binder.

#ifndef BENCHLEAF_SRC_BINDER_ADDRESSES_H_
#define BENCHLEAF_SRC_BINDER_ADDRESSES_H_

#include "benchleaf/binder/book.h"

#include <map>
#include <set>
#include <string>

namespace benchleaf::binder {

// Folders of the binder.
inline constexpr const char* kLookFolder = "look";
inline constexpr const char* kDataFolder = "data";
inline constexpr const char* kSetsFolder = "sets";
inline constexpr const char* kTubesFolder = "tubes";
inline constexpr const char* kPicturesFolder = "pictures";  // within a set's folder
inline constexpr const char* kThumbsFolder = "thumbs";      // likewise

// "sheet-0008.html", "pictures/0008.jpg" and "thumbs/0008.jpg", within the set's folder.
std::string SheetFile(const BookPage& page);
std::string PictureFile(const BookPage& page);
std::string ThumbFile(const BookPage& page);

// "sheet-0008.html#at-c12", from another file of the set's folder.
std::string SpotAddress(const Book& book, const SpotPlace& place);
// The same for a box of the page as scanned: its spot where it is one, else the box itself in fractions of the upright
// page ("sheet-0008.html#box=0.2,0.13,0.02,0.01"). Empty when the page is not the book's.
std::string BoxAddress(const Book& book, const PagePlace& place, const FractionBox& box);

// "parts.html#part-c12", from another file of the set's folder.
std::string PartAddress(const BookPart& part);

// The files of tube types, each named once.
class TubeFiles {
 public:
  // "6au6.html", within kTubesFolder.
  std::string NameOf(const std::string& type);

 private:
  std::map<std::string, std::string> names_;
  std::set<std::string> given_;
};

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_ADDRESSES_H_
